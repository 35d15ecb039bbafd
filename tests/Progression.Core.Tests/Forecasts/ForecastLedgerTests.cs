using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Tests.Forecasts;

public sealed class ForecastLedgerTests
{
    private static readonly Knee First = Knee.Well.Seen(7, Look.Empty.With(MeasureIds.FlexionActive, 72));

    private static ImmutableArray<KeptForecast> After(ImmutableArray<KeptForecast> kept, Knee knee, int day) =>
        ForecastLedger.After(kept, knee.Case, Knee.Library, Knee.Day(day));

    private static Knee Then(double degrees) => First.Seen(14, Look.Empty.With(MeasureIds.FlexionActive, degrees));

    private static KeptForecast Flexion(ImmutableArray<KeptForecast> kept, int day) =>
        kept.Single(one => one.Measure == MeasureIds.FlexionActive && one.MadeOn == Knee.Day(day));

    [Fact]
    public void Every_forecast_made_is_kept_with_the_milestone_in_view()
    {
        ImmutableArray<KeptForecast> kept = After([], First, 7);

        Assert.Equal([MeasureIds.ExtensionPassive, MeasureIds.FlexionActive, MeasureIds.PreOpShare], kept.Select(one => one.Measure).Order(StringComparer.Ordinal));
        Assert.All(kept, one => Assert.Null(one.Score));
        Assert.Equal("flexion-week-2", Flexion(kept, 7).Target!.Milestone);
        Assert.Equal(new SeenValue(1, 72, 5), Assert.Single(Flexion(kept, 7).Model.Series[0].Seen));
    }

    [Fact]
    public void A_day_on_which_nobody_was_seen_has_made_and_scored_nothing()
    {
        ImmutableArray<KeptForecast> kept = After(After([], First, 7), Then(90), 14);
        ImmutableArray<KeptForecast> without = ForecastLedger.Without(kept, Knee.Day(14));
        Assert.NotNull(Flexion(kept, 7).Score);
        Assert.Null(Flexion(without, 7).Score);
        Assert.DoesNotContain(without, one => one.MadeOn == Knee.Day(14));
    }

    // Reckoned by hand: one reading of 72 deg in week 1 under one rate 4.2, no misfit, SD 15 and 13, correlation 0.75, error 5. V = 250, a = 72.8, b = 109.62,
    // share of week 2 h = 0.22853: mean 81.214, sd 4.786, with the error of the reading 6.921; chance of showing 90 deg 0.1022.
    [Fact]
    public void The_next_reading_scores_it_against_the_band_of_a_reading()
    {
        RecoveryPrior wide = Knee.Library.Priors["flexion-wide"];
        RecoveryPrior plain = wide with { Curve = wide.Curve with { Rates = [new RecoveryRate(4.2, 1)], MisfitSpread = 0 } };
        ClinicalLibrary library = Knee.Library with { Priors = Knee.Library.Priors.SetItem("flexion-wide", plain) };
        ImmutableArray<KeptForecast> made = ForecastLedger.After([], First.Case, library, Knee.Day(7));
        ForecastScore score = Flexion(ForecastLedger.After(made, Then(90).Case, library, Knee.Day(14)), 7).Score!;

        Assert.Equal((Knee.Day(14), 90), (score.On, score.Value));
        Assert.Equal(81.214, (score.Low80 + score.High80) / 2, 0.0005);
        Assert.Equal(1.2693, score.Z, 0.0001);
        Assert.True(score.Inside);
        Assert.Equal(0.8061, score.Brier!.Value, 0.0001); // it did show 90 deg: (0.1022 - 1)^2
    }

    [Theory]
    [InlineData(80, true)]
    [InlineData(100, false)]
    [InlineData(60, false)]
    public void A_reading_inside_the_band_is_a_hit(double degrees, bool inside) =>
        Assert.Equal(inside, Flexion(After(After([], First, 7), Then(degrees), 14), 7).Score!.Inside);

    [Fact]
    public void What_was_not_measured_waits()
    {
        ImmutableArray<KeptForecast> kept = After(After([], First, 7), Then(84), 14);

        Assert.All(kept.Where(one => one.Measure == MeasureIds.ExtensionPassive), one => Assert.Null(one.Score));
        Assert.Null(Flexion(kept, 14).Score);
    }

    [Fact]
    public void Doing_a_day_again_takes_the_earlier_doing_back()
    {
        ImmutableArray<KeptForecast> once = After(After([], First, 7), Then(84), 14);
        ImmutableArray<KeptForecast> corrected = After(once, Then(88), 14);

        Assert.Equal(once.Length, corrected.Length);
        Assert.Equal(88, Flexion(corrected, 7).Score!.Value);
        Assert.Equal(88, Flexion(corrected, 14).Model.Series[0].Seen[1].Value);
    }

    [Fact]
    public void A_score_stays_when_later_readings_come()
    {
        ImmutableArray<KeptForecast> kept = After(After([], First, 7), Then(84), 14);

        Assert.Equal(Flexion(kept, 7).Score, Flexion(After(kept, Then(84).Seen(21, Look.Empty.With(MeasureIds.FlexionActive, 99)), 21), 7).Score);
    }

    [Fact]
    public void An_open_red_flag_adds_none_and_scores_all_the_same()
    {
        Knee flagged = First.Seen(14, Look.Empty.With(MeasureIds.FlexionActive, 84).Says(Signs.ClotSigns, Answer.Yes));
        ImmutableArray<KeptForecast> kept = After(After([], First, 7), flagged, 14);

        Assert.NotNull(Flexion(kept, 7).Score);
        Assert.DoesNotContain(kept, one => one.MadeOn == Knee.Day(14));
    }

    [Theory] // Part 4.4: shown from 30 on, warned of under 70 %.
    [InlineData(29, 0, null, false)]
    [InlineData(30, 20, "20 of 30 readings (67 %) fell into", true)]
    [InlineData(30, 21, "21 of 30 readings (70 %) fell into", false)]
    [InlineData(40, 33, "33 of 40 readings (83 %) fell into", false)]
    public void A_clinic_sees_its_hit_rate_once_there_is_enough(int scored, int hits, string? words, bool warns)
    {
        KeptForecast open = Flexion(After([], First, 7), 7);
        IEnumerable<KeptForecast> kept = Enumerable.Range(0, scored).Select(i => open with { Score = new ForecastScore(Knee.Day(14), 80, 70, 90, i < hits, 0, null) });
        HitRate rate = HitRate.Of([open, .. kept], Knee.Library);

        Assert.Equal((scored, hits, warns), (rate.Scored, rate.Hits, rate.Warns));
        Assert.Equal(words is null, rate.Words is null);
        Assert.StartsWith(words ?? "", rate.Words ?? "", StringComparison.Ordinal);
        Assert.Equal(warns, rate.Words?.Contains("do not fit this clinic", StringComparison.Ordinal) ?? false);
    }
}
