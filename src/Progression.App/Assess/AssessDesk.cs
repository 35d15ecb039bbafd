using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>What lies beside the form of an assessment: everything it reads and never changes.</summary>
public sealed record AssessDesk
{
    /// <summary>The case as it is saved.</summary>
    public required Case Case { get; init; }

    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The present day; no visit lies after it.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>The change of a measure in the newest of some states, oldest first, against the latest before that has it; null when none has.</summary>
    public required Func<ImmutableArray<KneeState>, string, Change?> ChangeOf { get; init; }

    /// <summary>What is odd about a visit, given the case without it: each is asked before the visit is taken.</summary>
    public required Func<Case, Assessment, ImmutableArray<EntryQuery>> QueriesOn { get; init; }

    /// <summary>The desk of a case, with every rule of the program.</summary>
    public static AssessDesk For(Case patient, ClinicalLibrary library, DateOnly today) => new()
    {
        Case = patient,
        Library = library,
        Today = today,
        ChangeOf = (states, measure) => Changes.FromLast(states, measure, library),
        QueriesOn = (before, visit) => EntryQueries.Of(before, visit, library),
    };
}
