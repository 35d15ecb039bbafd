using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>The two-level scores as the guideline tables print them: leg, Wells 2003, N Engl J Med 349:1227; lung, likely over 4.</summary>
public sealed class ClotScoreTests
{
    [Fact] // Worked example 26 of the project's reference: three weeks after the operation, calf 3 cm larger, nothing else: 2, likely.
    public void A_larger_calf_in_week_3_makes_two_points_with_the_operation()
    {
        ClotScore score = Leg(21, "calf_larger");

        Assert.Equal((2, 2, 2, true), (score.Points, score.Least, score.Most, score.Likely));
        Assert.StartsWith("Wells score in two levels, clot in the leg: 2 points; likely from 2: likely.", score.Words, StringComparison.Ordinal);
    }

    [Fact] // Worked example 27: pitting oedema, another cause as likely: 1 + 1 - 2 = 0, unlikely; suspicion refers all the same.
    public void An_unlikely_score_does_not_reassure_and_the_flag_stays_open()
    {
        Knee knee = Knee.Well.Seen(21, All(FlagIds.ClotLeg, "pitting_this_leg", "other_cause_likely"));
        FlagState flag = knee.Flag(FlagIds.ClotLeg, 21);

        Assert.Equal((0, false), (flag.Score!.Points, flag.Score.Likely));
        Assert.Contains("unlikely. After a knee replacement \"unlikely\" does not reassure: suspicion alone is enough to refer.", flag.Score.Words, StringComparison.Ordinal);
        Assert.True(flag.IsOpen);
        Assert.Equal(LadderOutcome.ReferAndLock, knee.Judge(Rung.Reduced, 14).Outcome);
    }

    [Fact] // 10 items: eight of 1 beside the calf, the operation among them, and one of -2.
    public void Items_not_answered_leave_a_range_and_never_count_as_no()
    {
        ClotScore score = Knee.Well.Seen(21, Look.Empty.Says("calf_larger", Answer.Yes)).Flag(FlagIds.ClotLeg, 21).Score!;

        Assert.Equal((2, 0, 9, false), (score.Points, score.Least, score.Most, score.Likely));
        Assert.Contains("0 to 9 points, 8 of 10 items open; likely from 2: not settled.", score.Words, StringComparison.Ordinal);
    }

    [Theory] // Major surgery within 12 weeks.
    [InlineData(84, 2)]
    [InlineData(85, 1)]
    public void The_operation_counts_by_itself_for_12_weeks(int day, double points) => Assert.Equal(points, Leg(day, "calf_larger").Points);

    [Theory] // Points of the printed table; surgery within 4 weeks 1.5.
    [InlineData(28, "fast_pulse", 3, false)]
    [InlineData(29, "fast_pulse", 1.5, false)]
    [InlineData(21, "leg_clot_seen", 4.5, true)]
    [InlineData(35, "lung_clot_likelier", 3, false)]
    [InlineData(35, "coughing_blood", 1, false)]
    public void The_lung_is_likely_over_four_points(int day, string sign, double points, bool likely)
    {
        ClotScore score = Knee.Well.Seen(day, All(FlagIds.ClotLung, sign)).Flag(FlagIds.ClotLung, day).Score!;

        Assert.Equal((points, likely), (score.Points, score.Likely));
    }

    [Fact]
    public void Breathlessness_raises_the_flag_and_adds_no_point() =>
        Assert.Equal(1.5, Knee.Well.Seen(21, All(FlagIds.ClotLung, "breathless")).Flag(FlagIds.ClotLung, 21).Score!.Points);

    [Fact]
    public void Background_told_at_an_earlier_visit_counts_signs_of_an_earlier_visit_do_not()
    {
        Knee knee = Knee.Well.Seen(14, Look.Empty.Says("earlier_leg_clot", Answer.Yes).Says("surface_veins", Answer.Yes))
            .Seen(21, All(FlagIds.ClotLeg, "calf_larger").Without("earlier_leg_clot"));

        Assert.Equal(3, knee.Flag(FlagIds.ClotLeg, 21).Score!.Points);
    }

    [Fact]
    public void There_is_no_score_where_no_item_was_answered_or_nothing_is_suspected()
    {
        Assert.Null(Knee.Well.Seen(21, Look.Well.Says(Signs.ClotSigns, Answer.Yes)).Flag(FlagIds.ClotLeg, 21).Score);
        Assert.Null(Knee.Well.Seen(21, All(FlagIds.ClotLeg)).Flag(FlagIds.ClotLeg, 21).Score);
    }

    private static ClotScore Leg(int day, string sign) => Knee.Well.Seen(day, All(FlagIds.ClotLeg, sign)).Flag(FlagIds.ClotLeg, day).Score!;

    /// <summary>Every question of the flag answered no but for those named.</summary>
    private static Look All(string flag, params string[] yes) =>
        Knee.Library.RedFlags.Single(one => one.Id == flag).Questions.Aggregate(Look.Well, (look, one) => look.Says(one.Id, yes.Contains(one.Id) ? Answer.Yes : Answer.No));
}
