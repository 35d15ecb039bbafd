using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>What became of a submission. Only <see cref="Saved"/> means that it is on disk.</summary>
public abstract record AppendResult
{
    private AppendResult()
    {
    }

    /// <summary>On disk, now or already before: repeating a submission that landed gives the stamps it got then.</summary>
    /// <param name="Stamps">One for each draft, in the order of the drafts.</param>
    public sealed record Saved(ImmutableArray<RevisionStamp> Stamps) : AppendResult;

    /// <summary>Another save came first; nothing was written.</summary>
    /// <param name="Current">Newest revision of each chain whose draft was based on something else; no entry for a chain that has none.</param>
    public sealed record Conflict(ImmutableArray<RevisionStamp> Current) : AppendResult;

    /// <summary>The store was in use until the deadline passed; nothing was written.</summary>
    /// <param name="Holder">Who has it; null when the system does not say.</param>
    public sealed record Busy(LockHolder? Holder) : AppendResult;

    /// <summary>Too little room on the disk; nothing was written, or it was taken back.</summary>
    public sealed record NoSpace : AppendResult;

    /// <summary>The journal is damaged: reading goes on, writing waits until somebody has looked at it.</summary>
    /// <param name="What">Where the damage is.</param>
    public sealed record Corrupt(string What) : AppendResult;

    /// <summary>The submission or the folder is not fit for saving; nothing was written.</summary>
    /// <param name="Why">What is wrong, as a sentence.</param>
    public sealed record Refused(string Why) : AppendResult;
}
