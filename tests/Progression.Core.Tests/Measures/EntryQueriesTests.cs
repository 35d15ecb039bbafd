using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Tests.Measures;

/// <summary>What is asked back about a new assessment. Nothing is refused and nothing altered.</summary>
public sealed class EntryQueriesTests
{
    [Fact]
    public void A_usual_visit_raises_no_question()
    {
        Knee knee = Knee.Well.Seen(7, Look.Well);

        Assert.Empty(EntryQueries.Of(knee.Case, Look.Well.On(14), Knee.Library));
    }

    [Theory] // One lag is known to 1.645 x 4.243 = 6.98 deg at 90 %.
    [InlineData(2, 8, false)]
    [InlineData(1.1, 8, false)]
    [InlineData(1, 8, true)]
    [InlineData(-4, 3, true)]
    public void Active_extension_better_than_passive_beyond_error_is_asked_back(double active, double passive, bool asked)
    {
        Assessment visit = Look.Empty.With(MeasureIds.ExtensionActive, active).With(MeasureIds.ExtensionPassive, passive).On(7);

        Assert.Equal(asked ? [MeasureIds.ExtensionActive] : [], Questions(Knee.Well, visit).Select(query => query.Field));
    }

    [Theory]
    [InlineData(-5, false)]
    [InlineData(-5.5, true)]
    [InlineData(8, false)]
    public void A_deficit_far_beyond_straight_may_have_its_sign_turned_round(double passive, bool asked)
    {
        ImmutableArray<EntryQuery> queries = Questions(Knee.Well, Look.Empty.With(MeasureIds.ExtensionPassive, passive).On(7));

        Assert.Equal(asked ? 1 : 0, queries.Length);
        Assert.All(queries, query => Assert.Contains("5.5 deg beyond straight", query.Odd, StringComparison.Ordinal));
    }

    [Theory] // 1 pound-force is 4.448222 N and 1 kilogram-force 9.80665 N by definition; 8 % about them.
    [InlineData(60, 13.5, "pounds")]
    [InlineData(13.5, 60, "pounds")]
    [InlineData(60, 6.1, "kilograms")]
    [InlineData(6.1, 60, "kilograms")]
    [InlineData(60, 15, null)] // four times
    [InlineData(60, 12, null)] // five times
    [InlineData(60, 40, null)]
    [InlineData(60, 0, null)]
    public void Strength_off_by_the_factor_of_another_unit_is_asked_back(double last, double now, string? unit)
    {
        Knee knee = Knee.Well.Seen(7, Look.Empty.With(MeasureIds.QuadricepsTorque, last));
        ImmutableArray<EntryQuery> queries = Questions(knee, Look.Empty.With(MeasureIds.QuadricepsTorque, now).On(14));

        Assert.Equal(unit is null ? 0 : 1, queries.Length);
        Assert.All(queries, query => Assert.Contains($"reading {unit}", query.Odd, StringComparison.Ordinal));
    }

    [Fact]
    public void The_operation_itself_is_no_mistaken_unit()
    {
        // 100 Nm before and 22 Nm after it is what the operation does; the other leg does not fall like that.
        Assert.Empty(Questions(Knee.Well, Look.Empty.With(MeasureIds.QuadricepsTorque, 22).On(4)));
        Knee knee = new(Knee.Well.Case with { PreOp = Look.Empty.With(MeasureIds.OtherTorque, 100).On(-7) });
        Assert.Single(Questions(knee, Look.Empty.With(MeasureIds.OtherTorque, 22).On(4)));
    }

    [Theory] // Torque is detectable from 26 % up and 21 % down at 90 %.
    [InlineData(98, 52, true)]
    [InlineData(55, 98, false)]
    [InlineData(98, 100, false)] // the operated leg may have caught up
    public void Sides_that_look_swapped_are_asked_back(double operated, double other, bool asked)
    {
        Knee knee = Knee.Well.Seen(7, Look.Empty.With(MeasureIds.QuadricepsTorque, 50).With(MeasureIds.OtherTorque, 100));
        ImmutableArray<EntryQuery> queries = Questions(knee, Look.Empty.With(MeasureIds.QuadricepsTorque, operated).With(MeasureIds.OtherTorque, other).On(14));

        Assert.Equal(asked ? 1 : 0, queries.Length);
        Assert.All(queries, query => Assert.Contains("swapped", query.Odd, StringComparison.Ordinal));
    }

    [Theory] // Flexion: 4 x 2.326 = 9.30 deg about the middle; torque: 1.262 times.
    [InlineData(MeasureIds.FlexionActive, new double[] { 88, 90, 92 }, 0)]
    [InlineData(MeasureIds.FlexionActive, new double[] { 88, 90, 99.4 }, 1)]
    [InlineData(MeasureIds.FlexionActive, new double[] { 88, 90, 99.2 }, 0)]
    [InlineData(MeasureIds.FlexionActive, new double[] { 88, 70 }, 0)] // of two nobody can say which
    [InlineData(MeasureIds.QuadricepsTorque, new double[] { 60, 62, 26 }, 1)]
    [InlineData(MeasureIds.QuadricepsTorque, new double[] { 60, 62, 64 }, 0)]
    [InlineData(MeasureIds.PainRest, new double[] { 1, 1, 9 }, 0)] // no error to go by
    public void A_trial_far_from_its_set_is_asked_back(string measure, double[] trials, int asked) =>
        Assert.Equal(asked, Questions(Knee.Well, Visit.On(7).With(Reading.OfTrials(measure, [.. trials])).Assessment).Length);

    [Theory]
    [InlineData(11, 11, 0)]
    [InlineData(11, 9, 1)]
    [InlineData(11, null, 1)]
    [InlineData(null, 9, 0)]
    public void Other_stairs_are_asked_back(int? then, int? now, int asked)
    {
        Knee knee = new(Knee.Well.Case with { Assessments = [Visit.On(7).With(new Reading("stairs_up", 20) { Steps = then }).Assessment] });

        Assert.Equal(asked, Questions(knee, Visit.On(14).With(new Reading("stairs_up", 18) { Steps = now }).Assessment).Length);
    }

    [Fact]
    public void Another_rater_is_remarked_once_for_all_readings()
    {
        Knee knee = new(Knee.Well.Case with { Assessments = [Look.Well.On(7) with { Rater = "KL" }] });
        EntryQuery query = Assert.Single(EntryQueries.Of(knee.Case, Look.Well.On(14) with { Rater = "MB" }, Knee.Library));

        Assert.Equal(("rater", "KL, then MB", true), (query.Field, query.Found, query.IsNote));
    }

    [Fact]
    public void What_was_measured_last_time_and_not_now_is_remarked()
    {
        Knee knee = Knee.Well.Seen(7, Look.Well);
        EntryQuery query = Assert.Single(EntryQueries.Of(knee.Case, Look.Well.Without(MeasureIds.PainRest).Without(MeasureIds.FlexionActive).On(14), Knee.Library));

        Assert.Equal(("readings", "Active flexion, Pain at rest, 0 to 10", "not measured", true), (query.Field, query.Expected, query.Found, query.IsNote));
    }

    [Fact]
    public void Later_visits_are_not_looked_at() =>
        Assert.Empty(Questions(Knee.Well.Seen(21, Look.Empty.With(MeasureIds.QuadricepsTorque, 60)), Look.Empty.With(MeasureIds.QuadricepsTorque, 13.5).On(14)));

    private static ImmutableArray<EntryQuery> Questions(Knee knee, Assessment now) =>
        [.. EntryQueries.Of(knee.Case, now, Knee.Library).Where(query => !query.IsNote)];
}
