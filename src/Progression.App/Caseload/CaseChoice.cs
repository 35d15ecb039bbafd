using System.Collections.Immutable;

namespace Progression.App.Caseload;

/// <summary>Which cases of a list are shown, in which order. The default is all of them by code.</summary>
public sealed record CaseChoice
{
    /// <summary>All cases by code.</summary>
    public static CaseChoice Everything { get; } = new();

    /// <summary>Which of them.</summary>
    public CaseFilter Filter { get; init; }

    /// <summary>In which order.</summary>
    public CaseOrder Order { get; init; }

    /// <summary>A text that must be part of the code, the knee or the name of who saved last; empty for none.</summary>
    public string Find { get; init; } = "";

    /// <summary>Whether cases may be left out.</summary>
    public bool Narrows => Filter != CaseFilter.All || Find.Length > 0;

    /// <summary>The cases in this order, all of them.</summary>
    public ImmutableArray<CaseLine> Ordered(ImmutableArray<CaseLine> cases) => [.. (Order switch
    {
        CaseOrder.Due => cases.OrderBy(line => line.Standing?.Next?.On ?? DateOnly.MaxValue),
        CaseOrder.Week => cases.OrderByDescending(line => line.Operation ?? DateOnly.MinValue),
        CaseOrder.Saved => cases.OrderByDescending(line => line.SavedAt),
        CaseOrder.Behind => cases.OrderByDescending(line => line.Standing?.Behind.Length ?? 0),
        _ => cases.OrderBy(line => line.Code.Text, StringComparer.Ordinal),
    }).ThenBy(line => line.Code.Text, StringComparer.Ordinal)];

    /// <summary>Those that are shown of cases that are in order already.</summary>
    public ImmutableArray<CaseLine> Of(ImmutableArray<CaseLine> ordered) => Narrows ? [.. ordered.Where(Shows)] : ordered;

    private bool Shows(CaseLine line) => (Find.Length == 0 || line.Matches(Find)) && Filter switch
    {
        CaseFilter.Due => line.Has(CaseMark.Due),
        CaseFilter.Behind => line.Has(CaseMark.Behind),
        CaseFilter.Unsigned => line.Has(CaseMark.Unsigned),
        CaseFilter.Blocked => line.Has(CaseMark.Blocked),
        CaseFilter.Mine => line.IsMine,
        CaseFilter.Drafts => line.Has(CaseMark.Draft),
        _ => true,
    };
}
