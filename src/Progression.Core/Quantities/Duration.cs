namespace Progression.Core.Quantities;

/// <summary>A span of time within a session or a week; zero is allowed (no ramp), a negative one is not.</summary>
public sealed record Duration : Quantity<Duration>
{
    private Duration(double value) : base(value, 0, 604800)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "s";

    /// <summary>The amount in seconds.</summary>
    public double Seconds => Value;

    /// <summary>Makes the quantity from seconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 604800, both included.</exception>
    public static Duration FromSeconds(double value) => new(value);
}
