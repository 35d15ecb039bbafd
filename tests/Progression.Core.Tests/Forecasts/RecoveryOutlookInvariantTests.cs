using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Statistics;

namespace Progression.Core.Tests.Forecasts;

/// <summary>What must hold whatever the readings are; 200 invented courses each. Part 4.3 of the project's reference lists them.</summary>
public sealed class RecoveryOutlookInvariantTests
{
    private const int Trials = 200;

    [Fact]
    public void No_reading_leaves_what_was_known_before()
    {
        NormalMixture at = Curves.Outlook(Curves.Wide, 5).At(1);

        Assert.Equal(80, at.Mean, 1e-9);
        Assert.Equal(Math.Sqrt((15 * 15) + (4.5 * 4.5)), at.StandardDeviation, 1e-9); // SD 15 and misfit 4.5 of the wide prior
        Assert.Equal([1 / 9.0, 2 / 9.0, 3 / 9.0, 2 / 9.0, 1 / 9.0], Curves.Outlook(Curves.Wide, 5).Weights.Select(weight => Math.Round(weight, 12)), new Close(1e-11));
    }

    [Fact]
    public void The_order_of_entry_does_not_matter() => ForEach((numbers, seen) =>
        Same(Curves.Outlook(Curves.Wide, 5, seen), Curves.Outlook(Curves.Wide, 5, seen.OrderBy(_ => numbers.NextShare())), 1e-9));

    [Fact]
    public void Another_reading_never_widens_the_forecast_at_one_rate() => ForEach((_, seen) =>
    {
        RecoveryCurve curve = Curves.Wide with { Rates = [new RecoveryRate(4.2, 1)] };
        RecoveryOutlook fewer = Curves.Outlook(curve, 5, seen.Skip(1));
        RecoveryOutlook more = Curves.Outlook(curve, 5, seen);
        Assert.All(Curves.Weeks, week => Assert.True(more.At(week).StandardDeviation <= fewer.At(week).StandardDeviation + 1e-9));
    });

    [Fact]
    public void Two_equal_readings_count_as_one_with_the_error_over_root_two() => ForEach((_, seen) =>
    {
        (double week, double value) = seen[0];
        ForecastModel twice = Curves.Model(Curves.Wide, 5, [.. seen, (week, value)]);
        ForecastModel once = Curves.Model(Curves.Wide, 5, seen);
        ForecastSeries series = once.Series[0];
        ForecastModel better = once with { Series = [series with { Seen = series.Seen.SetItem(0, series.Seen[0] with { Error = 5 / Math.Sqrt(2) }) }] };
        Same(RecoveryOutlook.Of(twice), RecoveryOutlook.Of(better), 1e-8, weights: true);
    });

    [Fact]
    public void A_reading_without_any_precision_changes_nothing() => ForEach((_, seen) =>
        Same(Curves.Outlook(Curves.Wide, 1e9, seen), Curves.Outlook(Curves.Wide, 1e9), 1e-6));

    [Fact]
    public void Readings_shifted_together_shift_the_forecast() => ForEach((_, seen) =>
    {
        RecoveryCurve raised = Curves.Wide with { Early = Curves.Wide.Early with { Level = 87 }, Late = Curves.Wide.Late with { Level = 121.3 } };
        RecoveryOutlook shifted = Curves.Outlook(raised, 5, seen.Select(one => (one.Week, one.Value + 7)));
        Assert.All(Curves.Weeks, week => Assert.Equal(Curves.Outlook(Curves.Wide, 5, seen).At(week).Quantile(0.3) + 7, shifted.At(week).Quantile(0.3), 1e-8));
    });

    [Fact]
    public void Shared_error_makes_the_lag_more_certain_at_one_rate() => ForEach((_, seen) =>
    {
        ForecastSeries active = Curves.Model(Curves.Wide with { Rates = [new RecoveryRate(4.2, 1)] }, 3, seen).Series[0];
        ForecastModel apart = new(ErrorScale.Linear, [active, active with { Sign = -1 }], 0);
        Assert.Equal(4.243, apart.Error, 0.0005); // part 5.2: SEM 3 and 3, correlation 0
        Assert.Equal(3.0, (apart with { ErrorCorrelation = 0.5 }).Error, 1e-12); // part 5.2: correlation 0.5
        Assert.True(RecoveryOutlook.Of(apart with { ErrorCorrelation = 0.5 }).At(6).StandardDeviation < RecoveryOutlook.Of(apart).At(6).StandardDeviation);
    });

    private static void ForEach(Action<SeededNumbers, ImmutableArray<(double Week, double Value)>> check)
    {
        SeededNumbers numbers = new(3);
        for (int trial = 0; trial < Trials; trial++)
        {
            int count = 1 + (int)(numbers.NextShare() * 12);
            ImmutableArray<(double, double)> seen = [.. Enumerable.Range(0, count).Select(i => (i + 0.2 + (0.6 * numbers.NextShare()), 90 + (12 * numbers.NextNormal())))];
            check(numbers, seen);
        }
    }

    private static void Same(RecoveryOutlook expected, RecoveryOutlook found, double within, bool weights = true)
    {
        Assert.Equal(expected.Weights, found.Weights, new Close(weights ? within : 1));
        Assert.All(Curves.Weeks, week =>
        {
            Assert.Equal(expected.At(week).Mean, found.At(week).Mean, within * 100);
            Assert.Equal(expected.At(week).StandardDeviation, found.At(week).StandardDeviation, within * 100);
        });
    }

    private sealed class Close(double within) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= within;

        public int GetHashCode(double obj) => 0;
    }
}
