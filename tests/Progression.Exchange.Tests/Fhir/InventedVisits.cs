using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>Visits on which everything was measured, with values anywhere in the range and of any number of digits.</summary>
internal static class InventedVisits
{
    /// <summary>A case with a visit before the operation and three since.</summary>
    public static Case Of(Case patient, Random chance)
    {
        DateOnly operation = patient.Operation.Date;
        int since = InventedOrders.Today.DayNumber - operation.DayNumber;
        return patient with
        {
            PreOp = Visit(operation.AddDays(-chance.Next(1, 60)), chance),
            Assessments = [.. Enumerable.Range(0, 3).Select(_ => chance.Next(1, since + 1)).Distinct().Order().Select(day => Visit(operation.AddDays(day), chance))],
        };
    }

    private static Assessment Visit(DateOnly day, Random chance)
    {
        IEnumerable<Reading> readings = InventedOrders.Library.Measures.Values.Where(measure => !MeasureIds.Computed.Contains(measure.Id)).Select(measure => One(measure, chance));
        return new Assessment(
            day,
            readings.ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal),
            Signs.Questions.Keys.ToImmutableSortedDictionary(sign => sign, _ => (Answer)chance.Next(3), StringComparer.Ordinal))
        {
            Rater = "KL",
        };
    }

    private static Reading One(Measure measure, Random chance)
    {
        Reading reading = measure.Scale != ErrorScale.Ordinal && !measure.Whole && chance.Next(3) == 0
            ? Reading.OfTrials(measure.Id, [.. Enumerable.Range(0, chance.Next(1, 6)).Select(_ => Value(measure, chance))])
            : new Reading(measure.Id, Value(measure, chance));
        return reading with
        {
            Rater = chance.Next(8) == 0 ? "MB" : null,
            Device = chance.Next(4) == 0 ? "Long-armed goniometer, \"Nr. 7\" \u00e9\u4e2d" : null,
            Position = chance.Next(4) == 0 ? "Supine, heel on a block" : null,
            Steps = measure.SameStairs ? chance.Next(1, 61) : null,
            Trials = reading.Trials ?? (chance.Next(4) == 0 ? chance.Next(1, 21) : null),
        };
    }

    private static double Value(Measure measure, Random chance)
    {
        double value = measure.Least + (chance.NextDouble() * (measure.Most - measure.Least));
        return measure.Whole ? Math.Round(value) : 0.0 + chance.Next(3) switch { 0 => Math.Round(value), 1 => Math.Round(value, chance.Next(1, 7)), _ => value };
    }
}
