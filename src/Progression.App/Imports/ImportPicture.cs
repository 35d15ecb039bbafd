using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Imports;

/// <summary>Draws an import: the file's name, then what it comes to.</summary>
public static class ImportPicture
{
    internal const int UsualWidth = 80;

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(ImportState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode == ImportMode.File ? File(state, room) : ScrolledText.Of(PageLines(state, room.Width), state.Scroll, room);
        return ScreenSheet.Of(ImportScreen.Where(state), body, (state.Status, ImportActions.Table.HintLine(state, size.Width)), size);
    }

    internal static IReadOnlyList<PictureRow> PageLines(ImportState state, int width) => state.Mode == ImportMode.Help
        ? [.. ImportActions.Table.HelpPage(state.HelpFor.ToString()).Append("Columns that are not known by name").Append("  progression import csv FILE --case CODE --map \"HEAD=NAME\" tells them once; they are remembered.")
            .Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))]
        : [.. state.Preview.SelectMany(line => TextLines.Wrapped(SafeText.OneLine(line), width))];

    private static Picture File(ImportState state, PictureSize room)
    {
        (PictureRow field, int column) = LineField.Of(state.Name, room.Width);
        List<PictureRow> rows =
        [
            PictureRow.Of("Name of the file", Ink.Strong),
            field,
            PictureRow.Empty,
            new([new("It holds  "), new($"[{ImportWords.Of(state.Kind)}]", Ink.Chosen)]),
            PictureRow.Empty,
            .. TextLines.Wrapped($"A name without a folder is looked for in {SafeText.OneLine(state.Folder)}.", room.Width),
            .. TextLines.Wrapped("Enter shows what the file comes to: every value, everything refused with its row and column. All of it comes in, or nothing.", room.Width),
            .. TextLines.Wrapped("Nothing that stands in the case is written over, and nothing of another person comes in.", room.Width),
        ];
        return new Picture([.. rows], new CaretAt(column, 1)).Fit(room);
    }
}
