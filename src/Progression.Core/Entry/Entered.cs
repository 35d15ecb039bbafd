using System.Collections.Immutable;

namespace Progression.Core.Entry;

/// <summary>What came of reading something a person entered: a value, or every problem found, in the order of the form.</summary>
/// <typeparam name="T">The type of a good value.</typeparam>
public sealed record Entered<T>
    where T : class
{
    private Entered(T? value, ImmutableArray<Problem> problems) => (Value, Problems) = (value, problems);

    /// <summary>The value; null exactly when there are problems.</summary>
    public T? Value { get; }

    /// <summary>The problems; empty exactly when there is a value.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>A good value.</summary>
    public static Entered<T> Good(T value) => new(value, []);

    /// <summary>At least one problem.</summary>
    /// <exception cref="ArgumentException">No problem is given.</exception>
    public static Entered<T> Bad(params ImmutableArray<Problem> problems) =>
        problems.IsDefaultOrEmpty ? throw new ArgumentException("A refused entry names its problems.", nameof(problems)) : new(null, problems);
}
