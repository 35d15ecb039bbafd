namespace Progression.Core.Quantities;

/// <summary>The width of one stimulation pulse or of one of its phases, as the holder says.</summary>
public sealed record PulseWidth : Quantity<PulseWidth>
{
    private PulseWidth(double value) : base(value, 0, 20000)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "us";

    /// <summary>The amount in microseconds.</summary>
    public double Microseconds => Value;

    /// <summary>Makes the quantity from microseconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 20000, both included.</exception>
    public static PulseWidth FromMicroseconds(double value) => new(value);
}
