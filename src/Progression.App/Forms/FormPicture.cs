using Progression.App.Pictures;

namespace Progression.App.Forms;

/// <summary>What stands beside a field.</summary>
/// <param name="Right">To the right of the unit.</param>
/// <param name="Shown">In an empty field: a value that was computed; null for nothing.</param>
public sealed record FormBeside(PictureRow Right, string? Shown = null)
{
    /// <summary>Nothing.</summary>
    public static FormBeside Nothing { get; } = new(PictureRow.Empty);
}

/// <summary>Lays out a form: headings, a line for each field, the line with the caret always in sight.</summary>
public static class FormPicture
{
    private const int Mark = 2;
    private const int Title = 24;
    internal const int Field = 11; // The narrowest field.
    private const int Unit = 6;
    private const int MostExtra = 12;
    private const int UsualWidth = 80;

    /// <summary>Columns to the left of what stands beside a field.</summary>
    public static int LeftOf(int width) => Mark + TitleWidth(width) + FieldWidth(width) + Unit;

    /// <summary>The form in a room.</summary>
    /// <param name="form">The form.</param>
    /// <param name="room">The room; a form that is longer is turned by pages.</param>
    /// <param name="beside">What stands beside a line.</param>
    public static Picture Draw(Form form, PictureSize room, Func<FormLine, FormBeside> beside)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(beside);
        List<PictureRow> rows = [];
        int current = 0;
        string group = "";
        foreach (FormLine line in form.Lines)
        {
            if (line.Group != group)
            {
                rows.Add(PictureRow.Of(group = line.Group, Ink.Strong));
            }

            current = ReferenceEquals(line, form.Current) ? rows.Count : current;
            rows.Add(Line(line, ReferenceEquals(line, form.Current), room.Width, beside(line)));
        }

        int first = Paging.First(current, room.Height, rows.Count, overlap: 2);
        int caret = Mark + TitleWidth(room.Width) + Math.Min(FieldWidth(form.Current, room.Width) - 1, form.Current.Entry.CaretColumn);
        return new([.. rows.Skip(first).Take(room.Height)], new CaretAt(caret, current - first));
    }

    // The end of a text longer than its field is shown while it is typed.
    private static PictureRow Line(FormLine line, bool isCurrent, int width, FormBeside beside)
    {
        int field = FieldWidth(line, width);
        string text = line.Entry.Text;
        int skip = isCurrent ? Math.Max(0, line.Entry.CaretColumn - field + 1) : 0;
        bool shown = line.IsShownOnly || (text.Length == 0 && !isCurrent);
        string inside = shown ? beside.Shown ?? "" : skip < text.Length ? text[skip..] : "";
        PictureRow row = new(
        [
            new(TextFit.Exactly((isCurrent ? "> " : "  ") + line.Title, Mark + TitleWidth(width) - 1) + " ", isCurrent ? Ink.Strong : line.IsShownOnly ? Ink.Quiet : Ink.Plain),
            new(TextFit.Exactly(inside, field), line.IsShownOnly || (shown && beside.Shown is not null) ? Ink.Quiet : Ink.Field),
        ]);
        return line.IsText ? row : row.Then(PictureRow.Of(" " + TextFit.Exactly(line.Unit, Unit - 1), Ink.Quiet)).Then(beside.Right);
    }

    private static int Extra(int width) => Math.Clamp((width - UsualWidth) / 2, 0, MostExtra);

    private static int TitleWidth(int width) => Title + Extra(width);

    private static int FieldWidth(FormLine line, int width) => line.IsText ? width - Mark - TitleWidth(width) : FieldWidth(width);

    private static int FieldWidth(int width) => Field + Extra(width);
}
