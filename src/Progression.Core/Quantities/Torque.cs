namespace Progression.Core.Quantities;

/// <summary>A turning moment about the knee, without sign.</summary>
public sealed record Torque : Quantity<Torque>
{
    private Torque(double value) : base(value, 0, 1000)
    {
    }

    /// <inheritdoc/>
    public override string Unit => "Nm";

    /// <summary>The amount in newton metres.</summary>
    public double NewtonMetres => Value;

    /// <summary>Makes the quantity from newton metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 0 to 1000, both included.</exception>
    public static Torque FromNewtonMetres(double value) => new(value);
}
