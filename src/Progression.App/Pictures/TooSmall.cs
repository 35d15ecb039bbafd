namespace Progression.App.Pictures;

/// <summary>What a window shows that is too small for the screens.</summary>
public static class TooSmall
{
    /// <summary>The request for more room, in whatever room there is.</summary>
    public static Picture Picture(PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        string request = $"This window has {size.Width} columns and {size.Height} lines; Progression needs "
            + $"{PictureSize.Smallest.Width} by {PictureSize.Smallest.Height}. Make it larger: nothing is lost.";
        return new([.. TextFit.Wrap(request, Math.Max(2, size.Width)).Select(line => PictureRow.Of(line))]);
    }
}
