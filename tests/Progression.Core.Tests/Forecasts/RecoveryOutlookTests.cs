using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Statistics;

namespace Progression.Core.Tests.Forecasts;

/// <summary>The exact checks of the project's reference, part 4.3, to the digits printed there, and part 2.2.</summary>
public sealed class RecoveryOutlookTests
{
    private const double Printed = 0.00005;

    [Theory] // Check A: 72 deg in week 1.
    [InlineData(1, 72.6919, 3.8231)]
    [InlineData(12, 109.0916, 6.3556)]
    public void One_reading_moves_both_ends_of_the_curve(double week, double mean, double spread)
    {
        NormalMixture at = Curves.Outlook(Curves.Exact, 4, (1, 72)).At(week);

        Assert.Equal(mean, at.Mean, Printed);
        Assert.Equal(spread, at.StandardDeviation, Printed);
    }

    [Theory] // Check B: 72 deg in week 1, 88 deg in week 3.
    [InlineData(1, 72.8621, 3.0914, 0)]
    [InlineData(6, 100.2813, 3.8890, 0.0062)]
    [InlineData(8, 104.8202, 4.4097, 0.1201)]
    [InlineData(12, 109.3907, 4.9773, 0.4513)]
    public void Two_readings_narrow_the_forecast(double week, double mean, double spread, double chanceOf110)
    {
        NormalMixture at = Curves.Outlook(Curves.Exact, 4, (1, 72), (3, 88)).At(week);

        Assert.Equal(mean, at.Mean, Printed);
        Assert.Equal(spread, at.StandardDeviation, Printed);
        Assert.Equal(chanceOf110, at.AtLeast(110), Printed);
    }

    [Fact] // Check C: the whole model, 72, 84 and 88 deg in weeks 1 to 3.
    public void The_rates_are_weighted_by_what_the_readings_say() =>
        Assert.Equal([0.069, 0.241, 0.383, 0.219, 0.089], Full.Weights.Select(weight => Math.Round(weight, 3)));

    [Theory] // Check C.
    [InlineData(6, 100.8, 94.8, 106.8, 0.025)]
    [InlineData(8, 105.2, 98.4, 112.0, 0.182)]
    [InlineData(12, 109.8, 101.8, 118.0, 0.489)]
    public void The_whole_model_gives_median_band_and_chance(double week, double median, double low, double high, double chanceOf110)
    {
        NormalMixture at = Full.At(week);

        Assert.Equal((median, low, high), (Math.Round(at.Quantile(0.5), 1), Math.Round(at.Quantile(0.1), 1), Math.Round(at.Quantile(0.9), 1)));
        Assert.Equal(chanceOf110, at.AtLeast(110), 0.0005);
    }

    [Fact] // Check C: crossing 110 deg, median week 11.5, 1 in 10 by week 7.5, 17 % not by week 26, each to 0.01 of the courses.
    public void Drawn_courses_tell_when_the_target_is_crossed()
    {
        double[] weeks = [.. Enumerable.Range(1, 52).Select(step => step / 2.0)];
        CrossingWeeks crossing = CrossingWeeks.Of(Full, weeks, [110], higherIsBetter: true)[0];

        Assert.InRange(crossing.Never, 0.171 - 0.025, 0.171 + 0.025); // three standard errors of 2,000 courses
        Assert.Contains(11.5, new[] { crossing.By(0.48), crossing.By(0.5), crossing.By(0.52) });
        Assert.Contains(7.5, new[] { crossing.By(0.08), crossing.By(0.1), crossing.By(0.12) });
        Assert.Null(crossing.By(0.9));
    }

    [Fact] // Worked example 21 of the reference: week 4 98.9 deg; 110 deg in week 8, 90 deg in week 2.3 (rounded anchors).
    public void Without_readings_the_mean_is_the_published_curve()
    {
        RecoveryOutlook outlook = Curves.Outlook(Curves.Exact, 4);

        Assert.Equal(80, outlook.At(1).Mean, 1e-9);
        Assert.Equal(114.3, outlook.At(12).Mean, 1e-9);
        Assert.Equal(98.9, outlook.At(4).Mean, 0.1);
        Assert.Equal(110, outlook.At(8).Mean, 0.1);
        Assert.Equal(90, outlook.At(2.32).Mean, 0.1);
    }

    // Worked example 23 of the reference. Ebert 2014, Arch Phys Med Rehabil 95:1135: readings of weeks 1 and 7 correlate by 0.86. With spreads of 13 and 12 deg and
    // an error of 4 deg the true levels correlate by 0.959; so a reading 10 deg over the mean moves the expectation by 0.86 x 12 / 13 x 10 = 7.94 deg.
    [Fact]
    public void The_correlation_of_true_levels_gives_back_that_of_readings()
    {
        RecoveryCurve curve = Curves.Exact with
        {
            Early = Curves.Exact.Early with { Spread = 12.3693 },
            Late = Curves.Exact.Late with { Spread = 11.3137 },
            Correlation = 0.9590,
        };

        Assert.Equal(7.94, Curves.Outlook(curve, 4, (1, 90)).At(12).Mean - 114.3, 0.005);
    }

    [Theory] // Part 4.1: the illustrative prior stands for observed spreads of 13.9 and 12.0 deg.
    [InlineData(1, 13.9)]
    [InlineData(12, 12.0)]
    public void The_narrow_prior_stands_for_the_spreads_that_were_observed(double week, double observed) =>
        Assert.Equal(observed, Curves.Outlook(Curves.Narrow with { Rates = [new RecoveryRate(4.2, 1)] }, 4).At(week).WithError(4).StandardDeviation, 0.05);

    [Theory] // The derived curves of part 2.2, which the shipped priors stand for: deficit and quadriceps in percent.
    [InlineData("extension-wide", 4, 6.1, 0.3)]
    [InlineData("extension-wide", 8, 3.2, 0.3)]
    [InlineData("strength-wide", 6, 48.2, 1.5)]
    [InlineData("strength-wide", 8, 56.8, 1.5)]
    [InlineData("strength-wide", 12, 71.0, 1.5)]
    public void The_shipped_priors_follow_the_derived_curves(string id, double week, double expected, double within)
    {
        RecoveryPrior prior = Knee.Library.Priors[id];
        ErrorScale scale = Knee.Library.Measures[prior.Measure].Scale;
        ForecastModel model = new(scale, [new ForecastSeries(prior.Measure, 1, prior.Curve, 0.1, [])], 0);

        Assert.Equal(expected, model.FromScale(RecoveryOutlook.Of(model).At(week).Quantile(0.5)), within);
    }

    private static RecoveryOutlook Full => Curves.Outlook(Curves.Narrow, 4, (1, 72), (2, 84), (3, 88));
}
