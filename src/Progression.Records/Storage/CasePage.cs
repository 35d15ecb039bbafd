using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>One page of a list of cases.</summary>
/// <param name="Rows">The rows asked for.</param>
/// <param name="Total">How many cases match, on this page or not.</param>
public sealed record CasePage(ImmutableArray<CaseRow> Rows, int Total);
