namespace Progression.Core.Quantities;

/// <summary>
/// A measured or prescribed amount that carries its unit in its type, so that an angle can never stand where a torque is meant.
/// Two amounts of one type are equal when their values are equal, and are ordered by value.
/// </summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public abstract record Quantity<TSelf> : IComparable<TSelf>
    where TSelf : Quantity<TSelf>
{
    private protected Quantity(double value, double least, double most)
    {
        if (!(value >= least && value <= most))
        {
            throw new ArgumentOutOfRangeException(
                nameof(value), value, $"{typeof(TSelf).Name} must be from {Number.Text(least)} to {Number.Text(most)} in its own unit.");
        }

        Value = value;
    }

    /// <summary>The unit symbol in which the amount is shown.</summary>
    public abstract string Unit { get; }

    /// <summary>The amount in the unit of the type.</summary>
    private protected double Value { get; }

    /// <inheritdoc/>
    public int CompareTo(TSelf? other) => other is null ? 1 : Value.CompareTo(other.Value);

    /// <summary>Whether the left amount is less than the right one.</summary>
    public static bool operator <(Quantity<TSelf> left, Quantity<TSelf> right) => left.Value < right.Value;

    /// <summary>Whether the left amount is greater than the right one.</summary>
    public static bool operator >(Quantity<TSelf> left, Quantity<TSelf> right) => left.Value > right.Value;

    /// <summary>Whether the left amount is at most the right one.</summary>
    public static bool operator <=(Quantity<TSelf> left, Quantity<TSelf> right) => left.Value <= right.Value;

    /// <summary>Whether the left amount is at least the right one.</summary>
    public static bool operator >=(Quantity<TSelf> left, Quantity<TSelf> right) => left.Value >= right.Value;

    /// <summary>The amount with its unit, as shown to people: "15 s", "7.6 cm".</summary>
    public sealed override string ToString() => $"{Number.Text(Value)} {Unit}";
}
