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
            lines.Map("pre_op", () => AssessmentLines.Write(lines, before, library));
        }

        lines.List("assessments", written.Assessments, assessment => AssessmentLines.Write(lines, assessment, library));
        lines.List("sessions", written.Sessions, session => SessionLines.Write(lines, session));
        lines.List("flag_notes", written.FlagNotes, note =>
        {
            lines.Text("flag", note.Flag);
            lines.Value("on", Day(note.On));
            lines.Text("by", note.By);
            lines.Text("text", note.Text);
        });
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
        lines.Value("body_mass", MeasureText.Amount(written.BodyMass?.Kilograms, "kg"));
        lines.Value("weight_bearing", written.WeightBearing is WeightBearing load ? EnumWords.Of(load) : null);
        lines.Value("other_knee", EnumWords.Of(written.OtherKnee));
        if (written.Surgeon != SurgeonLimits.NotStated)
        {
            lines.Map("surgeon", () =>
            {
                lines.Value("flexion_at_most", MeasureText.Amount(written.Surgeon.FlexionAtMost?.Degrees, "deg"));
                lines.Value("no_resistance_before", Day(written.Surgeon.NoResistanceBefore));
                lines.Text("text", written.Surgeon.Text);
            });
        }

        lines.Text("therapist", written.Therapist);
        lines.Text("stimulator", written.Stimulator);
        lines.Value("pads", written.Pads is PadSize pad ? Pad(pad) : null);
        lines.Value("deficit_written", written.DeficitWritten is DeficitSign sign ? EnumWords.Of(sign) : null);
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

    private static string Pad(PadSize pad) => pad.Height is null
        ? $"round {MeasureText.Amount(pad.Width.Centimetres, "cm")}"
        : $"{MeasureText.Amount(pad.Width.Centimetres)} x {MeasureText.Amount(pad.Height.Centimetres, "cm")}";

    private static string? Day(DateOnly? day) => day is DateOnly known ? DaySpan.Text(known) : null;

    private static string? Text(int? number) => number?.ToString(CultureInfo.InvariantCulture);
}
