using System.Collections.Immutable;
using Progression.Core.Adherence;
using Progression.Core.Library;
using Progression.Core.Outcomes;
using Progression.Core.Plots;
using Progression.Core.Quantities;
using Progression.Core.Statistics;

namespace Progression.Core.Tests.Outcomes;

/// <summary>Small invented clinics, counted by hand.</summary>
public sealed class ClinicSummaryTests
{
    private static readonly OutcomeYardstick By = OutcomeYardstick.Of(Knee.Library, Knee.Day(100));
    private static readonly int Lag = By.Goals.ToList().FindIndex(goal => goal.Id == OutcomeGoal.LagClosed);

    [Fact] // 8 people reach it in weeks 1 to 4, two a week: 6 of 8 wait after week 1, 4 of 8 after week 2; when week 3 comes only four are followed.
    public void The_curve_is_told_while_enough_are_followed()
    {
        WaitFigures wait = All([.. Enumerable.Range(0, 8).Select(at => Case(1 + (at / 2)))]).Waits[Lag]!;

        Assert.Equal((8, 8), (wait.People, wait.Events));
        Assert.Equal([0.75, 0.5], wait.Curve.Steps.Select(step => step.Waiting));
        Assert.Equal((0, 0.5), (wait.ReachedBy(0.9)!.Value.Share, wait.ReachedBy(2.9)!.Value.Share));
        Assert.Null(wait.ReachedBy(3));
        Assert.Equal(1, wait.GapWeeks);
    }

    [Fact]
    public void Where_all_reach_it_at_once_that_is_so_ever_after()
    {
        WaitFigures wait = All([.. Enumerable.Repeat(Case(2), 6)]).Waits[Lag]!;

        Assert.Equal((1, null), wait.ReachedBy(26));
        Assert.Equal(2, wait.Curve.Median);
    }

    [Fact]
    public void Fewer_than_five_cases_tell_nothing()
    {
        OutcomeGroup all = All([.. Enumerable.Repeat(Case(2), 4)]);

        Assert.Null(all.Cases);
        Assert.All(all.Waits, Assert.Null);
        Assert.Equal((null, null, null), (all.Adherence, all.Delivered, all.Forecasts));
    }

    [Fact] // Five cases; the lag was measured in four of them.
    public void A_figure_of_fewer_people_than_the_cases_is_kept_back_by_itself()
    {
        OutcomeGroup all = All([.. Enumerable.Repeat(Case(2), 4), Case(null)]);

        Assert.Equal(5, all.Cases);
        Assert.Null(all.Waits[Lag]);
    }

    [Fact] // 4 of one regimen, 6 and 9 of others: the four are hidden, and the six with them, or all less nine less six would tell them.
    public void A_small_group_hides_the_next_with_it()
    {
        ClinicSummary summary = ClinicSummary.Of([.. Of("a", 4), .. Of("b", 6), .. Of("c", 9)], By, one => one.Regimen!);

        Assert.Equal([("all", 19), ("a", null), ("b", null), ("c", 9)], summary.Groups.Select(group => (group.Name, group.Cases)));
        Assert.All(summary.Groups[2].Waits, Assert.Null);
        Assert.NotNull(summary.Groups[3].Waits[Lag]);
    }

    [Fact] // All three regimens have five cases and more; but the lag was measured in three of "a" alone: that figure is hidden there and in "b".
    public void What_is_hidden_in_one_figure_is_not_told_by_that_figure_of_the_others()
    {
        ClinicSummary summary = ClinicSummary.Of([.. Of("a", 3), Case(null) with { Regimen = "a" }, Case(null) with { Regimen = "a" }, .. Of("b", 6), .. Of("c", 9)], By, one => one.Regimen!);

        Assert.Equal([false, true, true, false], summary.Groups.Select(group => group.Waits[Lag] is null));
        Assert.Equal(6, summary.Groups[2].Cases);
    }

    [Fact] // 5 people, each 3 of 4 sessions: 15 of 20. One more has a plan and no log, and is not among them.
    public void Adherence_is_summed_over_those_who_logged()
    {
        CaseOutcome logged = Case(2) with { Adherence = Done(new DoneShare(4, 3, 0, 2), Percentage.FromPercent(80)) };
        CaseOutcome silent = Case(2) with { Adherence = Done(new DoneShare(0, 0, 0, 4), null) with { WeeksLogged = 0 } };
        AdherenceFigures figures = All([.. Enumerable.Repeat(logged, 5), silent]).Adherence!;

        Assert.Equal((5, 75d, 50d), (figures.People, figures.StimSessions.Percent, figures.StimSessions.PercentAtLeast));
        Assert.Equal((75d, 80d), (figures.EachSessions!.Median, figures.HomeWork!.Median));
    }

    [Fact] // Of the five only four were asked about home work, and the regimens of four tell their timing.
    public void Parts_of_a_figure_that_rest_on_too_few_are_not_told()
    {
        CaseOutcome one = Case(2) with { Adherence = Done(new DoneShare(4, 3, 0, 2), Percentage.FromPercent(80)), Delivered = new StimDelivered(3, 45, 45) };
        CaseOutcome other = one with { Adherence = Done(new DoneShare(4, 3, 0, 2), null), Delivered = new StimDelivered(3, 45, null) };
        OutcomeGroup all = All([.. Enumerable.Repeat(one, 4), other]);

        Assert.Null(all.Adherence!.HomeWork);
        Assert.Equal((45d, null), (all.Delivered!.Contractions.Median, all.Delivered.Minutes));
    }

    [Fact] // 5 people with 10 scored forecasts each, 8 of them hits: 40 of 50.
    public void Forecasts_are_told_with_how_many_they_were()
    {
        ForecastFigures figures = All([.. Enumerable.Repeat(Case(2) with { Scored = 10, Hits = 8 }, 5)]).Forecasts!;

        Assert.Equal((5, 50, 40, 0.8), (figures.People, figures.Rate.Scored, figures.Rate.Hits, figures.Share.Share));
    }

    [Fact]
    public void A_clinic_may_ask_for_more_people()
    {
        OutcomeYardstick stricter = OutcomeYardstick.Of(Knee.LibraryWith(LimitIds.SummaryLeast, 10), Knee.Day(100));

        Assert.Null(ClinicSummary.Of([.. Of("a", 9)], stricter, null).Groups[0].Cases);
    }

    [Fact] // Half after week 2: 0, 25, 50 %; the steps go flat, then up, and the axis begins at the operation.
    public void The_plot_draws_the_steps_that_are_told()
    {
        WaitFigures wait = All([.. Enumerable.Range(0, 8).Select(at => Case(1 + (at / 2)))]).Waits[Lag]!;
        PlotContent plot = WaitPlot.Of(wait, 5);

        Assert.Equal([new(0, 0), new(1, 0), new(1, 25), new(2, 25), new(2, 50)], plot.Parts.OfType<PlotPart.Line>().Single().Points);
        Assert.Equal((0, 100), (plot.Across.Ticks[0], plot.Up.Ticks[^1]));
        Assert.Contains("8 after week 0", plot.Note, StringComparison.Ordinal);
        Assert.Contains("25 % by week 1, 50 % by week 2.", plot.Words, StringComparison.Ordinal);
    }

    private static OutcomeGroup All(ImmutableArray<CaseOutcome> cases) => ClinicSummary.Of(cases, By, null).Groups.Single();

    private static IEnumerable<CaseOutcome> Of(string regimen, int count) => Enumerable.Repeat(Case(2) with { Regimen = regimen }, count);

    private static CaseOutcome Case(double? closed) => new()
    {
        Year = 2026,
        Regimen = "a",
        Waits = closed is double week ? ImmutableDictionary<string, OutcomeWait>.Empty.Add(OutcomeGoal.LagClosed, new OutcomeWait(new Followed(week, true), 1)) : ImmutableDictionary<string, OutcomeWait>.Empty,
        Adherence = null,
        Delivered = null,
        Scored = 0,
        Hits = 0,
    };

    private static PlanAdherence Done(DoneShare sessions, Percentage? home) => new() { WeeksOver = 3, WeeksLogged = 2, StimSessions = sessions, Contractions = sessions, HomeWork = home };
}
