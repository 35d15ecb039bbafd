namespace Progression.Core.Quantities;

/// <summary>An electric charge of one polarity, without its sign.</summary>
public sealed record Charge : Quantity<Charge>
{
    private Charge(double value) : base(value, 0, 1_000_000)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "uC";

    /// <summary>The amount in microcoulombs.</summary>
    public double Microcoulombs => Value;

    /// <summary>Makes the quantity from microcoulombs.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 1000000, both included.</exception>
    public static Charge FromMicrocoulombs(double value) => new(value);
}
