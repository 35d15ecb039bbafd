using System.Collections.Immutable;

namespace Progression.Core.People;

/// <summary>A clinician's word that stim may be used in spite of a screening item.</summary>
/// <param name="By">Who cleared it: a role or initials.</param>
/// <param name="On">When.</param>
/// <param name="Text">What was said, with any condition.</param>
public sealed record Clearance(string By, DateOnly On, string Text);

/// <summary>The answer to one screening item.</summary>
/// <param name="Item">The id of the item in the library.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Clearance">The clearance given; null for none.</param>
public sealed record ScreeningAnswer(string Item, Answer Answer, Clearance? Clearance);

/// <summary>What was asked before stim was planned.</summary>
/// <param name="Date">When it was asked; null when it was not.</param>
/// <param name="Answers">The answers by item id; an item that is missing was not asked.</param>
public sealed record Screening(DateOnly? Date, ImmutableSortedDictionary<string, ScreeningAnswer> Answers)
{
    /// <summary>No screening done.</summary>
    public static Screening NotDone { get; } = new(null, ImmutableSortedDictionary.Create<string, ScreeningAnswer>(StringComparer.Ordinal));
}
