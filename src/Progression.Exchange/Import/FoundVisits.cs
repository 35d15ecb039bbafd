using System.Collections.Immutable;

namespace Progression.Exchange.Import;

/// <summary>Sorts readings into visits: those of the case where it has one of that day, else new ones.</summary>
internal sealed class FoundVisits(ImportGround ground)
{
    private readonly Dictionary<(DateOnly Day, bool Baseline), List<FoundReading>> _visits = [];

    /// <summary>Adds a reading to the visit of its day.</summary>
    public void Add(FoundReading found)
    {
        (DateOnly, bool) key = (found.Day, found.SaidBaseline ?? IsBaseline(found.Day));
        if (!_visits.TryGetValue(key, out List<FoundReading>? readings))
        {
            _visits[key] = readings = [];
        }

        readings.Add(found);
    }

    /// <summary>The visits, oldest first.</summary>
    public ImmutableArray<FoundVisit> InOrder() =>
        [.. _visits.OrderBy(visit => visit.Key.Day).ThenByDescending(visit => visit.Key.Baseline).Select(visit => FoundVisit.Of(ground, visit.Key, [.. visit.Value]))];

    // On the day of the operation itself, the case says what its visit of that day was.
    private bool IsBaseline(DateOnly day) => day < ground.Patient.Operation.Date || (day == ground.Patient.PreOp?.Date && ground.Patient.Assessments.All(visit => visit.Date != day));
}
