using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>What one save hands over: all drafts land, or none does.</summary>
/// <param name="CaseCode">1 to 64 characters, no control character, no blank at either end; upper and lower case differ.</param>
/// <param name="Drafts">One or more, at most one of each kind.</param>
/// <param name="By">Who saves.</param>
/// <param name="At">When; kept in UTC and cut to milliseconds.</param>
public sealed record Submission(string CaseCode, ImmutableArray<Draft> Drafts, Actor By, DateTimeOffset At);
