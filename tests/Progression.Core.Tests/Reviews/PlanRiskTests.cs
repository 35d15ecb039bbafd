using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.Core.Tests.Reviews;

public sealed class PlanRiskTests
{
    private static readonly CellAddress Stim = new(Lanes.Stim, 2);
    private static readonly PlanRevision Plan = Grid.Empty().Put(Lanes.Stim, 2, "high 15x2 5d");
    private static readonly CellContent Less = Grid.Read(Plan, Lanes.Stim, "low 15x1 5d")!;

    [Fact]
    public void Findings_are_counted_by_weight_and_notes_are_not() => Assert.Equal(
        new PlanRisk(1, 2, 1, 0, null),
        PlanRisk.Of(Plan, null, [Of(Severity.Stop), Of(Severity.Severe), Of(Severity.Severe), Of(Severity.Warning), Of(Severity.Note)]));

    [Fact]
    public void A_cell_set_by_hand_to_something_else_is_an_override_and_one_that_repeats_the_suggestion_is_not()
    {
        Assert.Equal(1, PlanRisk.Of(PlanEdit.Set(Plan, Stim, Less), null, []).Overrides);
        Assert.Equal(0, PlanRisk.Of(PlanEdit.Set(Plan, Stim, Plan.ContentAt(Lanes.Stim, 2)), null, []).Overrides);
    }

    [Fact]
    public void What_was_signed_so_is_no_override_any_more_and_the_changes_since_are_counted()
    {
        PlanRevision signed = PlanEdit.Set(Plan, Stim, Less);
        PlanRevision now = PlanEdit.Set(signed, new CellAddress(Lanes.Stim, 3), Less);

        Assert.Equal(new PlanRisk(0, 0, 0, 0, 0), PlanRisk.Of(signed, signed, []));
        Assert.Equal(new PlanRisk(0, 0, 0, 1, 1), PlanRisk.Of(now, signed, []));
    }

    [Fact]
    public void Proposed_changes_that_were_not_taken_are_overrides_until_they_are_signed()
    {
        PlanRevision decided = Plan with { Decision = PlanDecision.Of(Plan.Operation, 5, 2, "The rest can wait.") };

        Assert.Equal(3, PlanRisk.Of(decided, Plan, []).Overrides);
        Assert.Equal(0, PlanRisk.Of(decided, decided, []).Overrides);
    }

    [Fact]
    public void Stops_come_before_severe_findings_before_overrides_before_warnings()
    {
        PlanRisk[] right = [new(1, 0, 0, 0, 1), new(0, 2, 0, 0, 1), new(0, 1, 9, 9, 1), new(0, 0, 1, 3, 1), new(0, 0, 9, 2, 1), new(0, 0, 0, 0, null)];
        List<PlanRisk> mixed = [right[3], right[5], right[0], right[4], right[2], right[1]];
        mixed.Sort((one, other) => one.Before(other));
        Assert.Equal(right, mixed);
    }

    private static Finding Of(Severity severity) => new() { Rule = "TEST", Severity = severity, Text = "", Source = new Source("test", Standing.CommonPractice) };
}
