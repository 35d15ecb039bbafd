using System.Collections.Immutable;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Drafting;

/// <summary>Loads of a second draft from logged sets. Long arc to straight goes by 2-for-2, the leg press by DeLorme, the heavy extension by DAPRE.</summary>
public sealed class LoadDraftTests
{
    // Lag 3, flexion 100, straight-leg raise, load as tolerated: the long arc to straight from week 3; strong enough for the heavy extension from week 12.
    private static readonly Knee Seen = Knee.Well.Stimulated(2, strong: true).Seen(22, Look.Well);
    private static readonly Knee Strong = Knee.Well.Stimulated(2, strong: true).Seen(80, Look.Well.With(MeasureIds.QuadricepsTorque, 90));

    /// <summary>The shipped library without what is harder than the leg press in its lane.</summary>
    private static readonly ClinicalLibrary Presses = Knee.Library with
    {
        Exercises = Knee.Library.Exercises.RemoveRange(
            Knee.Library.Exercises.Values.Where(one => one.Slot == ActiveSlot.QuadsFunction && one.Rank > Knee.Library.Exercises["leg-press"].Rank).Select(one => one.Id)),
    };

    // Worked example 37: goal 10; 12 and 12 at 20 kg raise by 2.5 to 10 % to 20.5 to 22 kg (Baechle and Earle); the least is planned.
    [Fact]
    public void Two_more_repetitions_twice_raise_the_load_by_the_least()
    {
        PlanRevision plan = Again(Logged(Seen, "long-arc-full", (24, [(10, 20), (12, 20)]), (26, [(10, 20), (12, 20)])), 29);

        Assert.Equal("long-arc-full 3x10 hold 2 s load 20.5 kg", plan.Text("quads-strength", 5));
        Assert.Contains("raise by 2.5 to 10 %. The least is planned: 20.5 kg; up to 22 kg is open.", Why(plan, "quads-strength", 5), StringComparison.Ordinal);
    }

    // Of a light load 10 % is less than a step between weights (half a kilogram, common practice): 2 kg and 2.05 to 2.2 kg.
    [Theory]
    [InlineData(2, "effort 13", "No weight in steps of 0.5 kg lies within 2.05 to 2.2 kg: the load stays, more repetitions come first; 2.5 kg is for you to set.")]
    [InlineData(5, "5.5 kg", "The least is planned: 5.5 kg; up to 5.5 kg is open.")]
    [InlineData(7, "7.5 kg", "The least is planned: 7.5 kg; up to 7.7 kg is open.")]
    public void A_raise_is_one_that_weights_make_up(double lifted, string load, string why)
    {
        PlanRevision plan = Again(Logged(Seen, "long-arc-full", (24, [(12, lifted)]), (26, [(12, lifted)])), 29);

        Assert.Equal($"long-arc-full 3x10 hold 2 s load {load}", plan.Text("quads-strength", 5));
        Assert.Contains(why, Why(plan, "quads-strength", 5), StringComparison.Ordinal);
    }

    [Fact] // Worked example 37: 12 and 11 hold. A load that was planned by effort stays so.
    public void A_load_that_is_not_earned_stays_as_planned()
    {
        PlanRevision plan = Again(Logged(Seen, "long-arc-full", (24, [(12, 20)]), (26, [(11, 20)])), 29);

        Assert.Equal("long-arc-full 3x10 hold 2 s load effort 13", plan.Text("quads-strength", 5));
        Assert.Contains("the load stays", Why(plan, "quads-strength", 5), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_logs_the_load_stays_and_it_is_told_what_to_log()
    {
        string why = Why(Again(Seen, 29), "quads-strength", 5);

        Assert.Contains("No session is logged. The planned load stays; log repetitions and load of the last set of each session to have it judged.", why, StringComparison.Ordinal);
    }

    [Fact] // Worked example 38: DeLorme, ten-repetition maximum 24 kg gives 12, 18, 24 kg. The eight repetitions after it are no test.
    public void The_leg_press_gets_the_ten_repetition_maximum_last_tested()
    {
        Knee knee = Logged(Seen, "leg-press", (24, [(10, 10), (10, 15), (10, 20)]), (26, [(10, 12), (10, 18), (10, 24)]), (28, [(8, 26)])).Seen(29, Look.Well);

        PlanRevision plan = Redraft.Of(Seen.Draft(8, library: Presses), knee.Case, Presses, new DraftOrder { Weeks = 8 }).Value!;

        Assert.Equal("leg-press 3x10 load 24 kg mon wed fri", plan.Text("quads-function", 5));
        Assert.Contains("10 repetitions each at 12, 18, 24 kg (50, 75 and 100 %)", Why(plan, "quads-function", 5), StringComparison.Ordinal);
    }

    // Worked examples 35 and 36: at 20 kg, 8 repetitions in the third set give 22.5 to 27.5 kg, 4 keep 20 kg; 2 give 15 to 17.5 kg (Knight 1979, seen second-hand).
    [Theory]
    [InlineData(8, "22.5 kg")]
    [InlineData(4, "75 %")]
    [InlineData(2, "15 kg")]
    public void The_third_set_decides_the_load_of_the_heavy_extension(int repetitions, string load)
    {
        PlanRevision plan = Again(Logged(Strong, "heavy-extension", (84, [(10, 10), (6, 15), (repetitions, 20), (5, 20)])), 90, Look.Well.With(MeasureIds.QuadricepsTorque, 90), 16);

        Assert.Equal($"heavy-extension 3x8 load {load} mon wed fri", plan.Text("quads-strength", 14));
    }

    [Fact]
    public void Two_sets_are_not_enough_for_the_third_set_to_decide()
    {
        PlanRevision plan = Again(Logged(Strong, "heavy-extension", (84, [(10, 10), (6, 15)])), 90, Look.Well.With(MeasureIds.QuadricepsTorque, 90), 16);

        Assert.Contains("The third set of 2026-05-25 is not recorded. The planned load stays; log repetitions and load of the third set", Why(plan, "quads-strength", 14), StringComparison.Ordinal);
    }

    [Fact]
    public void An_earned_raise_waits_while_the_knee_is_irritated()
    {
        PlanRevision plan = Again(Logged(Seen, "long-arc-full", (24, [(12, 20)]), (26, [(12, 20)])), 29, Look.Well.Says(Signs.SettledByMorning, Answer.No));

        Assert.Equal("long-arc-full 2x10 hold 2 s load effort 13", plan.Text("quads-strength", 5));
        Assert.Contains("The knee is irritated: the load is not raised before the next assessment.", Why(plan, "quads-strength", 5), StringComparison.Ordinal);
    }

    [Fact] // An exercise that the library does not call resisted is admitted, but its load is not raised before the surgeon's day: day 42 starts week 7.
    public void The_surgeons_day_bounds_a_raise()
    {
        ClinicalLibrary library = Knee.Library with
        {
            Exercises = Knee.Library.Exercises.SetItem("long-arc-full", Knee.Library.Exercises["long-arc-full"] with { Resisted = false, Rank = 9 }),
        };
        Knee knee = Logged(Seen, "long-arc-full", (24, [(12, 20)]), (26, [(12, 20)]));
        knee = new Knee(knee.Case with { Surgeon = new SurgeonLimits { NoResistanceBefore = Knee.Day(42) } });

        PlanRevision plan = Redraft.Of(Seen.Draft(8, library: library), knee.Seen(29, Look.Well).Case, library, new DraftOrder { Weeks = 8 }).Value!;

        Assert.Equal(
            ["effort 13", "effort 13", "20.5 kg", "20.5 kg"],
            Enumerable.Range(5, 4).Select(week => ((ActiveCell)plan.ContentAt("quads-strength", week)!).Dose.Load!.ToString()));
        Assert.Contains("The surgeon allows no added resistance before 2026-04-13", Why(plan, "quads-strength", 6), StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_taken_once_is_carried_on_without_new_logs()
    {
        Knee first = Knee.Well.Stimulated(2, strong: true).Seen(15, Look.Well);
        Knee raised = Logged(first, "long-arc-full", (16, [(12, 20)]), (18, [(12, 20)])).Seen(22, Look.Well);
        PlanRevision standing = Redraft.Of(first.Draft(8), raised.Case, Knee.Library, new DraftOrder { Weeks = 8 }).Value!;
        Knee silent = new(raised.Seen(29, Look.Well).Case with { Sessions = first.Case.Sessions });

        PlanRevision plan = Redraft.Of(standing, silent.Case, Knee.Library, new DraftOrder { Weeks = 8 }).Value!;

        Assert.Equal("long-arc-full 3x10 hold 2 s load 20.5 kg", plan.Text("quads-strength", 5));
    }

    private static PlanRevision Again(Knee knee, int day, Look? look = null, int weeks = 8) =>
        Redraft.Of(new Knee(knee.Case with { Sessions = Seen.Case.Sessions }).Draft(weeks), knee.Seen(day, look ?? Look.Well).Case, Knee.Library, new DraftOrder { Weeks = weeks }).Value
        ?? throw new InvalidOperationException("The draft was refused.");

    private static string Why(PlanRevision plan, string lane, int week) => plan.At(new CellAddress(lane, week))!.Basis.Reason;

    private static Knee Logged(Knee knee, string exercise, params ImmutableArray<(int Day, (int Repetitions, double Kilograms)[] Sets)> sessions) => new(knee.Case with
    {
        Sessions =
        [
            .. knee.Case.Sessions,
            .. sessions.Select(one => new SessionLog(Knee.Day(one.Day), 0)
            {
                Exercises = [new ExerciseDone(exercise, [.. one.Sets.Select(set => new SetDone(set.Repetitions, Mass.FromKilograms(set.Kilograms)))])],
            }),
        ],
    });
}
