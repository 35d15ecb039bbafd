using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Forms;

/// <summary>The frame of a screen with a form: a title, the body, three lines about the present field, a status line and the keys.</summary>
public static class FormScreen
{
    private const int FootLines = 3;
    private const int Around = 1 + FootLines + 2;
    private const string SetIn = "  ";

    /// <summary>The room inside the frame.</summary>
    public static PictureSize Inside(PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        return new(size.Width, size.Height - Around);
    }

    /// <summary>The whole screen.</summary>
    /// <param name="place">Where the person is.</param>
    /// <param name="body">The middle; it is cut or filled to its room.</param>
    /// <param name="foot">What is told about the present field; more than three lines are cut.</param>
    /// <param name="below">The status line and the line of keys.</param>
    /// <param name="size">The room.</param>
    public static Picture Draw(ScreenPlace place, Picture body, IEnumerable<PictureRow> foot, (string Status, string Hints) below, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(size);
        Picture inside = body.Fit(Inside(size));
        return ScreenSheet.Of(place, inside with { Rows = [.. inside.Rows, .. foot.Concat(Enumerable.Repeat(PictureRow.Empty, FootLines)).Take(FootLines)] }, below, size);
    }

    /// <summary>A problem, or else sentences, as lines of the foot.</summary>
    public static IEnumerable<PictureRow> Foot(Problem? problem, IEnumerable<string> sentences, int width) => problem is null
        ? Wrapped(string.Join(' ', sentences.Where(sentence => sentence.Length > 0)), width, Ink.Plain)
        : Wrapped(problem.ToString(), width, Ink.Stop);

    /// <summary>Text broken into lines of an ink.</summary>
    public static IEnumerable<PictureRow> Wrapped(string text, int width, Ink ink) => TextFit.Wrap(SafeText.OneLine(text), width).Select(line => PictureRow.Of(line, ink));

    /// <summary>The lines of a help page, scrolled; a line that is too long is broken and set in.</summary>
    public static Picture Help(IEnumerable<string> lines, int scroll, int width) => new(
    [
        .. lines.SelectMany(line => SafeText.Width(line) <= width ? [line] : TextFit.Wrap(line, width - SetIn.Length).Select((part, at) => (at == 0 && !line.StartsWith(' ') ? "" : SetIn) + part))
            .Skip(scroll).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong)),
    ]);
}
