namespace Progression.App.Pictures;

/// <summary>A text that may be longer than its room.</summary>
public static class ScrolledText
{
    /// <summary>The lines from where it is scrolled to; the last line shown tells how many follow.</summary>
    /// <param name="lines">The whole text.</param>
    /// <param name="scroll">Lines that are scrolled past; what would leave the room half empty is not.</param>
    /// <param name="room">The room.</param>
    public static Picture Of(IReadOnlyList<PictureRow> lines, int scroll, PictureSize room)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(room);
        int first = Math.Clamp(scroll, 0, Math.Max(0, lines.Count - room.Height));
        List<PictureRow> shown = [.. lines.Skip(first).Take(room.Height)];
        if (first + room.Height < lines.Count)
        {
            string more = $" {lines.Count - first - room.Height} more ↓ ]";
            shown[^1] = shown[^1].Fit(room.Width - more.Length).Then(PictureRow.Of(more, Ink.Strong));
        }

        return new([.. shown]);
    }
}
