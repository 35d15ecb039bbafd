using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads the corrections of earlier readings: the wrong value is kept with the reading.</summary>
internal sealed class CorrectionFields(Case patient, CaseReading reading)
{
    private readonly HashSet<(DateOnly, string)> _seen = [];

    /// <summary>Whether one of those read concerns an extension deficit, whose sign must be known.</summary>
    public bool Deficits { get; private set; }

    /// <summary>The case with everything under "correct" put right.</summary>
    public Case Read(Fields top) => top.Maps("correct", Need.Optional).Aggregate(patient, One);

    private Case One(Case so, Fields fields)
    {
        DateOnly? date = fields.Date("date", Need.Required, reading.UpToToday);
        Measure? measure = fields.OneOf("measure", Need.Required, reading.Library.Measures.Keys.Except(MeasureIds.Computed)) is string id ? reading.Library.Measures[id] : null;
        fields.Node("value", Need.Required);
        Reading? right = measure is null ? null : ReadingFields.Value(fields, "value", measure, reading.Deficits);
        string? by = fields.Text("by", Need.Required);
        string? why = fields.Text("why", Need.Optional, 300);
        fields.Done();
        if (date is not DateOnly day || right is null || by is null)
        {
            return so;
        }

        Deficits |= WrittenDeficit.Concerns(right.Measure);
        return CanBe(fields, day, right) ? so.Corrected(day, right, new Correction(right.Value, reading.Today, by, why)) : so;
    }

    private bool CanBe(Fields fields, DateOnly day, Reading right)
    {
        Measure measure = reading.Library.Measures[right.Measure];
        if (patient.AssessmentOf(day) is not { } visit)
        {
            fields.Refuse("date", "There is no assessment of this day.", Days(), DaySpan.Text(day));
        }
        else if (!visit.Readings.TryGetValue(right.Measure, out Reading? was))
        {
            fields.Refuse("measure", "This was not measured on that day, so there is nothing to put right.", string.Join(", ", visit.Readings.Keys), right.Measure);
        }
        else if (was.Value == right.Value)
        {
            fields.Refuse("value", "This is the value that stands there already.", $"another value than {Written(measure, was)}", Written(measure, right));
        }
        else if (!_seen.Add((day, right.Measure)))
        {
            fields.Refuse("measure", "This reading is put right twice in one file.", "each reading once", right.Measure);
        }
        else
        {
            return true;
        }

        return false;
    }

    private string Written(Measure measure, Reading one) => MeasureText.Write(measure, WrittenDeficit.Turn(reading.Deficits, measure.Id, one.Value));

    private string Days()
    {
        string[] days = [.. new[] { patient.PreOp }.OfType<Assessment>().Concat(patient.Assessments).Select(visit => DaySpan.Text(visit.Date))];
        return days.Length == 0 ? "none: nothing was assessed yet" : string.Join(", ", days);
    }
}
