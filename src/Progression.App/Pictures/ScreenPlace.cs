using Progression.Core.Entry;

namespace Progression.App.Pictures;

/// <summary>Where a person is: the first line of every screen, and the first thing said in line mode.</summary>
/// <param name="Screen">The name of the screen.</param>
public sealed record ScreenPlace(string Screen)
{
    private const int Wide = 100;

    /// <summary>A screen that does not say where it is.</summary>
    public static ScreenPlace NotSaid { get; } = new("");

    /// <summary>Whose: "K-014  right knee, operated 2 Nov 2026"; empty for none.</summary>
    public string Whose { get; init; } = "";

    /// <summary>What is looked at: a lane and a week, a measure, a visit; empty for the whole.</summary>
    public string What { get; init; } = "";

    /// <summary>What is unsaved, or how much there is; stands to the right.</summary>
    public string Kept { get; init; } = "";

    /// <summary>Whether what stands to the right is unsaved work.</summary>
    public bool IsUnsaved { get; init; }

    /// <summary>The line. In a narrow window less is left of whose it is; how much does not hang on the length of the rest, so that a step of the cursor does not move the line.</summary>
    public PictureRow Title(int width)
    {
        int room = Math.Max(0, width - SafeText.Width(Kept) - 1);
        string whose = width < Wide && What.Length > 0 ? Whose.Split(", operated")[0] : Whose;
        string left = TextFit.Longest([Joined(whose), Joined(whose.Split(' ')[0])], room);
        return new([new(left, Ink.Strong), new(" "), new(Kept, IsUnsaved ? Ink.Strong : Ink.Quiet)]);
    }

    private string Joined(string whose) => SafeText.OneLine(string.Join("   ", new[] { Screen, whose, What }.Where(part => part.Length > 0)));
}
