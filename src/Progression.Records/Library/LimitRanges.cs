using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>The values a threshold may be given, to catch slips of entry such as 50 for 5. Bounds of entry, no source.</summary>
internal static class LimitRanges
{
    /// <summary>The range of one threshold, both ends included.</summary>
    public static NumberRange Of(string id, string unit)
    {
        (double least, double most) = id switch
        {
            LimitIds.FlexionFloor or LimitIds.FlexionEarly or LimitIds.FlexionFirst or LimitIds.FlexionStallUnder => (45, 140),
            LimitIds.ChangeLevel => (50, 99.9),
            LimitIds.LagErrorCorrelation => (0, 0.95),
            LimitIds.EarlyWorsening => (0.1, 1),
            LimitIds.UnitTolerance => (1, 30),
            LimitIds.LagGuardSems or LimitIds.FlexionGuardSems => (0, 3),
            LimitIds.PairingRatio => (0.1, 10),
            LimitIds.ForecastSurprise => (1, 5),
            LimitIds.ForecastsScored => (10, 1000),
            LimitIds.ForecastHitRate => (50, 80),
            LimitIds.FlexionChance => (5, 95),
            LimitIds.PainRise or LimitIds.PainRestHigh => (1, 10),
            LimitIds.EffusionRise => (1, 4),
            LimitIds.TreatmentDays or LimitIds.ReassessmentEvery or LimitIds.CertifyWithin or LimitIds.ReportEvery => (1, 90),
            LimitIds.CertifyEvery => (1, 365),
            LimitIds.SummaryLeast => (3, 100),
            _ => OfUnit(unit),
        };
        return new NumberRange(least, most, unit);
    }

    private static (double Least, double Most) OfUnit(string unit) => unit switch
    {
        "deg" => (0, 30),
        "d" => (0, 90),
        "wk" => (1, 52),
        "%" => (1, 200),
        "s" => (0, 300),
        "min" => (5, 600),
        "mA" => (1, 500),
        "mJ" => (1, 1000),
        "mA/cm2" => (0.1, 10),
        "W/cm2" => (0.01, 1),
        "cm" or "kg" => (0.1, 10),
        "ohm" => (100, 10_000),
        "Nm/kg" => (0.1, 5),
        _ => (0, 100),
    };
}
