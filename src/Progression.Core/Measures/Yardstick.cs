using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Measures;

/// <summary>What a difference between two visits is held against: the detectable change on the measure's scale, or the real step.</summary>
internal sealed record Yardstick
{
    private Yardstick()
    {
    }

    /// <summary>The detectable change on the measure's scale; null when there is none, for the reason in <see cref="WhyNot"/>.</summary>
    internal double? Length { get; private init; }

    internal string? WhyNot { get; private init; }

    internal ImmutableArray<string> Notes { get; private init; } = [];

    internal required Source Source { get; init; }

    /// <summary>Standard errors of the two readings; null on a scale of steps.</summary>
    internal (double Old, double New)? Errors { get; private init; }


    internal static Yardstick Of(KneeState old, KneeState now, Measure measure, ClinicalLibrary library)
    {
        Circumstances seen = Circumstances.Of(old, now, measure);
        bool figure = seen.Differ && (measure.Changed ?? PartOf(measure, library)?.Changed) is not null;
        Yardstick bare = new()
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
    internal static double InUnit(double length, Change change) =>
        change.Measure.Scale != ErrorScale.Logarithmic ? length : change.Difference < 0 ? change.Old * (1 - Math.Exp(-length)) : change.Old * (Math.Exp(length) - 1);

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
