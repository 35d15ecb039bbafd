using System.Globalization;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Writes a case as the file that <see cref="CaseFileReader"/> reads back to an equal case.</summary>
public static class CaseFileWriter
{
    /// <summary>The text of the file, lines ending in LF. What is not known is left out.</summary>
    /// <param name="written">The case.</param>
    /// <param name="library">Gives each reading its unit.</param>
    /// <exception cref="KeyNotFoundException">The library does not know a measure of the case.</exception>
    public static string Write(Case written, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(library);
        YamlLines lines = new();
        lines.Value("schema", CaseFileReader.Schema);
        lines.Text("code", written.Code.Text);
        lines.Value("born", Day(written.Born));
        WritePerson(lines, written);
        WritePlan(lines, written);
        WriteScreening(lines, written.Screening);
        if (written.PreOp is Assessment before)
        {
            lines.Map("pre_op", () => WriteAssessment(lines, before, library));
        }

        lines.List("assessments", written.Assessments, assessment => WriteAssessment(lines, assessment, library));
        lines.List("sessions", written.Sessions, session => WriteSession(lines, session));
        return lines.ToString();
    }

    private static void WritePerson(YamlLines lines, Case written)
    {
        lines.Map("operation", () =>
        {
            lines.Value("date", Day(written.Operation.Date));
            lines.Value("side", EnumWords.Of(written.Operation.Side));
            lines.Text("procedure", written.Operation.Procedure);
        });
        lines.Value("body_mass", Amount(written.BodyMass?.Kilograms, "kg"));
        lines.Value("weight_bearing", written.WeightBearing is WeightBearing load ? EnumWords.Of(load) : null);
        lines.Value("other_knee", EnumWords.Of(written.OtherKnee));
        if (written.Surgeon != SurgeonLimits.NotStated)
        {
            lines.Map("surgeon", () =>
            {
                lines.Value("flexion_at_most", Amount(written.Surgeon.FlexionAtMost?.Degrees, "deg"));
                lines.Value("no_resistance_before", Day(written.Surgeon.NoResistanceBefore));
                lines.Text("text", written.Surgeon.Text);
            });
        }

        lines.Text("therapist", written.Therapist);
        lines.Text("stimulator", written.Stimulator);
        lines.Value("pads", written.Pads is PadSize pad ? Pad(pad) : null);
    }

    private static void WritePlan(YamlLines lines, Case written)
    {
        if (written.Regimen is not null || written.Weeks is not null || written.PlanFrom is not null)
        {
            lines.Map("plan", () =>
            {
                lines.Text("regimen", written.Regimen);
                lines.Value("weeks", Text(written.Weeks));
                lines.Value("from", Day(written.PlanFrom));
            });
        }
    }

    private static void WriteScreening(YamlLines lines, Screening screening)
    {
        if (screening.Date is null)
        {
            return;
        }

        lines.Map("screening", () =>
        {
            lines.Value("date", Day(screening.Date));
            lines.Map("answers", screening.Answers.Values, answer => WriteAnswer(lines, answer));
        });
    }

    private static void WriteAnswer(YamlLines lines, ScreeningAnswer answer)
    {
        if (answer.Clearance is not { } clearance)
        {
            lines.Value(answer.Item, EnumWords.Of(answer.Answer));
            return;
        }

        lines.Map(answer.Item, () =>
        {
            lines.Value("answer", EnumWords.Of(answer.Answer));
            lines.Map("clearance", () =>
            {
                lines.Text("by", clearance.By);
                lines.Value("on", Day(clearance.On));
                lines.Text("text", clearance.Text);
            });
        });
    }

    private static void WriteAssessment(YamlLines lines, Assessment assessment, ClinicalLibrary library)
    {
        lines.Value("date", Day(assessment.Date));
        lines.Text("rater", assessment.Rater);
        lines.Map("readings", assessment.Readings.Values, reading =>
            WriteReading(lines, reading, MeasureText.Write(library.Measures[reading.Measure], reading.Value)));
        lines.Map("signs", assessment.SignsSeen, sign => lines.Value(sign.Key, EnumWords.Of(sign.Value)));
    }

    private static void WriteReading(YamlLines lines, Reading reading, string value)
    {
        if (reading is { Trials: null, Device: null, Position: null })
        {
            lines.Value(reading.Measure, value);
            return;
        }

        lines.Map(reading.Measure, () =>
        {
            lines.Value("value", value);
            lines.Value("trials", Text(reading.Trials));
            lines.Text("device", reading.Device);
            lines.Text("position", reading.Position);
        });
    }

    private static void WriteSession(YamlLines lines, SessionLog session)
    {
        lines.Value("date", Day(session.Date));
        lines.Value("contractions", Text(session.Contractions));
        lines.Value("peak", Amount(session.Peak?.Milliamperes, "mA"));
        lines.Value("evoked", Amount(session.Evoked?.NewtonMetres, "Nm"));
        lines.Value("strong_contraction_tolerated", session.StrongContractionTolerated is bool strong ? (strong ? "yes" : "no") : null);
        lines.Text("note", session.Note);
    }

    private static string Pad(PadSize pad) => pad.Height is null
        ? $"round {Amount(pad.Width.Centimetres, "cm")}"
        : $"{MeasureText.Amount(pad.Width.Centimetres)} x {Amount(pad.Height.Centimetres, "cm")}";

    private static string? Amount(double? value, string unit) => value is double amount ? $"{MeasureText.Amount(amount)} {unit}" : null;

    private static string? Day(DateOnly? day) => day is DateOnly known ? DaySpan.Text(known) : null;

    private static string? Text(int? number) => number?.ToString(CultureInfo.InvariantCulture);
}
