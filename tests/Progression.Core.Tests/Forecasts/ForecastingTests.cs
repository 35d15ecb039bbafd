using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Tests.Forecasts;

public sealed class ForecastingTests
{
    private static Forecast Made(Knee knee, string measure, int on, ClinicalLibrary? library = null) =>
        Forecasting.Of(knee.Case, library ?? Knee.Library, measure, Knee.Day(on)) is { Forecast: { } forecast } ? forecast : throw new InvalidOperationException("No forecast.");

    private static string? WhyNot(Knee knee, string measure, int on) => Forecasting.Of(knee.Case, Knee.Library, measure, Knee.Day(on)).WhyNot;

    private static Knee Bends(params (int Day, double Degrees)[] looks) =>
        looks.Aggregate(Knee.Well, (knee, look) => knee.Seen(look.Day, Look.Empty.With(MeasureIds.FlexionActive, look.Degrees)));

    // A clinic that puts the narrow prior into use gets check C of part 4.3 of the project's reference.
    [Fact]
    public void A_clinic_s_own_prior_is_used_before_the_shipped_one()
    {
        RecoveryPrior narrow = Knee.Library.Priors["flexion-narrow"] with { Id = "ours", InUse = true, IsClinic = true };
        ClinicalLibrary library = Knee.Library with { Priors = Knee.Library.Priors.Add("ours", narrow) };
        Forecast forecast = Made(Bends((7, 72), (14, 84), (21, 88)), MeasureIds.FlexionActive, 21, library);
        MilestoneOutlook week8 = forecast.Milestones.Single(one => one.Milestone.Id == "flexion-week-8"); // 110 deg

        Assert.Equal(ForecastBasis.Clinic, forecast.Basis);
        Assert.Equal("clinic prior (derived), narrow; 3 readings, error 4 deg", forecast.BasisWords);
        Assert.Equal((105.2, 98.4, 112.0), (Math.Round(forecast.At(8).Median, 1), Math.Round(forecast.At(8).Low80, 1), Math.Round(forecast.At(8).High80, 1)));
        Assert.Equal(0.182, week8.ChanceTrue, 0.0005);
        Assert.True(week8.ChanceShown > week8.ChanceTrue); // the reading's error brings the target nearer from below
        Assert.InRange(week8.MedianWeek!.Value, 11, 12);
        Assert.Matches("^about 2 in 10 by week 8; 2 in 10 not by week 26$", week8.Words);
    }

    [Fact]
    public void The_wide_prior_is_the_usual_one_and_says_so()
    {
        Forecast forecast = Made(Bends((7, 72), (14, 84), (21, 88)), MeasureIds.FlexionActive, 21);

        Assert.Equal("population prior (level derived, spread common practice, no source), wide; 3 readings, error 5 deg", forecast.BasisWords);
        Assert.Equal((ForecastBasis.Population, 3, 5, 52, Knee.Day(21)), (forecast.Basis, forecast.Readings, forecast.ErrorUsed, forecast.Points.Length, forecast.AsOf));
        Assert.Equal([(1, 72), (2, 84), (3, 88)], forecast.Measured);
        Assert.All(forecast.Points, point => Assert.True(
            point.Low90 < point.Low80 && point.Low80 < point.Median && point.Median < point.High80 && point.High80 < point.High90
            && point.SeenLow80 < point.Low80 && point.High80 < point.SeenHigh80));
        Assert.Equal(12.5, forecast.Points.First(point => point.BeyondPrior).Week); // the data reach to week 12
        Assert.Equal(5, ForecastWords.Step(forecast.At(8), forecast.Measure)); // part 4.4: steps of 5 deg
    }

    [Fact]
    public void Without_a_reading_it_is_the_population_not_this_patient()
    {
        Forecast forecast = Made(Knee.Well, MeasureIds.FlexionActive, 3);

        Assert.StartsWith("population, not this patient: ", forecast.BasisWords, StringComparison.Ordinal);
        Assert.Equal((0, (Surprise?)null), (forecast.Readings, forecast.Surprise));
        Assert.Equal(80, forecast.At(1).Median, 1e-6);
    }

    [Fact]
    public void A_passive_reading_does_not_stand_for_an_active_one() =>
        Assert.Equal(0, Made(Knee.Well.Seen(7, Look.Empty.With(MeasureIds.FlexionPassive, 95)), MeasureIds.FlexionActive, 7).Readings);

    [Fact]
    public void Later_readings_are_not_known_yet() =>
        Assert.Equal(1, Made(Bends((7, 72), (14, 84)), MeasureIds.FlexionActive, 10).Readings);

    [Fact]
    public void Where_nothing_is_published_it_takes_three_readings_of_this_person()
    {
        Knee two = Knee.Well.Seen(14, Look.Empty.With("timed_up_and_go", 20)).Seen(28, Look.Empty.With("timed_up_and_go", 15));
        Forecast forecast = Made(two.Seen(42, Look.Empty.With("timed_up_and_go", 12)), "timed_up_and_go", 42);

        Assert.Equal("Timed up and go: there is no published prior; it takes 3 readings of this person, there are 2.", WhyNot(two, "timed_up_and_go", 28));
        Assert.Equal(ForecastBasis.OwnReadings, forecast.Basis);
        Assert.Equal("from this person's own 3 readings; no published prior; 3 readings, error 11 %", forecast.BasisWords);
        Assert.InRange(forecast.At(6).Median, 11, 14);
        Assert.True(forecast.At(26).High90 / forecast.At(26).Low90 > 2); // far out it admits that it does not know
        Assert.Equal(10.5, forecast.Points.First(point => point.BeyondPrior).Week); // 4 weeks after week 6
        Assert.All(forecast.Milestones, one => Assert.Equal("quick-rise-and-walk", one.Milestone.Id));
    }

    [Fact]
    public void The_lag_is_forecast_from_active_and_passive_extension_together()
    {
        Knee knee = Lags((7, 18, 8), (14, 13, 6));
        Forecast forecast = Made(knee.Seen(21, Extends(9, 4)), MeasureIds.Lag, 21);

        Assert.Equal(
            "The lag is forecast from active and passive extension together. Active extension deficit: there is no published prior; it takes 3 readings of this person, there are 2.",
            WhyNot(knee, MeasureIds.Lag, 14));
        Assert.StartsWith(
            "active and passive extension together: active from this person's own 3 readings; no published prior; passive population prior", forecast.BasisWords, StringComparison.Ordinal);
        Assert.Equal(4.243, forecast.ErrorUsed, 0.0005); // part 5.2: SEM 3 and 3, no correlation
        Assert.Equal([(1, 10), (2, 7), (3, 5)], forecast.Measured);
        Assert.InRange(forecast.At(3).Median, 4, 8);
        Assert.Contains(forecast.Milestones, one => one.Milestone.Id == "lag-week-12");
    }

    [Fact]
    public void A_measure_without_a_known_error_is_not_forecast() =>
        Assert.Equal("Effusion by the stroke test (0 none, 1 trace, 2 one plus, 3 two plus, 4 three plus): no error of measurement is known, so nothing can be forecast.",
            WhyNot(Knee.Well.Seen(7, Look.Empty.With(MeasureIds.Effusion, 2)), MeasureIds.Effusion, 7));

    [Theory]
    [InlineData(Signs.ClotSigns)]
    [InlineData(Signs.InfectionSigns)]
    [InlineData(Signs.PopFallOrGap)]
    public void An_open_red_flag_withholds_every_forecast(string sign)
    {
        Knee knee = Knee.Well.Seen(7, Look.Well.Says(sign, Answer.Yes));

        Assert.StartsWith("A red flag is open", WhyNot(knee, MeasureIds.FlexionActive, 7), StringComparison.Ordinal);
        Assert.All(Forecasting.All(knee.Case, Knee.Library, Knee.Day(7)).Values, answer => Assert.Null(answer.Forecast));
        Assert.Null(Forecasting.ChanceAtLeast(knee.Case, Knee.Library, MeasureIds.FlexionActive, 90, 8, Knee.Day(7)));
    }

    [Fact] // Tibbo 2019: under 90 deg at six weeks is stiff; that, too, is shown to the surgeon before anything is foretold.
    public void A_stiff_knee_withholds_them_too() => Assert.NotNull(WhyNot(Bends((45, 80)), MeasureIds.FlexionActive, 45));

    [Fact]
    public void All_are_those_with_a_reading_and_those_with_a_lane()
    {
        var all = Forecasting.All(Knee.Well.Seen(7, Look.Well.With("gait_speed", 0.6)).Case, Knee.Library, Knee.Day(7));

        Assert.All(
            new[] { MeasureIds.FlexionActive, MeasureIds.ExtensionPassive, MeasureIds.Lag, MeasureIds.PreOpShare, MeasureIds.Index, MeasureIds.QuadricepsTorque, "gait_speed" },
            id => Assert.True(all.ContainsKey(id), id));
        Assert.False(all.ContainsKey("six_minute_walk"));
        Assert.All(all.Values, answer => Assert.True(answer.Forecast is null != answer.WhyNot is null));
    }

    [Fact] // Part 5.1: 4 deg more from week 1 to 4 against 18.9 deg on the curve is clearly behind.
    public void A_reading_off_the_chart_is_to_be_measured_again()
    {
        Assert.Equal((true, "off the chart: re-measure, check rater and position, look at the red flags"), Of(Bends((7, 90), (14, 60))));
        Assert.Equal((false, "within what was expected"), Of(Bends((7, 80), (14, 88))));
        Assert.True(Made(Bends((7, 80), (28, 84)), MeasureIds.FlexionActive, 28).Surprise!.Z < -1);

        static (bool, string) Of(Knee knee) => Made(knee, MeasureIds.FlexionActive, 30).Surprise is { } surprise ? (surprise.IsOff, surprise.Words) : default;
    }

    [Fact] // Part 6: tell the surgeon when P(at least 90 deg by week 8) is under one half.
    public void The_chance_of_ninety_degrees_by_week_8_can_be_asked()
    {
        double Chance(Knee knee) => Forecasting.ChanceAtLeast(knee.Case, Knee.Library, MeasureIds.FlexionActive, 90, 8, Knee.Day(30))!.Value;

        Assert.InRange(Chance(Bends((7, 50), (14, 56), (28, 62))), 0, 0.2);
        Assert.InRange(Chance(Bends((7, 80), (14, 88), (28, 98))), 0.9, 1);
    }

    [Fact]
    public void For_a_deficit_at_least_as_good_means_at_most() =>
        Assert.True(
            Forecasting.ChanceAtLeast(Knee.Well.Case, Knee.Library, MeasureIds.ExtensionPassive, 10, 8, Knee.Day(1))
            > Forecasting.ChanceAtLeast(Knee.Well.Case, Knee.Library, MeasureIds.ExtensionPassive, 2, 8, Knee.Day(1)));

    [Fact]
    public void A_milestone_past_due_is_told_as_of_now()
    {
        Forecast forecast = Made(Bends((7, 70), (21, 84)), MeasureIds.FlexionActive, 21);
        MilestoneOutlook week2 = forecast.Milestones.Single(one => one.Milestone.Id == "flexion-week-2"); // 90 deg

        Assert.DoesNotContain(forecast.Milestones, one => one.Milestone.Id == "flexion-week-1"); // 80 deg, met
        Assert.Equal(3, week2.ByWeek);
        Assert.Matches(@"^due in week 2, (about \d|fewer than 1) in 10 that it is met now; 5 in 10 by week \d+", week2.Words);
    }

    [Fact]
    public void The_same_case_gets_the_same_answer()
    {
        Forecast Again() => Made(Bends((7, 72), (14, 84)), MeasureIds.FlexionActive, 14);

        static (double, double, double, double)[] Figures(Forecast made) => [.. made.Points.Select(point => (point.Median, point.Low80, point.High90, point.SeenHigh80))];
        Assert.Equal(Figures(Again()), Figures(Again()));
        Assert.Equal(Again().Milestones, Again().Milestones);
    }

    private static Look Extends(double active, double passive) => Look.Empty.With(MeasureIds.ExtensionActive, active).With(MeasureIds.ExtensionPassive, passive);

    private static Knee Lags(params (int Day, double Active, double Passive)[] looks) =>
        looks.Aggregate(Knee.Well, (knee, look) => knee.Seen(look.Day, Extends(look.Active, look.Passive)));
}
