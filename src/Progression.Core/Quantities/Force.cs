namespace Progression.Core.Quantities;

/// <summary>A force at a dynamometer, without sign.</summary>
public sealed record Force : Quantity<Force>
{
    private Force(double value) : base(value, 0, 5000)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "N";

    /// <summary>The amount in newtons.</summary>
    public double Newtons => Value;

    /// <summary>Makes the quantity from newtons.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 5000, both included.</exception>
    public static Force FromNewtons(double value) => new(value);
}
