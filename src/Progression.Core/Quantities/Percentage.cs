namespace Progression.Core.Quantities;

/// <summary>A share in percent of a named whole; over 100 is possible (stronger than before the operation).</summary>
public sealed record Percentage : Quantity<Percentage>
{
    private Percentage(double value) : base(value, 0, 1000)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "%";

    /// <summary>The amount in percent.</summary>
    public double Percent => Value;

    /// <summary>Makes the quantity from percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 1000, both included.</exception>
    public static Percentage FromPercent(double value) => new(value);
}
