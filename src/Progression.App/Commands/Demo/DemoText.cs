using Progression.App.Commands.Plans;
using Progression.App.Grid;
using Progression.Core.Checks;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Commands.Demo;

/// <summary>The caseload as an aligned table: code, knee, operation, week, phase now, findings by severity.</summary>
internal static class DemoText
{
    private static readonly string[] Heading = ["Code", "Knee", "Operated", "Week", "Phase now", "Findings"];

    public static string Of(IReadOnlyList<PlanAtHand> plans, DateOnly today)
    {
        List<string[]> rows = [Heading, .. plans.Select(at => Row(at, today))];
        int[] widths = [.. Heading.Select((_, column) => rows.Max(row => row[column].Length))];
        return string.Join('\n', rows.Select(row => string.Join("  ", row.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd()));
    }

    private static string[] Row(PlanAtHand at, DateOnly today)
    {
        int week = PostOpWeek.Of(at.Plan.Operation, today);
        return
        [
            at.Case.Code.Text, at.Case.Operation.Side.ToString().ToLowerInvariant(), $"{at.Plan.Operation:yyyy-MM-dd}", $"{week} of {at.Plan.Weeks}",
            Phase(at, week), FindingWords.Counts(PlanCheck.Check(at.Case, at.Plan, at.Library)),
        ];
    }

    private static string Phase(PlanAtHand at, int week) =>
        !at.Plan.StimBarred.IsEmpty ? "stim barred"
        : at.Plan.ContentAt(Lanes.Stim, week) is StimCell stim ? at.Library.RungOf(stim.Rung).Title.ToLowerInvariant()
        : "no stim";
}
