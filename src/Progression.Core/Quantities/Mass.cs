namespace Progression.Core.Quantities;

/// <summary>A mass: of the body or of a load.</summary>
public sealed record Mass : Quantity<Mass>
{
    private Mass(double value) : base(value, 0, 500)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "kg";

    /// <summary>The amount in kilograms.</summary>
    public double Kilograms => Value;

    /// <summary>Makes the quantity from kilograms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 500, both included.</exception>
    public static Mass FromKilograms(double value) => new(value);
}
