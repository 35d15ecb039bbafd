using Progression.Core.Statistics;

namespace Progression.Core.Tests.Statistics;

public sealed class KaplanMeierTests
{
    // Remission times in weeks under 6-MP and placebo: Freireich and others 1963, Blood 21:699; a minus is censored.
    private static readonly int[] SixMp = [6, 6, 6, -6, 7, -9, 10, -10, -11, 13, 16, -17, -19, -20, 22, 23, -25, -32, -32, -34, -35];
    private static readonly int[] Placebo = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23];

    [Fact] // The estimates and medians as textbooks print them, e.g. Kleinbaum and Klein, Survival Analysis, ch. 2; figures from memory, and again in the oracle.
    public void The_example_of_the_textbooks_comes_out()
    {
        KaplanMeier curve = Of(SixMp);

        Assert.Equal((21, 9, 23d), (curve.People, curve.Events, curve.Median));
        Assert.Equal(
            [(6, .857), (7, .807), (10, .753), (13, .690), (16, .627), (22, .538), (23, .448)],
            curve.Steps.Where(step => step.Events > 0).Select(step => ((int)step.Time, Math.Round(step.Waiting, 3))));
        Assert.Equal([21, 17, 15, 12, 11, 7, 6], curve.Steps.Where(step => step.Events > 0).Select(step => step.AtRisk));
        Assert.Equal(8, Of(Placebo).Median);
    }

    [Fact] // Counted by hand: at 3 two of five have the event, and the one lost then is still counted among the five; at 5 one of two.
    public void Who_is_lost_at_the_time_of_an_event_is_still_counted_at_it()
    {
        KaplanMeier curve = Of(3, -3, 3, 5, -5);

        Assert.Equal([(5, 2, 1), (2, 1, 1)], curve.Steps.Select(step => (step.AtRisk, step.Events, step.Censored)));
        Assert.Equal([0.6, 0.3], curve.Steps.Select(step => Math.Round(step.Waiting, 12)));
    }

    [Fact]
    public void Without_an_event_nobody_stops_waiting_and_there_is_no_median_and_no_interval()
    {
        KaplanMeier curve = Of(-2, -3, -3, -7);

        Assert.All(curve.Steps, step => Assert.Equal((1, null, null), (step.Waiting, step.Low, step.High)));
        Assert.Null(curve.Median);
        Assert.Null(curve.MedianLow);
        Assert.Null(curve.MedianHigh);
    }

    [Fact]
    public void When_nobody_is_lost_it_is_the_plain_share_left()
    {
        KaplanMeier curve = Of(1, 2, 2, 4, 5);

        Assert.Equal([0.8, 0.4, 0.2, 0], curve.Steps.Select(step => Math.Round(step.Waiting, 12)));
        Assert.Equal((2d, null), (curve.Median, curve.Steps[^1].High));
    }

    [Fact]
    public void Nobody_followed_is_no_curve_and_no_fault()
    {
        KaplanMeier curve = Of();

        Assert.Empty(curve.Steps);
        Assert.Equal((0, 0, null), (curve.People, curve.Events, curve.Median));
        Assert.Null(curve.At(3));
    }

    [Fact]
    public void At_a_time_the_last_step_before_it_holds()
    {
        KaplanMeier curve = Of(2, 4);

        Assert.Null(curve.At(1.99));
        Assert.Equal((2d, 2d, 4d), (curve.At(2)!.Time, curve.At(3.9)!.Time, curve.At(9)!.Time));
    }

    [Fact] // Of 21 under 6-MP 11 are followed when the event in week 16 comes, and 10 at the next time, week 17.
    public void It_can_end_where_too_few_are_followed()
    {
        KaplanMeier whole = Of(SixMp);
        KaplanMeier told = whole.WhileAtRisk(11);

        Assert.Equal((21, 16d, 11), (told.People, told.Steps[^1].Time, told.Steps[^1].AtRisk));
        Assert.Null(told.Median);
        Assert.Equal(whole.Steps, whole.WhileAtRisk(1).Steps);
        Assert.Empty(whole.WhileAtRisk(22).Steps);
    }

    [Theory]
    [InlineData(0, 0.95)]
    [InlineData(double.NaN, 0.95)]
    [InlineData(1, 0)]
    [InlineData(1, 1)]
    public void A_time_of_nothing_and_a_level_of_all_or_nothing_are_faults_of_the_caller(double time, double level) =>
        Assert.ThrowsAny<ArgumentException>(() => KaplanMeier.Of([new Followed(time, true)], level));

    private static KaplanMeier Of(params int[] weeks) => KaplanMeier.Of(weeks.Select(week => new Followed(Math.Abs(week), week > 0)));
}
