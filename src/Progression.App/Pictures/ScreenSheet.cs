namespace Progression.App.Pictures;

/// <summary>What every screen has in common: where the person is, the body, what was told last, the keys.</summary>
public static class ScreenSheet
{
    private const int Around = 3;

    /// <summary>The room that is left for the body.</summary>
    public static PictureSize Room(PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        return new(size.Width, size.Height - Around);
    }

    /// <summary>The whole picture; the body is cut or filled to its room.</summary>
    public static Picture Of(ScreenPlace place, Picture body, (string Status, string Hints) foot, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(size);
        Picture fitted = body.Fit(Room(size));
        CaretAt? caret = fitted.Caret is { } at ? at with { Row = at.Row + 1 } : null;
        return new([place.Title(size.Width), .. fitted.Rows, PictureRow.Of(foot.Status), PictureRow.Of(foot.Hints, Ink.Quiet)], caret);
    }
}
