using Progression.Core.Quantities;

namespace Progression.Core.Library;

/// <summary>The size of one pad: a rectangle, or a disc when <see cref="Height"/> is null.</summary>
public sealed record PadSize
{
    private PadSize(Length width, Length? height) => (Width, Height) = (width, height);

    /// <summary>The width, or the diameter of a round pad.</summary>
    public Length Width { get; }

    /// <summary>The height; null for a round pad.</summary>
    public Length? Height { get; }

    /// <summary>Area in square centimetres: width by height, or pi/4 by diameter squared.</summary>
    public double SquareCentimetres => Height is null
        ? Math.PI * Width.Centimetres * Width.Centimetres / 4
        : Width.Centimetres * Height.Centimetres;

    /// <summary>A rectangular pad.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A side is zero: such a pad has no area.</exception>
    public static PadSize Rectangle(Length width, Length height)
    {
        ArgumentOutOfRangeException.ThrowIfZero(width.Centimetres);
        ArgumentOutOfRangeException.ThrowIfZero(height.Centimetres);
        return new PadSize(width, height);
    }

    /// <summary>A round pad of a diameter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is zero.</exception>
    public static PadSize Round(Length diameter)
    {
        ArgumentOutOfRangeException.ThrowIfZero(diameter.Centimetres);
        return new PadSize(diameter, null);
    }

    /// <summary>"7.6 x 12.7 cm" or "round 7 cm".</summary>
    public override string ToString() =>
        Height is null ? $"round {Width}" : $"{Number.Text(Width.Centimetres)} x {Height}";
}
