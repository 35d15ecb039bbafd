using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads measures.yaml: every measure the rules read, in its own unit, and whatever else a clinic wants to record.</summary>
internal static class MeasureReader
{
    private static readonly NumberRange Bound = new(-1000, 100_000, "1");
    private static readonly NumberRange LinearError = new(0.001, 1000, "1");
    private static readonly NumberRange LogarithmicError = new(0.001, 1, "1");

    public static ImmutableSortedDictionary<string, Measure> Read(LibraryEntries entries)
    {
        entries.Require(MeasureIds.All);
        return entries.All.Select(One).OfType<Measure>().ToImmutableSortedDictionary(measure => measure.Id, measure => measure, StringComparer.Ordinal);
    }

    private static Measure? One(LibraryEntry entry)
    {
        Fields fields = entry.Fields;
        string? title = fields.Text("title", Need.Required);
        string? unit = Unit(entry);
        Direction? better = fields.OneOf<Direction>("better", Need.Required);
        (double? least, double? most) = Bounds(fields);
        bool whole = fields.YesNo("whole", Need.Optional) ?? false;
        ErrorScale? scale = fields.OneOf<ErrorScale>("error", Need.Required);
        double? error = Error(fields, scale);
        string? published = fields.Text("published_change", Need.Optional);
        Source source = fields.Source();
        fields.Done();
        return title is null || unit is null || better is null || least is null || most is null || scale is null ? null : new Measure
        {
            Id = entry.Id,
            Title = title,
            Unit = unit,
            Better = better.Value,
            Least = least.Value,
            Most = most.Value,
            Whole = whole,
            Scale = scale.Value,
            StandardError = error,
            PublishedChange = published,
            Source = source,
        };
    }

    private static string? Unit(LibraryEntry entry)
    {
        string? unit = entry.Fields.Text("unit", Need.Required, 10);
        if (unit is null || !MeasureIds.Units.TryGetValue(entry.Id, out string? needed) || unit == needed)
        {
            return unit;
        }

        entry.Fields.Refuse("unit", "The rules read this measure in another unit.", needed, unit);
        return null;
    }

    private static (double? Least, double? Most) Bounds(Fields fields)
    {
        double? least = fields.Decimal("least", Need.Required, Bound);
        double? most = fields.Decimal("most", Need.Required, Bound);
        if (least is not null && most is not null && most <= least)
        {
            fields.Refuse("most", "The greatest value is not more than the least.", $"more than {Number.Text(least.Value)}", Number.Text(most.Value));
        }

        return (least, most);
    }

    private static double? Error(Fields fields, ErrorScale? scale)
    {
        double? error = fields.Decimal("standard_error", Need.Optional, scale == ErrorScale.Logarithmic ? LogarithmicError : LinearError);
        if (error is not null && scale == ErrorScale.Ordinal)
        {
            fields.Refuse("standard_error", "A measure in steps has no standard error.", "nothing here, or another kind of error", Number.Text(error.Value));
        }

        return error;
    }
}
