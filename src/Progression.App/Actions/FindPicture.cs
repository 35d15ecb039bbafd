using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Actions;

/// <summary>Draws the finder over the foot of the screen below.</summary>
internal static class FindPicture
{
    private const int Keys = 9;
    private const int Name = 16;
    private const int Foot = 2;

    /// <summary>The picture.</summary>
    public static Picture Draw(FindState state, PictureSize size)
    {
        Picture under = state.Below.Draw(size).Fit(size);
        int room = Math.Max(3, size.Height / 2) - Foot;
        IReadOnlyList<PictureRow> body = state.Mode == FindMode.Help
            ? ScrolledText.Of([.. HelpLines.Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))], state.Scroll, new(size.Width, room - 2)).Rows
            : List(state, room - 2, size.Width);
        (PictureRow line, int column) = LineField.Of(state.Line, size.Width);
        List<PictureRow> rows = [TextLines.Rule(size.Width), .. body.Take(room - 2), line];
        CaretAt caret = new(column, size.Height - Foot - 1);
        PictureRow[] foot = [PictureRow.Of(state.Status), PictureRow.Of(ActionFinder.Table.HintLine(state, size.Width), Ink.Quiet)];
        return new Picture([.. under.Rows.Take(size.Height - rows.Count - Foot), .. rows, .. foot], caret).Fit(size);
    }

    /// <summary>The help page.</summary>
    public static IReadOnlyList<string> HelpLines => ActionFinder.Table.HelpPage(nameof(FindMode.Line));

    /// <summary>An action in words: its name, its key, what it does, and why it cannot be done now.</summary>
    public static string Words(ActionChoice choice) =>
        $"{choice.Name.Replace('-', ' ')}, key {choice.Keys[0]}: {choice.Help}" + (choice.WhyNot is { } why ? $". Not now: {why}" : "");

    private static IReadOnlyList<PictureRow> List(FindState state, int room, int width)
    {
        IReadOnlyList<ActionChoice> found = state.Found;
        int index = Math.Clamp(state.Index, 0, Math.Max(0, found.Count - 1));
        int first = Paging.First(index, room, found.Count);
        return found.Count == 0
            ? [PictureRow.Of("No action here has these words.")]
            : [.. found.Skip(first).Take(room).Select((choice, at) => Line(choice, first + at == index, width))];
    }

    private static PictureRow Line(ActionChoice choice, bool isChosen, int width)
    {
        string text = $"{(isChosen ? ">" : " ")} {choice.Keys[0],-Keys}{choice.Name.Replace('-', ' '),-Name}  ";
        string help = choice.WhyNot is { } why ? $"not now: {why}" : choice.Help;
        Ink ink = isChosen ? Ink.Chosen : choice.WhyNot is null ? Ink.Plain : Ink.Quiet;
        return PictureRow.Of(TextFit.Exactly(SafeText.OneLine(text + help), width), ink);
    }
}
