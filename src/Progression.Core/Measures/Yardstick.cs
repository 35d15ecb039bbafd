using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Measures;

/// <summary>What a difference between two visits is held against: the detectable change on the measure's scale, or the real step.</summary>
internal sealed record Yardstick
{
    private Yardstick(Measure measure) => Measure = measure;

    /// <summary>The detectable change on the measure's scale; null when there is none, for the reason in <see cref="WhyNot"/>.</summary>
    internal double? Length { get; private init; }

    internal string? WhyNot { get; private init; }

    internal ImmutableArray<string> Notes { get; private init; } = [];

    internal Source Source { get; private init; } = new("", Standing.CommonPractice);

    private Measure Measure { get; }

    private (double Old, double New)? Errors { get; init; }

    internal static Yardstick Of(KneeState old, KneeState now, Measure measure, ClinicalLibrary library)
    {
        Circumstances seen = Circumstances.Of(old, now, measure);
        bool figure = seen.Differ && (measure.Changed ?? PartOf(measure, library)?.Changed) is not null;
        Yardstick bare = new(measure)
        {
            Source = seen.Differ && measure.Changed is { } changed ? changed.Source : measure.Source,
            Notes = [.. seen.Words.Select(words => words + (figure ? ": the error for that is taken" : ": no error is published for that, so the usual one is taken; compare with care")), .. Said(measure)],
        };
        if (seen.Stairs is { } stairs)
        {
            return bare with { WhyNot = stairs };
        }

        if (measure.Scale == ErrorScale.Ordinal)
        {
            return measure.RealStep is double step ? bare with { Length = step } : bare with { WhyNot = "neither an error nor a real step of this measure is known" };
        }

        if (measure.Scale == ErrorScale.Logarithmic && (old.OwnValue(measure.Id) <= 0 || now.OwnValue(measure.Id) <= 0))
        {
            return bare with { WhyNot = "from or to 0 there is no ratio; the two values speak for themselves" };
        }

        return MeasurementError.Of(old, measure.Id, library, seen.Differ) is double before && MeasurementError.Of(now, measure.Id, library, seen.Differ) is double after
            ? bare with { Errors = (before, after), Length = Floor(measure, MeasurementError.DetectableChange(before, after, library.Limit(LimitIds.ChangeLevel).Value)) }
            : bare with { WhyNot = "the error of this measure is not known" };
    }

    /// <summary>A length on the measure's scale as a difference in its unit from the old value, in the direction moved; upwards where nothing moved.</summary>
    internal double InUnit(double length, Change change) =>
        Measure.Scale != ErrorScale.Logarithmic ? length : change.Difference < 0 ? change.Old * (1 - Math.Exp(-length)) : change.Old * (Math.Exp(length) - 1);

    /// <summary>What the yardstick is made of.</summary>
    internal IEnumerable<Input> Inputs(Change change, ClinicalLibrary library)
    {
        if (Errors is not { } errors)
        {
            yield return new Input("Step taken for real", MeasureText.Amount(Measure, change.Detectable!.Value));
            yield break;
        }

        double level = change.LevelPercent;
        yield return new Input("Standard error, older and newer reading", $"{ErrorText(errors.Old, change.Old)} and {ErrorText(errors.New, change.New)}");
        if (Measure.Id == MeasureIds.Lag)
        {
            yield return new Input("Correlation of the errors of active and passive extension", library.Limit(LimitIds.LagErrorCorrelation).Text);
        }

        double difference = Measure.Scale == ErrorScale.Logarithmic ? Math.Log(change.New / change.Old) : change.Difference;
        yield return new Input($"z at {Number.Text(level)} %", Number.Text(MeasurementError.Z(level), 3));
        yield return new Input("Reliable change index", Number.Text(MeasurementError.ReliableChange(difference, errors.Old, errors.New), 2));
        yield return new Input($"Detectable change at {Number.Text(level)} %", MeasureText.Amount(Measure, change.Detectable!.Value));
    }

    private string ErrorText(double error, double value) => Measure.Scale == ErrorScale.Logarithmic
        ? $"{Number.Text(100 * error, 1)} % of the value ({MeasureText.Amount(Measure, error * value)})"
        : MeasureText.Amount(Measure, error, 3);

    private static double Floor(Measure measure, double detectable) => measure.Scale == ErrorScale.Linear ? Math.Max(detectable, measure.RealStep ?? 0) : detectable;

    /// <summary>The measure whose error for changed circumstances a derived one takes over.</summary>
    private static Measure? PartOf(Measure measure, ClinicalLibrary library) => measure.Id switch
    {
        MeasureIds.Lag => library.Measures[MeasureIds.ExtensionPassive],
        MeasureIds.Index or MeasureIds.PreOpShare => library.Measures[MeasureIds.QuadricepsTorque],
        _ => null,
    };

    private static IEnumerable<string> Said(Measure measure) => measure.Note is { } note ? [note] : [];
}
