using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>The fields of a recovery curve. The bounds are for catching slips of entry and for keeping the reckoning sound; no source.</summary>
internal static class CurveFields
{
    private const int MostRates = 9;

    private static readonly NumberRange Week = new(0.5, 104, "wk");
    private static readonly NumberRange Correlation = new(-0.95, 0.95, "1");
    private static readonly NumberRange Rate = new(0.2, 104, "wk");
    private static readonly NumberRange Weight = new(0.001, 1000, "1");
    private static readonly NumberRange InErrorsSpread = new(0.01, 100, "1");
    private static readonly NumberRange Logarithmic = new(0.001, 2, "1");

    /// <summary>The curve of a measure; a stand-in, or null, with problems when it is wrong.</summary>
    public static RecoveryCurve? Curve(Fields fields, Measure? measure) => Read(fields, Spread(measure), at => Level(at, measure));

    /// <summary>A curve without levels, whose spreads count in standard errors.</summary>
    public static RecoveryCurve? InErrors(Fields fields) => Read(fields, InErrorsSpread, _ => 0);

    /// <summary>What a spread or an error of a measure may be.</summary>
    public static NumberRange Spread(Measure? measure) => measure switch
    {
        { Scale: ErrorScale.Logarithmic } => Logarithmic,
        { } linear => new NumberRange(0.001, linear.Most - linear.Least, linear.Unit),
        null => new NumberRange(0.001, 100_000, "1"),
    };

    private static RecoveryCurve? Read(Fields fields, NumberRange spread, Func<Fields, double?> level)
    {
        RecoveryAnchor? early = Anchor(fields.Map("early", Need.Required), spread, level);
        RecoveryAnchor? late = Anchor(fields.Map("late", Need.Required), spread, level);
        double? correlation = fields.Decimal("correlation", Need.Required, Correlation);
        ImmutableArray<RecoveryRate> rates = Rates(fields);
        Fields? misfit = fields.Map("misfit", Need.Required);
        double? misfitSpread = misfit?.Decimal("sd", Need.Required, spread with { Least = 0 });
        double? misfitWeeks = misfit?.Decimal("weeks", Need.Required, Rate);
        misfit?.Done();
        if (early is not null && late is not null && late.Week <= early.Week)
        {
            fields.Refuse("late", "It is not after the early week.", $"over {Number.Text(early.Week)} wk", Number.Text(late.Week));
        }

        return early is null || late is null || correlation is null || rates.IsEmpty || misfitSpread is null || misfitWeeks is null
            ? null
            : new RecoveryCurve(early, late, correlation.Value, rates, misfitSpread.Value, misfitWeeks.Value);
    }

    private static RecoveryAnchor? Anchor(Fields? at, NumberRange spread, Func<Fields, double?> level)
    {
        double? week = at?.Decimal("week", Need.Required, Week);
        double? value = at is null ? null : level(at);
        double? sd = at?.Decimal("sd", Need.Required, spread);
        at?.Done();
        return week is null || value is null || sd is null ? null : new RecoveryAnchor(week.Value, value.Value, sd.Value);
    }

    private static double? Level(Fields at, Measure? measure)
    {
        if (measure is null)
        {
            at.Scalar("value", Need.Required);
            return null;
        }

        double? level = at.As("value", Need.Required, Amount.Form("The value", measure.Unit, new NumberRange(measure.Least, measure.Most, measure.Unit)).Read)?.Value;
        if (level <= 0 && measure.Scale == ErrorScale.Logarithmic)
        {
            at.Refuse("value", "A value on the logarithmic scale is over 0.", "a number over 0", Number.Text(level.Value));
        }

        return level;
    }

    private static ImmutableArray<RecoveryRate> Rates(Fields fields)
    {
        ImmutableArray<double> rates = Numbers(fields, "rates", Rate);
        ImmutableArray<double> weights = Numbers(fields, "weights", Weight);
        if (!rates.IsEmpty && !weights.IsEmpty && rates.Length != weights.Length)
        {
            fields.Refuse("weights", "There are not as many as rates.", $"{rates.Length} numbers", $"{weights.Length}");
            return [];
        }

        return weights.IsEmpty ? [] : [.. rates.Zip(weights, (weeks, weight) => new RecoveryRate(weeks, weight))];
    }

    private static ImmutableArray<double> Numbers(Fields fields, string key, NumberRange range)
    {
        if (fields.Text(key, Need.Required) is not string text)
        {
            return [];
        }

        ImmutableArray<double?> read = [.. text.Split(',').Select(part => NumberRange.Read(part.Trim()))];
        if (read.Length > MostRates || read.Any(number => number is not double one || !range.Takes(one)))
        {
            fields.Refuse(key, "These are not numbers as asked for.", $"1 to {MostRates} numbers with commas between, each {range.Words(whole: false)}", text);
            return [];
        }

        return [.. read.Select(number => number!.Value)];
    }
}
