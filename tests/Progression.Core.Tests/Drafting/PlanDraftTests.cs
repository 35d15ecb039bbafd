using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Drafting;

/// <summary>Drafts of invented knees against the shipped library.</summary>
public sealed partial class PlanDraftTests
{
    [Fact] // The plan starts on a Wednesday; one day a week would be the Monday that is over.
    public void Days_that_are_over_in_the_first_week_are_moved_to_days_that_are_left()
    {
        PlanRevision plan = Knee.Well.PlannedFrom(2).Draft(2, "burst-10-weaker-leg");

        Assert.Equal(("familiarise 10x1 wed", "high 10x1 mon thu"), (plan.Text("stim", 1), plan.Text("stim", 2)));
        Assert.Equal(1, PlanFigures.Of(plan, Knee.Library)[0].StimSessions);
    }

    [Fact]
    public void Six_weeks_are_drafted_from_the_day_of_the_latest_assessment()
    {
        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Draft();

        Assert.Equal((6, 1, Knee.Day(2)), (plan.Weeks, plan.FirstWeek, plan.From));
        Assert.Equal("strong-15-twice-daily", plan.Regimen);
        Assert.Equal(Knee.Library.Version, plan.LibraryVersion);
        Assert.Equal([Knee.Day(2), Knee.Day(3), Knee.Day(4), Knee.Day(5), Knee.Day(6)], plan.PlannedDays(1));
        Assert.Equal([Knee.Day(35), Knee.Day(41)], new[] { plan.PlannedDays(6).First(), plan.PlannedDays(6).Last() });
    }

    [Theory] // The first day of stim is day 1: common practice.
    [InlineData(null, null, 1)]
    [InlineData(0, null, 1)]
    [InlineData(20, null, 20)]
    [InlineData(20, 5, 20)] // what lies before the assessment is done
    public void The_first_day_is_the_named_one_or_the_first_of_stim_and_never_before_the_assessment(int? seen, int? named, int expected)
    {
        Knee knee = seen is int day ? Knee.Well.Seen(day, Look.Well) : Knee.Well;

        Assert.Equal(Knee.Day(expected), PlanDraft.FirstDay((named is int from ? knee.PlannedFrom(from) : knee).Case, Knee.Library));
    }

    [Fact] // One week to get used to it, two of high volume (together three: Spector 2016), then common practice: two reduced, three low.
    public void Stim_follows_the_ladders_expected_calendar() => Assert.Equal(
        [
            "familiarise 15x1 daily", "high 15x2 daily", "high 15x2 daily", "reduced 15x1 daily", "reduced 15x1 daily",
            "low 15x1 mon wed fri", "low 15x1 mon wed fri", "low 15x1 mon wed fri", "stopped", "stopped",
        ],
        Stim(Knee.Well.Seen(2, Look.Well).Draft(10)));

    [Theory] // 5 days a week: 50 % of 5 sessions is 3, 20 % is 1. 2 days: 1 and 1.
    [InlineData("strong-45-minutes", "familiarise 90x1 mon wed fri", "high 90x1 mon tue wed thu fri", "reduced 90x1 mon wed fri", "low 90x1 mon")]
    [InlineData("burst-10-weaker-leg", "familiarise 10x1 wed", "high 10x1 mon thu", "reduced 10x1 mon", "low 10x1 mon")]
    public void Shares_of_a_regimen_are_rounded_up_to_whole_sessions(string regimen, string first, string high, string reduced, string low)
    {
        ImmutableArray<string> stim = Stim(Knee.Well.Seen(2, Look.Well).Draft(6, regimen));

        Assert.Equal((first, high, reduced, low), (stim[0], stim[1], stim[3], stim[5]));
    }

    [Fact]
    public void A_measured_person_starts_on_the_rung_reached()
    {
        Knee knee = Knee.Well.Stimulated(2, strong: true).Seen(8, Look.Well).Seen(15, Look.Well);

        PlanRevision plan = knee.Draft();

        Assert.Equal(["", "", "reduced 15x1 daily", "reduced 15x1 daily", "low 15x1 mon wed fri", "low 15x1 mon wed fri"], Stim(plan));
        Assert.Contains("rung reached", plan.At(new CellAddress("stim", 3))!.Basis.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_person_held_on_a_rung_past_its_weeks_keeps_it_this_week_and_is_expected_to_step_the_next()
    {
        Knee knee = Knee.Well.Stimulated(2, strong: true).Seen(16, Look.Well.Lag(8)).Seen(23, Look.Well.Lag(8));

        Assert.Equal(["", "", "", "high 15x2 daily", "reduced 15x1 daily", "reduced 15x1 daily"], Stim(knee.Draft()));
    }

    [Fact]
    public void A_person_who_has_stopped_gets_no_stim_and_goes_on_exercising()
    {
        Look strong = Look.Well.With(MeasureIds.QuadricepsTorque, 60);
        PlanRevision plan = Knee.Well.Stimulated(2, strong: true).Seen(21, strong).Seen(28, strong).Draft();

        Assert.Equal(["", "", "", "", "stopped", "stopped"], Stim(plan));
        Assert.Null(plan.ContentAt("with-stim", 5));
        Assert.NotNull(plan.ContentAt("quads-strength", 5));
    }

    [Fact]
    public void An_irritated_knee_gets_half_the_sessions_and_one_set_less_for_a_week()
    {
        Knee sore = Knee.Well.Stimulated(8, strong: true).Seen(9, Look.Well.Says(Signs.SettledByMorning, Answer.No));
        PlanRevision plan = sore.Draft();

        // 14 sessions a week become 7, then 14 again.
        Assert.Equal(["", "high 15x1 daily", "high 15x2 daily"], Stim(plan).Take(3));
        Assert.StartsWith("long-arc-part 2x10 ", plan.Text("quads-strength", 2), StringComparison.Ordinal);
        Assert.Contains("irritated", plan.At(new CellAddress("stim", 2))!.Basis.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_worse_and_irritated_knee_is_not_given_more_stim()
    {
        Knee sore = Knee.Well.Stimulated(2, strong: true).Seen(8, Look.Well).Seen(15, Look.Well)
            .Seen(22, Look.Well.Lag(12.9).Says(Signs.SettledByMorning, Answer.No));

        // On reduced, 7 sessions a week; half of them, rounded up, is 4.
        Assert.Equal("reduced 15x1 mon tue thu fri", sore.Draft().Text("stim", 4));
    }

    [Theory]
    [InlineData("impaired-sensation", "high 10x1 daily")] // one session a day and 70 % of 15 contractions, rounded down
    [InlineData("epilepsy", "high 15x2 daily")]
    public void A_precaution_with_a_cap_lowers_the_dose(string precaution, string high) =>
        Assert.Equal(high, Knee.Well.Seen(2, Look.Well).Screened(precaution, Answer.Yes).Draft().Text("stim", 2));

    [Fact]
    public void Barred_stim_leaves_no_stim_lane_a_reason_and_the_active_part()
    {
        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Screened("active-implant", Answer.Yes).Draft();

        Assert.Null(plan.LaneOf("stim"));
        Assert.Null(plan.LaneOf("with-stim"));
        Assert.Contains("Pacemaker", Assert.Single(plan.StimBarred), StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Cells.Values, cell => cell.Content is StimCell);
        Assert.All(Enumerable.Range(1, 6), week => Assert.NotNull(plan.ContentAt("quads-strength", week)));
    }

    [Fact]
    public void A_red_flag_bars_stim_from_the_draft() =>
        Assert.NotEmpty(Knee.Well.Seen(21, Look.Well.Says(Signs.ClotSigns, Answer.Yes)).Draft().StimBarred);

    [Fact]
    public void Stim_without_any_voluntary_quadriceps_work_is_not_drafted()
    {
        ClinicalLibrary library = Knee.Library with
        {
            Exercises = Knee.Library.Exercises.Where(pair => pair.Value.Muscle != MuscleGroup.Quadriceps).ToImmutableSortedDictionary(StringComparer.Ordinal),
        };

        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Draft(library: library);

        Assert.All(Enumerable.Range(1, 6), week => Assert.Null(plan.ContentAt("stim", week)));
        Assert.Equal("STIM-UNPAIRED", plan.At(new CellAddress("stim", 2))!.Basis.Rule);
    }

    [Fact]
    public void The_voluntary_contraction_goes_along_with_every_stimulated_one()
    {
        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Draft();

        // Flexion 100 deg admits the push against a strap; held as long as the current is on, 15 s.
        Assert.Equal("held-push-with-stim 1x15 hold 15 s", plan.Text("with-stim", 1));
        Assert.Equal("held-push-with-stim 1x15 hold 15 s 2/day", plan.Text("with-stim", 2));
        Assert.Equal("held-push-with-stim 1x15 hold 15 s mon wed fri", plan.Text("with-stim", 6));
        Assert.Empty(Knee.Well.Seen(2, Look.Well).Check(plan).Where(finding => finding.Severity >= Severity.Severe));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(27)]
    [InlineData(-1)]
    public void Weeks_out_of_range_are_refused(int weeks)
    {
        Problem problem = Assert.Single(Refused(Knee.Well, weeks));

        Assert.Equal(("weeks", "1 to 26 weeks", $"{weeks}"), (problem.Field, problem.Allowed, problem.Found));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(26)]
    public void Weeks_at_the_ends_of_the_range_are_drafted(int weeks) => Assert.Equal(weeks, Knee.Well.Seen(2, Look.Well).Draft(weeks).Weeks);

    [Fact]
    public void A_late_start_plans_only_what_lies_ahead()
    {
        Knee late = Knee.Well.Seen(30, Look.Well);
        PlanRevision plan = late.Draft();

        Assert.Equal((5, Knee.Day(30)), (plan.FirstWeek, plan.From));
        Assert.DoesNotContain(plan.Cells.Keys, cell => cell.Week < 5);
        Assert.Equal("familiarise 15x1 daily", plan.Text("stim", 5));
        Assert.Equal("The plan starts in post-op week 5: 2 of its 6 weeks lie ahead. More weeks can be asked for, up to 26.", Assert.Single(late.Check(plan).Of("PLAN-STARTS-LATE")).Text);
    }

    [Fact]
    public void A_plan_that_would_end_before_it_starts_is_refused_with_the_weeks_it_needs() =>
        Assert.Equal("5 to 26 weeks", Assert.Single(Refused(Knee.Well.Seen(30, Look.Well), 4)).Allowed);

    [Fact]
    public void A_plan_past_the_longest_is_refused() =>
        Assert.Equal("a start in post-op weeks 1 to 26", Assert.Single(Refused(Knee.Well.PlannedFrom(26 * 7), 26)).Allowed);

    [Fact]
    public void A_plan_before_the_operation_is_refused() =>
        Assert.Equal("plan from", Assert.Single(Refused(Knee.Well.PlannedFrom(-1), 6)).Field);

    [Theory]
    [InlineData("half-hour-five-days", "contractions a session (or session length with on and off time)")]
    [InlineData("quarter-hour-daily", "contractions a session (or session length with on and off time), days a week")]
    public void A_regimen_that_leaves_open_what_a_plan_needs_is_refused_with_the_list(string regimen, string open)
    {
        Problem problem = Assert.Single(Refused(Knee.Well, 6, regimen));

        Assert.Equal($"\"{regimen}\" leaves open what a plan needs: {open}.", problem.Wrong);
        Assert.Contains("strong-15-twice-daily", problem.Allowed, StringComparison.Ordinal);
        Assert.DoesNotContain(regimen, problem.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_wrong_is_told_at_once() =>
        Assert.Equal(["weeks", "regimen"], Refused(Knee.Well, 27, "no-such-regimen").Select(problem => problem.Field));

    private static ImmutableArray<string> Stim(PlanRevision plan) => [.. Enumerable.Range(1, plan.Weeks).Select(week => plan.Text("stim", week))];

    private static ImmutableArray<Problem> Refused(Knee knee, int weeks, string? regimen = null) =>
        PlanDraft.Draft(knee.Case, Knee.Library, new DraftOrder { Weeks = weeks, Regimen = regimen }).Problems;
}
