using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Exchange.Import;

/// <summary>The readings of a file that belong to one visit, held against what the case has of it.</summary>
internal sealed record FoundVisit
{
    private FoundVisit()
    {
    }

    /// <summary>The day.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Whether it is the visit before the operation.</summary>
    public required bool IsBaseline { get; init; }

    /// <summary>Where the first of its readings stands.</summary>
    public required ImportPlace First { get; init; }

    /// <summary>What was found, with what becomes of it.</summary>
    public required ImmutableArray<ImportLine> Lines { get; init; }

    /// <summary>What the visit cannot be taken for.</summary>
    public required ImmutableArray<ImportProblem> Problems { get; init; }

    /// <summary>What would come in.</summary>
    public required ImmutableArray<FoundReading> New { get; init; }

    /// <summary>The readings of a visit, judged.</summary>
    /// <param name="ground">The case, the library and the day.</param>
    /// <param name="visit">The day, and whether it lies before the operation.</param>
    /// <param name="readings">At least one reading, each good by itself.</param>
    public static FoundVisit Of(ImportGround ground, (DateOnly Day, bool Baseline) visit, ImmutableArray<FoundReading> readings)
    {
        Assessment? there = There(ground.Patient, visit);
        List<ImportLine> lines = [];
        List<ImportProblem> problems = [];
        Dictionary<string, FoundReading> fresh = new(StringComparer.Ordinal);
        foreach (FoundReading one in readings.OrderBy(one => one.Place.Order))
        {
            (ImportFate fate, ImportProblem? wrong) = Judge(one, there, fresh.GetValueOrDefault(one.Reading.Measure), ground);
            if (wrong is not null)
            {
                problems.Add(wrong);
                continue;
            }

            Measure measure = ground.Library.Measures[one.Reading.Measure];
            lines.Add(new ImportLine(one.Place, Words(ground.Patient, visit, there is null), measure.Title, MeasureText.Write(measure, one.Reading.Value), fate));
            if (fate == ImportFate.ComesIn)
            {
                fresh[one.Reading.Measure] = one;
            }
        }

        problems.AddRange(LeverArm(there, fresh));
        return new FoundVisit
        {
            Day = visit.Day,
            IsBaseline = visit.Baseline,
            First = readings.MinBy(one => one.Place.Order)!.Place,
            Lines = [.. lines],
            Problems = [.. problems],
            New = [.. fresh.Values],
        };
    }

    /// <summary>The case with the new readings of this visit.</summary>
    public Case Into(Case patient)
    {
        if (New.IsEmpty)
        {
            return patient;
        }

        Assessment? there = There(patient, (Day, IsBaseline));
        Assessment visit = there ?? new Assessment(Day, None<Reading>(), None<Answer>()) { Rater = OneRater() };
        Assessment now = visit with { Readings = visit.Readings.AddRange(New.Select(one => KeyValuePair.Create(one.Reading.Measure, Taken(one.Reading, visit.Rater)))) };
        return IsBaseline ? patient with { PreOp = now }
            : there is null ? patient.With(now)
            : patient with { Assessments = patient.Assessments.Replace(there, now) };
    }

    /// <summary>What is asked back about the new readings, each where it stands.</summary>
    /// <param name="entered">The case with all of the file.</param>
    /// <param name="library">The library.</param>
    public IEnumerable<ImportProblem> Queries(Case entered, ClinicalLibrary library)
    {
        if (New.IsEmpty)
        {
            return [];
        }

        Assessment visit = There(entered, (Day, IsBaseline))!;
        ImmutableArray<EntryQuery> queries = IsBaseline ? EntryQueries.OfVisit(visit, library) : EntryQueries.Of(entered, visit, library);
        return from query in queries
               where !query.IsNote && (!library.Measures.ContainsKey(query.Field) || New.Any(one => one.Reading.Measure == query.Field))
               let place = New.FirstOrDefault(one => one.Reading.Measure == query.Field)?.Place ?? First
               select new ImportProblem(place, query.Odd, query.Expected, query.Found);
    }

    private static Assessment? There(Case patient, (DateOnly Day, bool Baseline) visit) => visit.Baseline
        ? (patient.PreOp?.Date == visit.Day ? patient.PreOp : null)
        : patient.Assessments.FirstOrDefault(one => one.Date == visit.Day);

    private static (ImportFate Fate, ImportProblem? Wrong) Judge(FoundReading found, Assessment? there, FoundReading? above, ImportGround ground)
    {
        Measure measure = ground.Library.Measures[found.Reading.Measure];
        string value = MeasureText.Write(measure, found.Reading.Value);
        if (above is not null)
        {
            return Same(above.Reading, found.Reading) ? (ImportFate.Repeated, null) : (default, new ImportProblem(
                found.Place, $"The file has another value for this measure and day ({above.Place.At}).", "one value for a measure and a day", value));
        }

        if (there?.Readings.GetValueOrDefault(measure.Id) is { } kept)
        {
            return Same(kept, found.Reading) ? (ImportFate.IsThere, null) : (default, new ImportProblem(
                found.Place, "The case has another value of this day. A wrong value is put right with the correction form, not by an import.", MeasureText.Write(measure, kept.Value), value));
        }

        return there?.Corrected.OfType<VisitCorrection.TakenOut>().Any(one => one.Measure == measure.Id) != true ? (ImportFate.ComesIn, null) : (default, new ImportProblem(
            found.Place, "This was taken out of the visit by a correction and does not come back by an import.", "a measure that was not taken out", value));
    }

    private static IEnumerable<ImportProblem> LeverArm(Assessment? there, Dictionary<string, FoundReading> fresh)
    {
        bool Has(string measure) => fresh.ContainsKey(measure) || there?.Readings.ContainsKey(measure) == true;
        return fresh.Values.Where(one => one.Reading.Measure is MeasureIds.QuadricepsForce or MeasureIds.OtherForce && !Has(MeasureIds.LeverArm)).Select(one => new ImportProblem(
            one.Place, "A force says nothing without the lever arm at which it was measured.", "a lever arm of the same day", ""));
    }

    // A hair of binary fraction from a converted unit is no other value.
    private static bool Same(Reading one, Reading other) => Math.Abs(one.Value - other.Value) < 1e-9;

    // Only who took every reading is the rater of the visit: a reading of which nobody is known must not get a name.
    private string? OneRater() => New.Select(one => one.Reading.Rater).Distinct().ToArray() is [{ } rater] ? rater : null;

    private static Reading Taken(Reading reading, string? rater) => reading.Rater == rater ? reading with { Rater = null } : reading;

    private static ImmutableSortedDictionary<string, T> None<T>() => ImmutableSortedDictionary.Create<string, T>(StringComparer.Ordinal);

    private static string Words(Case patient, (DateOnly Day, bool Baseline) visit, bool isNew) =>
        $"{visit.Day:yyyy-MM-dd}, {(visit.Baseline ? "before the operation" : $"week {PostOpWeek.Of(patient.Operation.Date, visit.Day)}")}{(isNew ? "" : ", a visit that is there")}";
}
