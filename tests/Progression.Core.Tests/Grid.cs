using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Tests;

/// <summary>A plan written cell by cell in the notation of the editor, for the knee of <see cref="Knee.Well"/>.</summary>
internal static class Grid
{
    private static readonly Basis Written = new("TEST", "Written by a test.", [], [], new Source("test", Standing.CommonPractice), "");

    /// <summary>An empty plan from the operation's week on.</summary>
    internal static PlanRevision Empty(int weeks = 4, int from = 1, string regimen = "strong-15-twice-daily", bool withStim = true) => new()
    {
        Code = Knee.Well.Case.Code,
        Operation = Knee.Day(0),
        Weeks = weeks,
        From = Knee.Day(from),
        Regimen = regimen,
        LibraryVersion = Knee.Library.Version,
        Lanes = Lanes.For(withStim),
        Cells = ImmutableDictionary<CellAddress, PlanCell>.Empty,
    };

    /// <summary>The plan with a cell filled as the editor would read it.</summary>
    internal static PlanRevision Put(this PlanRevision plan, string lane, int week, string text) =>
        plan.With(new CellAddress(lane, week), new PlanCell(Read(plan, lane, text), Written, null));

    internal static CellContent? Read(PlanRevision plan, string lane, string text) =>
        CellNotation.Read(plan.LaneOf(lane)!, text, Knee.Library) is var entered && entered.Value is { } edit
            ? edit.Content
            : throw new ArgumentException(entered.Problems[0].ToString(), nameof(text));

    internal static string Text(this PlanRevision plan, string lane, int week) => CellNotation.Text(plan.LaneOf(lane)!, plan.ContentAt(lane, week), Knee.Library);

    /// <summary>The findings of one rule.</summary>
    internal static ImmutableArray<Finding> Of(this ImmutableArray<Finding> findings, string rule) => [.. findings.Where(finding => finding.Rule == rule)];
}
