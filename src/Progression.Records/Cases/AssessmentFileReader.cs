using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>
/// Reads one visit, written as described by shared/schema/assessment.schema.json and shown in shared/examples/assessment.yaml, into the case it belongs to.
/// The file may also put earlier readings right and close red flags. Nothing is guessed: how extension deficits are written has to be said once.
/// </summary>
public static class AssessmentFileReader
{
    /// <summary>The only value of the field "schema"; another form gets another number.</summary>
    internal const string Schema = "assessment-file/1";

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file as the person named it.</param>
    /// <param name="patient">The case as it stands.</param>
    /// <param name="library">The library whose measures the file may name.</param>
    /// <param name="today">The present day.</param>
    public static AssessmentFileResult Read(string path, Case patient, ClinicalLibrary library, DateOnly today) =>
        Read(WrittenFile.At(path), patient, library, today);

    /// <summary>Reads a file, on disk or not.</summary>
    /// <param name="file">The file.</param>
    /// <param name="patient">As above.</param>
    /// <param name="library">As above.</param>
    /// <param name="today">As above.</param>
    public static AssessmentFileResult Read(WrittenFile file, Case patient, ClinicalLibrary library, DateOnly today)
    {
        (Entered? entered, ImmutableArray<FileProblem> problems, ImmutableArray<FileProblem> queries) =
            EntryFile.Read(file, patient, (library, today), (fields, reading) => Enter(fields, patient, reading));
        return new AssessmentFileResult(entered?.Case, entered?.Visit, problems, queries);
    }

    private static Entered Enter(Fields fields, Case patient, CaseReading reading)
    {
        EntryHead.Read(fields, Schema, patient);
        DeficitSign? sign = fields.OneOf<DeficitSign>("deficit_sign", Need.Optional);
        reading = reading with { Deficits = sign ?? patient.DeficitWritten ?? DeficitSign.Positive };
        Assessment? visit = Visit(fields, patient, reading);
        CorrectionFields corrections = new(patient, reading);
        Case entered = corrections.Read(fields);
        entered = FlagNoteFields.Read(fields, reading).Aggregate(entered, (so, note) => so.With(note));
        fields.Done();
        bool deficits = corrections.Deficits || visit?.Readings.Keys.Any(WrittenDeficit.Concerns) == true;
        JudgeSign(fields, patient, sign, deficits);
        if (visit is null)
        {
            JudgeEmpty(fields);
            return new Entered(entered with { DeficitWritten = entered.DeficitWritten ?? sign }, null);
        }

        Ask(fields, visit, patient, reading);
        Case all = fields.Problems.Count == 0 ? entered.With(visit) : entered;
        return new Entered(all with { DeficitWritten = all.DeficitWritten ?? sign }, visit);
    }

    /// <summary>The visit of the file; null when it has none.</summary>
    private static Assessment? Visit(Fields fields, Case patient, CaseReading reading)
    {
        bool any = fields.Has("readings") || fields.Has("signs");
        DaySpan since = reading.SinceOperation with { Early = "The day lies before the operation; what was measured before it belongs into the case file." };
        DateOnly? date = fields.Date("date", any ? Need.Required : Need.Optional, since);
        Assessment visit = AssessmentFields.Measured(fields, date ?? reading.Today, reading);
        if (date is DateOnly day && patient.AssessmentOf(day) is not null)
        {
            const string wrong = "A visit of this day is already in the case, and a day has one. A wrong value of it is put right under \"correct\", with its date.";
            fields.Refuse("date", wrong, "a day without an assessment", DaySpan.Text(day));
        }
        else if (date is DateOnly alone && !any)
        {
            fields.Refuse("date", "Nothing was measured or seen on this day.", "readings or signs beside the date", DaySpan.Text(alone));
        }

        return any ? visit : null;
    }

    private static void JudgeSign(Fields fields, Case patient, DeficitSign? sign, bool deficits)
    {
        if (sign is DeficitSign said && patient.DeficitWritten is DeficitSign usual && said != usual)
        {
            string wrong = $"Extension deficits of this case are written the other way: {WrittenDeficit.Words(usual)}.";
            fields.Refuse("deficit_sign", wrong, $"{EnumWords.Of(usual)}, or left out", EnumWords.Of(said));
        }
        else if (deficits && sign is null && patient.DeficitWritten is null && !fields.Has("deficit_sign"))
        {
            string allowed = string.Join("; ", Enum.GetValues<DeficitSign>().Select(one => $"{EnumWords.Of(one)} ({WrittenDeficit.Words(one)})"));
            fields.Refuse("deficit_sign", "Extension deficits are given, and how they are written has not been said for this case.", allowed, "");
        }
    }

    private static void JudgeEmpty(Fields fields)
    {
        if (!fields.Has("correct") && !fields.Has("flag_notes") && !fields.Has("date"))
        {
            fields.Problems.Add(fields.Line, new Problem("", "The file holds nothing that could be entered.", "readings, signs, correct or flag_notes", ""));
        }
    }

    // The one place where odd values of a visit are asked back.
    private static void Ask(Fields fields, Assessment visit, Case patient, CaseReading reading) =>
        AssessmentFields.AskBack(fields, EntryQueries.Of(patient, visit, reading.Library).Where(query => !query.IsNote), reading);

    private sealed record Entered(Case Case, Assessment? Visit);
}
