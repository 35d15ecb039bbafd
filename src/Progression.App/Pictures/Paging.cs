namespace Progression.App.Pictures;

/// <summary>
/// Which part of a long list is shown. Only a page turn moves the list, so that a step of the cursor changes two lines and not
/// all of them: that is what a slow line can bear.
/// </summary>
public static class Paging
{
    /// <summary>The first item shown, from 0.</summary>
    /// <param name="cursor">The item that must be seen, from 0.</param>
    /// <param name="shown">How many items there is room for; at least 1.</param>
    /// <param name="total">How many items there are.</param>
    /// <param name="overlap">How many items of a page are seen again on the next.</param>
    public static int First(int cursor, int shown, int total, int overlap = 0)
    {
        if (total <= shown)
        {
            return 0;
        }
        int step = Math.Max(1, shown - overlap);
        return Math.Min(cursor / step * step, total - shown);
    }
}
