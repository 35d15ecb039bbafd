using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.Records.Tests.Library;

public sealed class ShippedExercisesTests
{
    private static readonly ClinicalLibrary Shipped = LibraryReader.Default();

    /// <summary>A knee as an exercise sees it.</summary>
    private sealed record Knee(double Lag, double Flexion, WeightBearing Load, bool Contraction, bool Raise, double Index, int Week);

    private static readonly Knee Weak = new(20, 40, WeightBearing.Partial, false, false, 15, 1);
    private static readonly Knee Middling = new(5, 95, WeightBearing.AsTolerated, true, true, 45, 4);
    private static readonly Knee Strong = new(2, 115, WeightBearing.Full, true, true, 85, 12);

    private static bool Admits(ExerciseNeeds needs, Knee knee) =>
        knee.Lag <= (needs.LagAtMost?.Degrees ?? 180)
        && knee.Flexion >= (needs.FlexionAtLeast?.Degrees ?? 0)
        && knee.Load >= (needs.WeightBearingAtLeast ?? WeightBearing.None)
        && (knee.Contraction || !needs.ContractionVisible)
        && (knee.Raise || !needs.StraightLegRaise)
        && knee.Index >= (needs.IndexAtLeast?.Percent ?? 0)
        && knee.Week >= (needs.WeekAtLeast ?? 1);

    private static Exercise? Best(ActiveSlot slot, Knee knee) =>
        Shipped.Exercises.Values.Where(each => each.Slot == slot && Admits(each.Needs, knee)).MaxBy(each => each.Rank);

    public static TheoryData<ActiveSlot> Slots => [.. Enum.GetValues<ActiveSlot>()];

    [Theory]
    [MemberData(nameof(Slots))]
    public void Every_slot_has_something_for_a_weak_and_for_a_strong_knee(ActiveSlot slot)
    {
        Assert.Equal(1, Best(slot, Weak)?.Rank);
        Assert.True(Best(slot, Strong)!.Rank > 1);
    }

    // DAPRE after knee replacement: Ardali 2014, 10.3109/09593985.2013.868064; which exercise takes which method is common practice.
    [Theory]
    [InlineData("long-arc-full", ProgressionMethod.LoadWhenEarned)]
    [InlineData("leg-press", ProgressionMethod.Delorme)]
    [InlineData("heavy-extension", ProgressionMethod.Dapre)]
    public void Each_way_of_judging_a_load_is_used(string id, ProgressionMethod method) => Assert.Equal(method, Shipped.Exercises[id].Progression.Method);

    [Theory]
    [MemberData(nameof(Slots))]
    public void Ranks_of_a_slot_run_from_1_without_gap(ActiveSlot slot)
    {
        int[] ranks = [.. Shipped.Exercises.Values.Where(each => each.Slot == slot).Select(each => each.Rank).Order()];

        Assert.Equal(Enumerable.Range(1, ranks.Length), ranks);
    }

    [Fact]
    public void The_first_quadriceps_exercises_ask_for_nothing()
    {
        Assert.Equal(new ExerciseNeeds(), Shipped.Exercises["quad-set"].Needs);
        Assert.Equal(new ExerciseNeeds(), Shipped.Exercises["quad-set-with-stim"].Needs);
    }

    // The usual regimen takes 2 sessions of 15 minutes (MSSE 2009), with the voluntary effort inside them.
    [Fact]
    public void A_day_of_everything_leaves_room_for_stim()
    {
        foreach (Knee knee in new[] { Weak, Middling, Strong })
        {
            double minutes = Enum.GetValues<ActiveSlot>().Where(slot => slot != ActiveSlot.QuadsWithStim)
                .Sum(slot => Minutes(Best(slot, knee)!));
            Assert.InRange(minutes, 20, 60);
        }
    }

    private static double Minutes(Exercise exercise) =>
        ActiveDose.SecondsOfDay(exercise, exercise.Start, Shipped.Limit(LimitIds.RestBetweenSets).Value) / 60;

    [Fact]
    public void Resistance_and_one_leg_work_wait_for_a_closed_lag()
    {
        // Usual in weeks 3 to 6: long arc to straight, leg press, step-up and half squat from a lag of 5 deg or less.
        Assert.All(
            ["long-arc-full", "leg-press", "low-step-up", "mini-squat", "machine-extension"],
            id => Assert.Equal(5, Shipped.Exercises[id].Needs.LagAtMost!.Degrees));
        Assert.Equal(80, Shipped.Exercises["heavy-extension"].Needs.IndexAtLeast!.Percent); // usual beyond week 12
        Assert.Equal("75 %1RM", Shipped.Exercises["heavy-extension"].Start.Load!.ToString()); // Fragala 2019: 70 to 85 %
    }
}
