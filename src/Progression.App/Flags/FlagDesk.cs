using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.App.Flags;

/// <summary>What lies beside the red-flag checklist: everything it reads and never changes.</summary>
public sealed record FlagDesk
{
    /// <summary>The case as it is saved.</summary>
    public required Case Case { get; init; }

    /// <summary>The present day, on which the questions are asked.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Every flag as it stands today for a case.</summary>
    public required Func<Case, ImmutableArray<FlagState>> FlagsOf { get; init; }

    /// <summary>The desk of a case, with every flag of the library.</summary>
    public static FlagDesk For(Case patient, ClinicalLibrary library, DateOnly today) => new()
    {
        Case = patient,
        Today = today,
        FlagsOf = altered => RedFlags.Of(altered, library, today),
    };
}
