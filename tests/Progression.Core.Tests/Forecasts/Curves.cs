using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.Library;

namespace Progression.Core.Tests.Forecasts;

/// <summary>Models in the making, after the illustrative flexion prior of the project's reference (part 4.1), SEM 4.</summary>
internal static class Curves
{
    internal static readonly RecoveryCurve Narrow = Knee.Library.Priors["flexion-narrow"].Curve;

    internal static readonly RecoveryCurve Wide = Knee.Library.Priors["flexion-wide"].Curve;

    /// <summary>One rate and no misfit, as in the exact checks.</summary>
    internal static readonly RecoveryCurve Exact = Narrow with { Rates = [new RecoveryRate(4.2, 1)], MisfitSpread = 0 };

    internal static ForecastModel Model(RecoveryCurve curve, double error, params IEnumerable<(double Week, double Value)> seen) => new(
        ErrorScale.Linear, [new ForecastSeries(MeasureIds.FlexionActive, 1, curve, error, [.. seen.Select(one => new SeenValue(one.Week, one.Value, error))])], 0);

    internal static RecoveryOutlook Outlook(RecoveryCurve curve, double error, params IEnumerable<(double Week, double Value)> seen) =>
        RecoveryOutlook.Of(Model(curve, error, seen));

    internal static ImmutableArray<double> Weeks { get; } = [0.5, 1, 3, 6, 8, 12, 26];
}
