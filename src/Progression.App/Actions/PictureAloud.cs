using Progression.App.Pictures;

namespace Progression.App.Actions;

/// <summary>Words of a picture, for a screen or a mode that has not said in words what it shows.</summary>
internal static class PictureAloud
{
    private const int Foot = 2;

    /// <summary>A room in which little is cut.</summary>
    public static PictureSize Room { get; } = new(118, 200);

    /// <summary>The line with the caret; nothing where there is no caret.</summary>
    public static IReadOnlyList<string> Here(Picture picture) => picture.Caret is { } at ? Lines(picture.Rows.Skip(at.Row).Take(1)) : Whole(picture);

    /// <summary>All lines between the title and the status line.</summary>
    public static IReadOnlyList<string> Whole(Picture picture) => Lines(picture.Rows.Skip(1).SkipLast(Foot));

    private static IReadOnlyList<string> Lines(IEnumerable<PictureRow> rows) => [.. RowWords.Of(rows)];
}
