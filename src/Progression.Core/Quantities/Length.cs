namespace Progression.Core.Quantities;

/// <summary>A length: a pad's side, a lever arm, a girth, a step's height.</summary>
public sealed record Length : Quantity<Length>
{
    private Length(double value) : base(value, 0, 500)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "cm";

    /// <summary>The amount in centimetres.</summary>
    public double Centimetres => Value;

    /// <summary>Makes the quantity from centimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 500, both included.</exception>
    public static Length FromCentimetres(double value) => new(value);
}
