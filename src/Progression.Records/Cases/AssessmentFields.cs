using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Measures;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads assessments: the one before the operation and those since.</summary>
internal static class AssessmentFields
{
    /// <summary>What was measured before the operation; null when nothing was.</summary>
    public static Assessment? PreOp(Fields top, CaseReading reading)
    {
        DaySpan before = new(CaseReading.Earliest, reading.Operation ?? reading.Today)
        {
            Late = "The day lies after the operation; such an assessment belongs under assessments.",
        };
        return top.Map("pre_op", Need.Optional) is Fields fields ? Read(fields, before, reading) : null;
    }

    /// <summary>The assessments since the operation, oldest first.</summary>
    public static ImmutableArray<Assessment> SinceOperation(Fields top, CaseReading reading)
    {
        DaySpan since = reading.SinceOperation with { Early = "The day lies before the operation; what was measured before belongs under pre_op." };
        Dictionary<DateOnly, int> seen = [];
        var all = ImmutableArray.CreateBuilder<Assessment>();
        foreach (Fields fields in top.Maps("assessments", Need.Optional))
        {
            if (Read(fields, since, reading) is not { } assessment)
            {
                continue;
            }

            if (!seen.TryAdd(assessment.Date, fields.Line))
            {
                string wrong = $"Another assessment of this day begins on line {seen[assessment.Date]}.";
                fields.Refuse("date", wrong, "one assessment a day", DaySpan.Text(assessment.Date));
            }

            all.Add(assessment);
        }

        return [.. all.OrderBy(assessment => assessment.Date)];
    }

    /// <summary>What was measured and seen, without its day; the caller closes the map.</summary>
    /// <param name="fields">The map of the visit.</param>
    /// <param name="date">The day of the visit; a stand-in where it could not be read.</param>
    /// <param name="reading">What it is read against.</param>
    public static Assessment Measured(Fields fields, DateOnly date, CaseReading reading)
    {
        string? rater = fields.Text("rater", Need.Optional);
        var readings = fields.Map("readings", Need.Optional) is Fields measured ? ReadingFields.Read(measured, reading) : ReadingFields.None;
        var signs = fields.Map("signs", Need.Optional) is Fields seen ? ReadSigns(seen, reading.Library) : ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal);
        return new Assessment(date, readings, signs) { Rater = rater };
    }

    private static Assessment? Read(Fields fields, DaySpan span, CaseReading reading)
    {
        DateOnly? date = fields.Date("date", Need.Required, span);
        Assessment visit = Measured(fields, date ?? reading.Today, reading) with { Corrected = VisitCorrectionFields.Read(fields, reading) };
        fields.Done();
        AskBack(fields, EntryQueries.OfVisit(visit, reading.Library), reading);
        return date is null ? null : visit;
    }

    private static ImmutableSortedDictionary<string, Answer> ReadSigns(Fields fields, ClinicalLibrary library)
    {
        var answers = ImmutableSortedDictionary.CreateBuilder<string, Answer>(StringComparer.Ordinal);
        // The detailed questions of the red flags are read where they stand; they are too many to list whenever a word is wrong.
        ImmutableArray<string> detailed = [.. library.RedFlags.SelectMany(flag => flag.Questions).Select(question => question.Id)];
        foreach (string sign in Signs.Questions.Keys.Union(detailed.Where(fields.Has)))
        {
            if (fields.OneOf<Answer>(sign, Need.Optional) is Answer answer)
            {
                answers[sign] = answer;
            }
        }

        fields.Done(detailed);
        return answers.ToImmutable();
    }

    /// <summary>Asks back what is odd. The reading goes on: what is odd can be right.</summary>
    public static void AskBack(Fields fields, IEnumerable<EntryQuery> queries, CaseReading reading)
    {
        foreach (EntryQuery query in queries)
        {
            int line = fields.Map("readings", Need.Optional)?.Line ?? fields.Line;
            reading.Queries.Add(line, new Problem(fields.Path.Length == 0 ? "readings" : $"{fields.Path}.readings", query.Odd, query.Expected, query.Found));
        }
    }
}
