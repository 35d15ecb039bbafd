using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Measures;

/// <summary>All measures of a case over all visits.</summary>
public sealed record Comparison
{
    private const int Fewest = 2;

    /// <summary>The days of the visits: before the operation first where there was one, then from the oldest to the newest.</summary>
    public required ImmutableArray<DateOnly> Visits { get; init; }

    /// <summary>Whether the first visit was before the operation. Its values stand beside the others; changes are told since the operation only.</summary>
    public required bool HasPreOp { get; init; }

    /// <summary>The measures with at least one value, in the order of the library; the lever arm is a setting and left out.</summary>
    public required ImmutableArray<ComparisonRow> Rows { get; init; }

    /// <summary>What testing several readings at once does to the chance of a false alarm; empty for fewer than two.</summary>
    public required string FalseAlarm { get; init; }

    /// <summary>The measures of a case.</summary>
    public static Comparison Of(Case patient, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        ImmutableArray<KneeState> since = [.. patient.Assessments.Select(one => KneeState.At(one, patient))];
        ImmutableArray<KneeState> all = patient.PreOp is { } before ? since.Insert(0, KneeState.At(before, patient)) : since;
        ImmutableArray<ComparisonRow> rows =
        [
            .. library.Measures.Values.Where(measure => measure.Id != MeasureIds.LeverArm).OrderBy(measure => measure.Place)
                .Select(measure => Row(measure, all, since, library))
                .Where(row => row.Values.Any(value => value is not null)),
        ];
        return new Comparison
        {
            Visits = [.. all.Select(state => state.Date)],
            HasPreOp = patient.PreOp is not null,
            Rows = rows,
            FalseAlarm = Alarm(rows, since, library.Limit(LimitIds.ChangeLevel).Value),
        };
    }

    /// <summary>The sentence on false alarms for a number of readings that are tested at a level.</summary>
    internal static string Alarm(int tested, double level) => tested < Fewest ? "" : string.Create(
        CultureInfo.InvariantCulture,
        $"{tested} measures tested at {Number.Text(level)} %: about {Number.Text(100 * MeasurementError.FalseAlarm(tested, level), 0)} in 100 that at least one differs by chance alone.");

    private static ComparisonRow Row(Measure measure, ImmutableArray<KneeState> all, ImmutableArray<KneeState> since, ClinicalLibrary library)
    {
        ImmutableArray<KneeState> seen = [.. since.Where(state => state.OwnValue(measure.Id) is not null)];
        return new ComparisonRow(
            measure,
            [.. all.Select(state => state.OwnValue(measure.Id))],
            Changes.FromLast(seen, measure.Id, library),
            seen.Length < Fewest ? null : Changes.Between(seen[0], seen[^1], measure.Id, library));
    }

    /// <summary>Counted are the readings that were taken: the lag, the index and their like bring no error of their own.</summary>
    private static string Alarm(ImmutableArray<ComparisonRow> rows, ImmutableArray<KneeState> since, double level) => Alarm(
        rows.Where(row => row.Last is { Class: not null, Measure.Scale: not ErrorScale.Ordinal })
            .SelectMany(row => since.Last(state => state.Date == row.Last!.To).Behind(row.Measure.Id))
            .Select(reading => reading.Measure)
            .Distinct()
            .Count(),
        level);
}
