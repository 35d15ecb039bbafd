namespace Progression.Core.Quantities;

/// <summary>A current through the pads, peak or root mean square as the member that holds it says.</summary>
public sealed record Current : Quantity<Current>
{
    private Current(double value) : base(value, 0, 1000)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "mA";

    /// <summary>The amount in milliamperes.</summary>
    public double Milliamperes => Value;

    /// <summary>Makes the quantity from milliamperes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 1000, both included.</exception>
    public static Current FromMilliamperes(double value) => new(value);
}
