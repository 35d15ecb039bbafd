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
    private const int LongestNote = 240;

    public static ImmutableSortedDictionary<string, Measure> Read(LibraryEntries entries)
    {
        entries.Require(MeasureIds.All);
        return entries.All.Select((entry, place) => One(entry) is { } measure ? measure with { Place = place } : null).OfType<Measure>().ToImmutableSortedDictionary(measure => measure.Id, measure => measure, StringComparer.Ordinal);
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
        (double? step, double? confirmed) = Steps(fields, scale);
        ChangedError? changed = Changed(fields, scale);
        (ImportantChange? gain, ImportantChange? loss) = (Important(fields, "important_gain"), Important(fields, "important_loss"));
        bool oneTrial = fields.YesNo("error_of_one_trial", Need.Optional) ?? false;
        bool stairs = fields.YesNo("same_stairs", Need.Optional) ?? false;
        string? note = fields.Text("note", Need.Optional, LongestNote);
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
            Changed = changed,
            ErrorOfOneTrial = oneTrial,
            RealStep = step,
            ConfirmedStep = confirmed,
            SameStairs = stairs,
            ImportantGain = gain,
            ImportantLoss = loss,
            Note = note,
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
        double? error = fields.Decimal("standard_error", Need.Optional, Range(scale));
        if (error is not null && scale == ErrorScale.Ordinal)
        {
            fields.Refuse("standard_error", "A measure in steps has no standard error.", "nothing here, or another kind of error", Number.Text(error.Value));
        }

        return error;
    }

    private static NumberRange Range(ErrorScale? scale) => scale == ErrorScale.Logarithmic ? LogarithmicError : LinearError;

    private static (double? Real, double? Confirmed) Steps(Fields fields, ErrorScale? scale)
    {
        double? real = fields.Decimal("real_step", Need.Optional, LinearError);
        double? confirmed = fields.Decimal("confirmed_step", Need.Optional, LinearError);
        if (confirmed is double smaller && (scale != ErrorScale.Ordinal || real is null || smaller >= real))
        {
            fields.Refuse("confirmed_step", "Only a measure in steps has one, and it is smaller than the real step.", "a number under real_step, with error: ordinal", Number.Text(smaller));
        }

        return (real, confirmed);
    }

    private static ChangedError? Changed(Fields entry, ErrorScale? scale)
    {
        if (entry.Map("changed", Need.Optional) is not { } fields)
        {
            return null;
        }

        double? error = fields.Decimal("standard_error", Need.Required, Range(scale));
        Source source = fields.Source();
        fields.Done();
        return error is double number ? new ChangedError(number, source) : null;
    }

    private static ImportantChange? Important(Fields entry, string key)
    {
        if (entry.Map(key, Need.Optional) is not { } fields)
        {
            return null;
        }

        double? amount = fields.Decimal("amount", Need.Required, LinearError);
        string? population = fields.Text("population", Need.Required);
        Source source = fields.Source();
        fields.Done();
        return amount is double number && population is not null ? new ImportantChange(number, population, source) : null;
    }
}
