using System.Globalization;
using Progression.Core.Outcomes;

namespace Progression.App.Figures;

/// <summary>Which groups of cases are told beside all of them.</summary>
public enum FiguresGroups
{
    /// <summary>None.</summary>
    None,

    /// <summary>By the regimen of the plan.</summary>
    Regimen,

    /// <summary>By the year of the operation.</summary>
    Year,
}

/// <summary>What the groups are.</summary>
public static class FiguresGrouping
{
    /// <summary>Names the group of a case; null for no groups.</summary>
    public static Func<CaseOutcome, string>? Of(this FiguresGroups groups) => groups switch
    {
        FiguresGroups.Regimen => one => one.Regimen ?? "no plan",
        FiguresGroups.Year => one => one.Year.ToString(CultureInfo.InvariantCulture),
        _ => null,
    };
}
