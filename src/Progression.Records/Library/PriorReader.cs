using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads forecasts.yaml: for each measure at most one prior in use from the shipped files and one from a clinic's, and the start for all others.</summary>
internal static class PriorReader
{
    private const int LongestTitle = 160;

    private static readonly NumberRange HorizonWeek = new(1, 104, "wk");

    public static (ImmutableSortedDictionary<string, RecoveryPrior> Priors, OwnReadingsStart? OwnReadings) Read(
        LibraryEntries entries, LibraryEntries known, ImmutableSortedDictionary<string, Measure> measures)
    {
        entries.Require([OwnReadingsStart.Id]);
        ImmutableArray<(RecoveryPrior Prior, LibraryEntry Entry)> read =
        [
            .. from entry in entries.All
               where entry.Id != OwnReadingsStart.Id
               let prior = One(entry, known, measures)
               where prior is not null
               select (prior, entry),
        ];
        foreach (IGrouping<(string, bool), (RecoveryPrior Prior, LibraryEntry Entry)> rivals in read.Where(each => each.Prior.InUse)
            .GroupBy(each => (each.Prior.Measure, each.Entry.IsClinic)).Where(group => group.Count() > 1))
        {
            string other = rivals.First().Entry.Id;
            rivals.Last().Entry.Fields.Refuse("use", $"{other} is in use for this measure.", "one prior in use for a measure", "yes");
        }

        LibraryEntry? own = entries.All.FirstOrDefault(entry => entry.Id == OwnReadingsStart.Id);
        return (read.ToImmutableSortedDictionary(each => each.Prior.Id, each => each.Prior, StringComparer.Ordinal), own is null ? null : OwnReadings(own));
    }

    private static RecoveryPrior? One(LibraryEntry entry, LibraryEntries known, ImmutableSortedDictionary<string, Measure> measures)
    {
        Fields fields = entry.Fields;
        int before = fields.Problems.Count;
        string? title = fields.Text("title", Need.Required, LongestTitle);
        string? id = fields.OneOf("measure", Need.Required, known.Known);
        bool? use = fields.YesNo("use", Need.Required);
        string? variant = fields.Text("variant", Need.Optional, 20);
        Measure? measure = id is null ? null : measures.GetValueOrDefault(id);
        if (id is not null && known.Removes(id))
        {
            fields.Refuse("measure", "This measure has been taken away.", "a measure of the library", id);
        }

        if (measure is not null && (measure.Scale == ErrorScale.Ordinal || measure.Id == MeasureIds.Lag))
        {
            string wrong = measure.Id == MeasureIds.Lag ? "The lag is forecast from active and passive extension." : "A measure in steps cannot be forecast.";
            fields.Refuse("measure", wrong, "a measure with an error in its unit or on the logarithmic scale", measure.Id);
            measure = null;
        }

        RecoveryCurve? curve = CurveFields.Curve(fields, measure);
        double? error = fields.Decimal("error", Need.Optional, CurveFields.Spread(measure));
        double? horizon = fields.Decimal("horizon", Need.Required, HorizonWeek);
        Source source = fields.Source();
        Standing? spread = fields.OneOf<Standing>("spread_standing", Need.Required);
        fields.Done();
        return fields.Problems.Count > before || measure is null ? null : new RecoveryPrior
        {
            Id = entry.Id,
            Title = title!,
            Measure = measure.Id,
            InUse = use!.Value,
            Variant = variant,
            Curve = curve!,
            Error = error,
            HorizonWeek = horizon!.Value,
            IsClinic = entry.IsClinic,
            Source = source,
            SpreadStanding = spread!.Value,
        };
    }

    private static OwnReadingsStart? OwnReadings(LibraryEntry entry)
    {
        Fields fields = entry.Fields;
        int before = fields.Problems.Count;
        string? title = fields.Text("title", Need.Required, LongestTitle);
        int? least = fields.Whole("readings_at_least", Need.Required, new NumberRange(2, 20, "1"));
        RecoveryCurve? curve = CurveFields.InErrors(fields);
        double? horizon = fields.Decimal("horizon", Need.Required, new NumberRange(0, 52, "wk"));
        Source source = fields.Source();
        fields.Done();
        if (curve is not null && curve.Early.Spread != curve.Late.Spread)
        {
            fields.Refuse("late", "The spread is not that of the early week.", $"sd: {Number.Text(curve.Early.Spread)}", Number.Text(curve.Late.Spread));
        }

        return fields.Problems.Count > before ? null : new OwnReadingsStart
        {
            Title = title!,
            LeastReadings = least!.Value,
            EarlyWeek = curve!.Early.Week,
            LateWeek = curve.Late.Week,
            Spread = curve.Early.Spread,
            Correlation = curve.Correlation,
            Rates = curve.Rates,
            Misfit = curve.MisfitSpread,
            MisfitWeeks = curve.MisfitWeeks,
            HorizonWeeks = horizon!.Value,
            Source = source,
        };
    }
}
