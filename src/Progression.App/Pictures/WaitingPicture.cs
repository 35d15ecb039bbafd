namespace Progression.App.Pictures;

/// <summary>What is shown while nobody types, or while something takes long.</summary>
public static class WaitingPicture
{
    private const int Foot = 2; // The status line and the keys.

    /// <summary>A picture with a warning in its last line.</summary>
    public static Picture Warned(Picture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        return picture.Rows.IsEmpty ? picture
            : picture with { Rows = picture.Rows.SetItem(picture.Rows.Length - 1, PictureRow.Of("This screen is blanked in a moment; any key keeps it open.", Ink.Strong)) };
    }

    /// <summary>A picture whose status line tells of a work; its keys are not valid meanwhile.</summary>
    public static Picture AtWork(Picture picture, string words)
    {
        ArgumentNullException.ThrowIfNull(picture);
        return picture.Rows.Length < Foot ? picture
            : picture with { Rows = [.. picture.Rows.SkipLast(Foot), PictureRow.Of(words, Ink.Strong), PictureRow.Of("Esc stop", Ink.Quiet)], Caret = null };
    }

    /// <summary>A blank screen: it names no person and no case.</summary>
    public static Picture Blank(PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        return new([.. TextFit.Wrap("Progression: blanked because nobody typed. Any key brings the screen back; nothing is lost.", Math.Max(2, size.Width)).Select(line => PictureRow.Of(line))]);
    }
}
