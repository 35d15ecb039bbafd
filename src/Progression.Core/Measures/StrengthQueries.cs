using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Measures;

/// <summary>Slips of entry that a strength shows only beside the last one: another unit, the two legs swapped.</summary>
internal static class StrengthQueries
{
    /// <summary>Newtons in the other units of force a dynamometer may show: pound-force and kilogram-force, by their definitions.</summary>
    private static readonly ImmutableArray<(string Unit, double Newtons)> Units = [("pounds", 4.448222), ("kilograms", 9.80665)];

    private static readonly ImmutableArray<(string Operated, string Other)> Pairs =
        [(MeasureIds.QuadricepsTorque, MeasureIds.OtherTorque), (MeasureIds.QuadricepsForce, MeasureIds.OtherForce)];

    internal static IEnumerable<EntryQuery> Of(EarlierReadings earlier, ClinicalLibrary library) =>
        Pairs.SelectMany(pair => Swapped(earlier, pair, library) is { } swapped
            ? [swapped]
            : new[] { OtherUnit(earlier, pair.Operated, earlier.Last(pair.Operated), library), OtherUnit(earlier, pair.Other, earlier.LastOrPreOp(pair.Other), library) }.OfType<EntryQuery>());

    // The operation itself takes most of the operated leg's strength, so that leg is held against readings since the operation only.
    private static EntryQuery? OtherUnit(EarlierReadings earlier, string id, Assessment? last, ClinicalLibrary library)
    {
        if (last?.Value(id) is not (double then and > 0) || earlier.Now.Value(id) is not (double now and > 0))
        {
            return null;
        }

        double near = Math.Log(1 + (library.Limit(LimitIds.UnitTolerance).Value / 100));
        double ratio = Math.Abs(Math.Log(now / then));
        string? unit = Units.Where(one => Math.Abs(ratio - Math.Log(one.Newtons)) <= near).Select(one => one.Unit).FirstOrDefault();
        return unit is null ? null : new EntryQuery(
            id,
            $"This is {Number.Text(Math.Max(now / then, then / now), 1)} times {(now > then ? "more" : "less")} than on {last.Date:yyyy-MM-dd}, about what reading {unit} for {(id is MeasureIds.QuadricepsForce or MeasureIds.OtherForce ? "newtons" : "newtons at the lever arm")} does, at one of the two visits. Please check the unit.",
            $"near {MeasureText.Shown(library.Measures[id], then)}, as last time",
            MeasureText.Shown(library.Measures[id], now));
    }

    // Each leg is within error of the other's last value and beyond error of its own.
    private static EntryQuery? Swapped(EarlierReadings earlier, (string Operated, string Other) pair, ClinicalLibrary library)
    {
        if (earlier.Now.Value(pair.Operated) is not double operated || earlier.Now.Value(pair.Other) is not double other
            || earlier.Last(pair.Operated)?.Value(pair.Operated) is not double lastOperated || earlier.LastOrPreOp(pair.Other)?.Value(pair.Other) is not double lastOther)
        {
            return null;
        }

        Measure measure = library.Measures[pair.Operated];
        double level = library.Limit(LimitIds.ChangeLevel).Value;
        bool Near(double one, double two) => measure.StandardError is double error && one > 0 && two > 0
            && Math.Abs(measure.Scale == ErrorScale.Logarithmic ? Math.Log(one / two) : one - two) < MeasurementError.DetectableChange(error, level);
        return Near(operated, lastOther) && Near(other, lastOperated) && !Near(operated, lastOperated) && !Near(other, lastOther)
            ? new EntryQuery(
                pair.Operated,
                "Each leg is near what the other leg had last time; please check whether the sides are swapped.",
                $"operated leg near {MeasureText.Shown(measure, lastOperated)}, other leg near {MeasureText.Shown(measure, lastOther)}",
                $"operated leg {MeasureText.Shown(measure, operated)}, other leg {MeasureText.Shown(measure, other)}")
            : null;
    }
}
