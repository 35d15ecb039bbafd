using System.Collections.Immutable;

namespace Progression.App.Pictures;

/// <summary>A whole screen or a printed grid as lines of spans. It knows no terminal, so tests and files can hold it.</summary>
/// <param name="Rows">Lines from top to bottom.</param>
/// <param name="Caret">Where the terminal's cursor rests, so that a screen reader can follow; null leaves it hidden.</param>
public sealed record Picture(ImmutableArray<PictureRow> Rows, CaretAt? Caret = null)
{
    /// <summary>The characters alone, trailing spaces removed, one line feed between lines.</summary>
    public string Text => string.Join('\n', Rows.Select(row => row.Text.TrimEnd()));

    /// <summary>The picture cut or filled to exactly this size.</summary>
    public Picture Fit(PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        IEnumerable<PictureRow> rows = Rows.Concat(Enumerable.Repeat(PictureRow.Empty, size.Height)).Take(size.Height);
        return this with { Rows = [.. rows.Select(row => row.Fit(size.Width))] };
    }
}

/// <summary>A place in a picture, both counted from zero.</summary>
/// <param name="Column">Columns from the left edge.</param>
/// <param name="Row">Lines from the top edge.</param>
public sealed record CaretAt(int Column, int Row);

/// <summary>The room for a picture.</summary>
/// <param name="Width">Columns.</param>
/// <param name="Height">Lines.</param>
public sealed record PictureSize(int Width, int Height)
{
    /// <summary>The smallest window in which every screen is complete.</summary>
    public static PictureSize Smallest { get; } = new(80, 24);

    /// <summary>Whether a screen is complete in this room.</summary>
    public bool IsEnough => Width >= Smallest.Width && Height >= Smallest.Height;
}
