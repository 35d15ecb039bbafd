namespace Progression.App.Pictures;

/// <summary>Sentences as lines of a picture.</summary>
public static class TextLines
{
    /// <summary>A text broken to a width.</summary>
    public static IEnumerable<PictureRow> Wrapped(string text, int width, Ink ink = Ink.Plain) =>
        TextFit.Wrap(text, width).Select(line => PictureRow.Of(line, ink));

    /// <summary>A label, a colon and a text, broken to a width; the label stands back.</summary>
    public static IEnumerable<PictureRow> Labelled(string label, string text, int width)
    {
        ArgumentNullException.ThrowIfNull(label);
        return TextFit.Wrap($"{label}: {text}", width).Select((line, at) => at == 0 && line.Length > label.Length
            ? new PictureRow([new(line[..(label.Length + 1)], Ink.Quiet), new(line[(label.Length + 1)..])])
            : PictureRow.Of(line));
    }

    /// <summary>Lines set in a little, made for a width that is less by <see cref="Indent"/>.</summary>
    public static IEnumerable<PictureRow> Indented(IEnumerable<PictureRow> lines) => lines.Select(line => PictureRow.Of(new string(' ', Indent)).Then(line));

    /// <summary>Columns by which lines are set in.</summary>
    public const int Indent = 2;

    /// <summary>A line across.</summary>
    public static PictureRow Rule(int width) => PictureRow.Of(new string('─', width), Ink.Quiet);

    /// <summary>One text at the left, one at the right edge; the left one is cut where both do not fit.</summary>
    public static PictureRow Sides(TextSpan left, TextSpan right, int width)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        int room = Math.Max(0, width - PictureRow.Of(right.Text).Width - 1);
        return new([new(TextFit.Exactly(left.Text, room), left.Ink), new(" "), right]);
    }
}
