using System.Collections.Immutable;
using Progression.App.Chart;
using Progression.App.Tests.Grid;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Plots;
using Progression.Core.Quantities;

namespace Progression.App.Tests.Chart;

public sealed class ChartSubjectTests
{
    /// <summary>1.645 standard errors to each side: 6.58 deg at an error of 4 (the project's reference on measures, part 5.3).</summary>
    [Fact]
    public void A_bar_reaches_six_and_a_half_degrees_to_each_side_at_an_error_of_four()
    {
        ChartDot dot = ChartDot.Of(new(2026, 11, 9), 1, 72, 4, ErrorScale.Linear);
        Assert.Equal(65.42, dot.Low!.Value, 0.01);
        Assert.Equal(78.58, dot.High!.Value, 0.01);
    }

    /// <summary>Error 0.1128 of the logarithm (Naylor 2014 as the reference gives it): 10.0 s times and divided by 1.2039.</summary>
    [Fact]
    public void A_bar_on_a_logarithmic_scale_is_longer_upwards()
    {
        ChartDot dot = ChartDot.Of(new(2026, 11, 9), 1, 10, 0.1128, ErrorScale.Logarithmic);
        Assert.Equal(8.31, dot.Low!.Value, 0.01);
        Assert.Equal(12.04, dot.High!.Value, 0.01);
    }

    [Fact]
    public void Without_a_known_error_there_is_no_bar() => Assert.Null(ChartDot.Of(new(2026, 11, 9), 1, 72, null, ErrorScale.Linear).Low);

    [Fact]
    public void Dots_lie_on_the_weeks_since_the_operation_and_what_was_never_measured_is_left_out()
    {
        ChartState state = ChartState.Open(new(
            Sample.Desk.Case, SampleLibrary.Library, ImmutableSortedDictionary<string, ForecastAnswer>.Empty, [MeasureIds.FlexionActive, MeasureIds.PreOpShare, "no-such-measure"], Sample.Today));
        ChartSubject flexion = Assert.Single(state.Subjects);
        Assert.Equal([(1.0, 62.0), (2.0, 78.0)], flexion.Dots.Select(dot => (dot.Week, dot.Value)));
        Assert.Equal([80], flexion.Goals.Select(goal => goal.Target!.Value));
        Assert.Equal(3, state.Week); // the 18th of November is day 16
        Assert.Equal("Nothing is forecast for this measure.", flexion.WhyNot);
    }

    /// <summary>Week 8 of the worked example: 105.2, 98.4 to 112.0. In fives, and outwards.</summary>
    [Fact]
    public void What_is_expected_is_told_in_fives_and_never_surer_than_it_is()
    {
        ChartSubject flexion = SampleChart.Flexion;
        Assert.Equal("about 105 deg, 8 in 10 between 95 and 115", ForecastWords.Of(flexion.Forecast!.At(8), flexion.Measure));
    }

    [Fact]
    public void A_range_is_kept_within_what_can_be_measured()
    {
        ForecastPoint point = new(8, (share, _) => share < 0.5 ? -1 : 7);
        Assert.Equal("0–10", ForecastWords.Range(point, SampleChart.Flexion.Measure, (-1, 7)));
    }

    [Theory]
    [InlineData(0.2, 0.2)]
    [InlineData(3, 5)]
    [InlineData(10, 10)]
    [InlineData(12, 20)]
    [InlineData(0.011, 0.02)]
    public void A_scale_is_labelled_in_ones_twos_and_fives(double least, double step) => Assert.Equal(step, RoundStep.NotUnder(least), 1e-9);

    [Fact]
    public void Higher_values_lie_higher_and_later_weeks_further_right()
    {
        ChartScale scale = ChartScale.Of(SampleChart.Flexion, 12, 15, 70);
        Assert.True(scale.Row(110) < scale.Row(90));
        Assert.True(scale.Column(8) > scale.Column(4));
        Assert.Equal((0, 69), (scale.Column(0), scale.Column(12)));
        Assert.All(scale.Ticks, tick => Assert.Equal(tick.Key, scale.Row(tick.Value)));
    }
}
