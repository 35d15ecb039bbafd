namespace Progression.Core.Library;

/// <summary>
/// A field of a published regimen: a value with its standing, or left open by the paper. Open is not zero and not a default.
/// </summary>
/// <typeparam name="T">The type of the value.</typeparam>
public sealed record Stated<T>
    where T : notnull
{
    private Stated(T? value, bool isOpen, Standing standing) => (Given, IsOpen, Standing) = (value, isOpen, standing);

    /// <summary>Whether the paper leaves the field open.</summary>
    public bool IsOpen { get; }

    /// <summary>How well the value is founded; without meaning when the field is open.</summary>
    public Standing Standing { get; }

    private T? Given { get; }

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">The field is open.</exception>
    public T Value => IsOpen ? throw new InvalidOperationException("The field is open: it has no value.") : Given!;

    /// <summary>A field the paper leaves open.</summary>
    public static Stated<T> Open { get; } = new(default, true, Standing.Seen);

    /// <summary>A field with a value.</summary>
    public static Stated<T> As(T value, Standing standing) => new(value, false, standing);

    /// <summary>The value with its standing where that is not "seen", or "open".</summary>
    public override string ToString() =>
        IsOpen ? "open" : Standing == Standing.Seen ? $"{Given}" : $"{Given} ({Source.Words(Standing)})";
}
