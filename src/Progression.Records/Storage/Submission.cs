using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>What one save hands over: all drafts land, or none does.</summary>
/// <param name="CaseCode">1 to 64 characters, no control character, no blank at either end; upper and lower case differ.</param>
/// <param name="Drafts">One or more, at most one of each kind.</param>
/// <param name="By">Who saves.</param>
/// <param name="At">When; kept in UTC and cut to milliseconds.</param>
public sealed record Submission(string CaseCode, ImmutableArray<Draft> Drafts, Actor By, DateTimeOffset At)
{
    /// <summary>Revisions of other chains of the case that must be the newest, or it is a conflict: a signature is for the plan that was read. Default: none.</summary>
    public ImmutableArray<RevisionOf> Requires { get; init; } = [];
}

/// <summary>A revision of a chain of the case at hand.</summary>
/// <param name="Kind">Which chain.</param>
/// <param name="Revision">Which revision of it.</param>
public sealed record RevisionOf(RecordKind Kind, RevisionRef Revision);
