namespace Progression.Core.Quantities;

/// <summary>Repetitions a second: pulses a second, bursts a second, or a carrier frequency.</summary>
public sealed record Frequency : Quantity<Frequency>
{
    private Frequency(double value) : base(value, 0, 100000)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "Hz";

    /// <summary>The amount in hertz.</summary>
    public double Hertz => Value;

    /// <summary>Makes the quantity from hertz.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 100000, both included.</exception>
    public static Frequency FromHertz(double value) => new(value);
}
