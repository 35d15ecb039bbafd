using System.Collections.Immutable;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>What became of a save. Only <see cref="Saved"/> means that it is on disk.</summary>
public abstract record SaveResult
{
    private SaveResult()
    {
    }

    /// <summary>On disk.</summary>
    /// <param name="Stamps">The stamp of each new revision.</param>
    public sealed record Saved(ImmutableArray<RevisionStamp> Stamps) : SaveResult
    {
        /// <summary>The stamp of the plan's new revision.</summary>
        /// <exception cref="InvalidOperationException">No plan was saved.</exception>
        public RevisionStamp Plan => Stamps.First(stamp => stamp.Kind == RecordKind.Plan);

        /// <summary>The stamp of the case's new revision.</summary>
        /// <exception cref="InvalidOperationException">No case was saved.</exception>
        public RevisionStamp Case => Stamps.First(stamp => stamp.Kind == RecordKind.Case);
    }

    /// <summary>Not saved.</summary>
    /// <param name="Why">Why, as a sentence with what to do.</param>
    /// <param name="Kind">Which kind of refusal.</param>
    public sealed record NotSaved(string Why, Refusal Kind) : SaveResult;
}

/// <summary>Kinds of refused saves.</summary>
public enum Refusal
{
    /// <summary>Somebody saved first, or the store is in use: try again.</summary>
    TryLater,

    /// <summary>No room on the disk.</summary>
    NoSpace,

    /// <summary>The records are damaged.</summary>
    Damaged,

    /// <summary>Not permitted or not fit to be saved.</summary>
    Refused,
}
