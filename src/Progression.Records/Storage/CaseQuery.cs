using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>Which cases to list, in which order.</summary>
public sealed record CaseQuery
{
    /// <summary>Fields and the exact value each must have. Default: none.</summary>
    public ImmutableDictionary<string, string> Where { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Part of the case code or of any field, upper and lower case alike; null for all.</summary>
    public string? Text { get; init; }

    /// <summary>Field to sort by, ordinal, cases without it last; null for the case code, which also settles ties.</summary>
    public string? OrderBy { get; init; }

    /// <summary>Turns the order round; cases without the field stay last.</summary>
    public bool Descending { get; init; }

    /// <summary>Rows to leave out at the start. Default 0.</summary>
    public int Skip { get; init; }

    /// <summary>Most rows to return. Default 50.</summary>
    public int Take { get; init; } = 50;

    /// <summary>Filters, sorts and cuts rows in memory: a caseload is thousands of short rows, not millions.</summary>
    public CasePage PageOf(IEnumerable<CaseRow> rows)
    {
        List<CaseRow> matching = [.. rows.Where(Matches)];
        IOrderedEnumerable<CaseRow> presentFirst = matching.OrderBy(row => SortKey(row) is null);
        IOrderedEnumerable<CaseRow> ordered = Descending
            ? presentFirst.ThenByDescending(SortKey, StringComparer.Ordinal)
            : presentFirst.ThenBy(SortKey, StringComparer.Ordinal);
        return new CasePage(
            [.. ordered.ThenBy(row => row.CaseCode, StringComparer.Ordinal).Skip(Skip).Take(Take)], matching.Count);
    }

    private string? SortKey(CaseRow row) => OrderBy is null ? row.CaseCode : row.Fields.GetValueOrDefault(OrderBy);

    private bool Matches(CaseRow row) =>
        Where.All(wanted => row.Fields.GetValueOrDefault(wanted.Key) == wanted.Value)
        && (Text is null || row.Fields.Values.Prepend(row.CaseCode)
            .Any(value => value.Contains(Text, StringComparison.OrdinalIgnoreCase)));
}
