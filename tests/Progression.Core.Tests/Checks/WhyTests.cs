using System.Collections.Immutable;
using Progression.Core.Checks;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Checks;

public sealed class WhyTests
{
    private static readonly Knee Patient = Knee.Well.Seen(2, Look.Well);

    [Fact]
    public void Every_cell_of_the_grid_has_an_answer()
    {
        PlanRevision plan = Patient.Draft();

        foreach (Lane lane in plan.Lanes)
        {
            Assert.All(Enumerable.Range(1, plan.Weeks), week =>
            {
                Explanation why = Of(plan, lane.Id, week);
                Assert.NotEmpty(why.Heading);
                Assert.All(why.Reasons, Assert.NotEmpty);
                Assert.NotEmpty(why.Reasons);
                Assert.NotEmpty(why.Rule);
                Assert.NotEmpty(why.WouldChange);
                Assert.NotEmpty(why.Source.Text);
            });
        }
    }

    [Fact] // 14 sessions, 210 contractions, 210 min: Stevens-Lapsley 2012, 7 days a week assumed.
    public void A_stim_cell_tells_its_sums()
    {
        Explanation why = Of(Patient.Draft(), "stim", 2);

        Assert.Equal("Stim, week 2: high 15x2 daily", why.Heading);
        Assert.Contains(new Input("Sessions this week", "14"), why.Inputs);
        Assert.Contains(new Input("Contractions this week", "210"), why.Inputs);
        Assert.Contains(new Input("Stim time this week", "210 min by the clock"), why.Inputs);
    }

    [Fact]
    public void A_pinned_cell_tells_what_the_draft_would_put()
    {
        PlanRevision pinned = PlanEdit.Set(Patient.Draft(), new CellAddress("stim", 2), null, "on holiday");

        Assert.Equal("Pinned by hand: on holiday. The draft would put: high 15x2 daily.", Of(pinned, "stim", 2).Reasons[0]);
    }

    [Fact]
    public void A_milestone_cell_tells_what_was_measured_in_its_week() =>
        Assert.Contains(new Input("Measured 2026-03-04", "100 deg"), Of(Patient.Draft(), "flexion", 1).Inputs);

    [Fact]
    public void A_milestone_cell_ahead_tells_what_to_expect_and_what_that_rests_on()
    {
        Explanation why = Of(Patient.Draft(), "flexion", 4);

        Assert.Matches("^about [0-9]+ deg, 8 in 10 between [0-9]+ and [0-9]+$", why.Inputs.Single(input => input.Name == "To expect by the end of week 4").Value);
        Assert.Contains("1 reading", why.Inputs.Single(input => input.Name == "The forecast rests on").Value, StringComparison.Ordinal);
        Assert.DoesNotContain(Of(Patient.Draft(), "stim", 4).Inputs, input => input.Name.StartsWith("To expect", StringComparison.Ordinal));
    }

    [Fact]
    public void An_open_red_flag_withholds_what_to_expect()
    {
        Knee flagged = Knee.Well.Seen(2, Look.Well.Says(Signs.ClotSigns, Answer.Yes));
        Explanation why = Why.Of(flagged.Case, Patient.Draft(), Knee.Library, [], new CellAddress("flexion", 4));

        Assert.Contains("withheld", why.Inputs.Single(input => input.Name == "To expect").Value, StringComparison.Ordinal);
    }

    [Fact]
    public void The_lane_of_what_was_done_tells_planned_and_logged_and_never_none_for_nothing_known()
    {
        PlanRevision plan = Patient.Draft();
        Explanation logged = Why.Of(Patient.Stimulated(8).Case, plan, Knee.Library, [], new CellAddress(Lanes.Done, 2));

        Assert.Equal("DONE-OF-PLANNED", logged.Rule);
        Assert.Equal("Done of planned, week 2: stim 1/14", logged.Heading);
        Assert.Contains(new Input("Stimulated contractions", "15 of 210 planned"), logged.Inputs);
        Assert.Contains(new Input("Stim sessions", "not logged of 14 planned"), Of(plan, Lanes.Done, 3).Inputs);
        Assert.Equal("Done of planned, week 3: -", Of(plan, Lanes.Done, 3).Heading);
    }

    [Fact]
    public void A_check_cell_tells_its_figure_its_limit_and_its_findings()
    {
        PlanRevision plan = Grid.Empty().Put("quads-strength", 2, "quad-set 1x10 hold 10 s").Put("quads-strength", 3, "quad-set 1x16 hold 10 s");

        Explanation why = Of(plan, Lanes.Load, 3);

        Assert.Equal("Quads load change, week 3: !+60 %", why.Heading);
        Assert.Equal(LimitIds.LoadRise, Assert.Single(why.Limits).Id);
        Assert.Equal("LOAD-RISE", Assert.Single(why.Findings).Rule);
        Assert.Equal("LOAD-RISE", why.Rule);
        Assert.Equal(["18.7 min in seven days", "11.7 min in seven days"], why.Inputs.Take(2).Select(input => input.Value)); // 1120 s and 700 s
    }

    [Fact]
    public void A_lane_that_stim_was_barred_from_tells_the_reason()
    {
        Knee barred = Patient.Screened("active-implant", Answer.Yes);

        Assert.Contains("Pacemaker", Why.Of(barred.Case, barred.Draft(), Knee.Library, [], new CellAddress("stim", 2)).Reasons[0], StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_cell_says_whether_it_is_past_or_just_empty()
    {
        Assert.Equal("Before the plan's first day: what is done is done.", Assert.Single(Of(Knee.Well.Seen(10, Look.Well).Draft(), "stim", 1).Reasons));
        Assert.Equal("Nothing is planned here.", Assert.Single(Of(Grid.Empty(), "stim", 1).Reasons));
    }

    private static Explanation Of(PlanRevision plan, string lane, int week)
    {
        ImmutableArray<Finding> findings = Patient.Check(plan);
        return Why.Of(Patient.Case, plan, Knee.Library, findings, new CellAddress(lane, week));
    }
}
