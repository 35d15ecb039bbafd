using Progression.App.Grid;
using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

public sealed class GridFindingsTests
{
    private static GridState Lonely => Sample.Press(Sample.Type(Sample.Press(Sample.At(Sample.State, "quads-strength", 3), "x"), "rest"), "Enter");

    [Fact]
    public void The_worst_stands_first() =>
        Assert.Equal([Severity.Severe, Severity.Warning, Severity.Warning], Lonely.Findings.Select(finding => finding.Severity));

    [Fact]
    public void Enter_goes_to_the_findings_cell()
    {
        GridState state = Sample.Press(Lonely, "f", "Down", "Enter");
        Assert.Equal(new CellAddress("walking", 5), state.Cursor);
        Assert.Equal(GridMode.Grid, state.Mode);
        Assert.Equal("? warning: Week 5 asks for long walks.", state.Status);
    }

    [Fact]
    public void Right_and_left_go_along_the_findings_cells_and_round()
    {
        GridState state = Sample.Press(Lonely, "f", "Right");
        Assert.Equal(new CellAddress(Lanes.Stim, 3), state.Cursor);
        Assert.Equal("Cell 2 of 2: Stim, week 3.", state.Status);
        Assert.Equal(new CellAddress("quads-strength", 3), Sample.Press(state, "Right").Cursor);
        Assert.Equal(new CellAddress("quads-strength", 3), Sample.Press(state, "Left").Cursor);
    }

    [Fact]
    public void The_cure_is_done_from_the_list_or_from_the_cell_and_can_be_undone()
    {
        foreach (GridState cured in new[] { Sample.Press(Lonely, "f", "c"), Sample.Press(Lonely, "c") })
        {
            Assert.Equal("quad-set", Assert.IsType<ActiveCell>(cured.Plan.ContentAt("quads-strength", 3)).Exercise);
            Assert.DoesNotContain(cured.Findings, finding => finding.Severity == Severity.Severe);
            Assert.Equal("Cure taken: Put quad sets into week 3.", cured.Status);
            Assert.Null(Sample.Press(cured, "u").Plan.ContentAt("quads-strength", 3));
        }
    }

    [Fact]
    public void A_cure_that_only_a_person_can_do_says_so() =>
        Assert.Equal("Only a person can do this: Shorten the walk with the patient.", Sample.Press(Lonely, "f", "Down", "c").Status);

    [Fact]
    public void Tab_goes_round_the_cells_with_findings_in_reading_order()
    {
        GridState state = Sample.At(Lonely, "flexion", 1);
        List<CellAddress> seen = [];
        for (int at = 0; at < 5; at++)
        {
            state = Sample.Press(state, "Tab");
            seen.Add(state.Cursor);
        }
        Assert.Equal([new("stim", 3), new("quads-strength", 3), new("walking", 5), new("walking", 6), new("stim", 3)], seen);
        Assert.Equal(new CellAddress("walking", 6), Sample.Press(state, "Shift+Tab").Cursor);
    }

    [Fact]
    public void Without_findings_the_keys_say_so()
    {
        GridState clean = GridState.Open(Sample.Desk with { Check = _ => [] }, Sample.Plan());
        Assert.Equal("No cell has a finding.", Sample.Press(clean, "Tab").Status);
        Assert.Equal("There is no finding.", Sample.Press(clean, "f", "Enter").Status);
        Assert.Equal("There is no finding here.", Sample.Press(clean, "c").Status);
    }

    [Fact]
    public void Counts_name_what_there_is_and_nothing_else()
    {
        Assert.Equal("! 1 severe, ? 2 warnings", FindingWords.Counts(Lonely.Findings));
        Assert.Equal("no findings", FindingWords.Counts([]));
    }

    [Fact]
    public void Every_severity_has_its_own_mark_and_word()
    {
        Severity[] all = Enum.GetValues<Severity>();
        Assert.Equal(all.Length, all.Select(FindingWords.Mark).Distinct().Count());
        Assert.Equal(all.Length, all.Select(FindingWords.Word).Distinct().Count());
    }
}
