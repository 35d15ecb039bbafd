namespace Progression.Core.Quantities;

/// <summary>A joint angle or a difference of two. Knee angles are flexion-positive: 0 is straight, +5 is 5 degrees short of straight, -3 is 3 degrees of hyperextension.</summary>
public sealed record Angle : Quantity<Angle>
{
    private Angle(double value) : base(value, -180, 180)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "deg";

    /// <summary>The amount in degrees.</summary>
    public double Degrees => Value;

    /// <summary>Makes the quantity from degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from -180 to 180, both included.</exception>
    public static Angle FromDegrees(double value) => new(value);
}
