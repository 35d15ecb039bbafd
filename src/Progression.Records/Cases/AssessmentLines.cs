using System.Globalization;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Writes an assessment as it stands in a case file.</summary>
internal static class AssessmentLines
{
    /// <summary>Its lines; deficits flexion-positive.</summary>
    public static void Write(YamlLines lines, Assessment assessment, ClinicalLibrary library)
    {
        lines.Value("date", DaySpan.Text(assessment.Date));
        lines.Text("rater", assessment.Rater);
        lines.Map("readings", assessment.Readings.Values, reading => WriteReading(lines, reading, library.Measures[reading.Measure]));
        lines.Map("signs", assessment.SignsSeen, sign => lines.Value(sign.Key, EnumWords.Of(sign.Value)));
        VisitCorrectionFields.Write(lines, assessment, library);
    }

    private static void WriteReading(YamlLines lines, Reading reading, Measure measure)
    {
        if (reading is { Trials: null, Rater: null, Device: null, Position: null, Steps: null, Corrected.IsEmpty: true })
        {
            lines.Value(reading.Measure, MeasureText.Write(measure, reading.Value));
            return;
        }

        lines.Map(reading.Measure, () =>
        {
            if (reading.Each.IsEmpty)
            {
                lines.Value("value", MeasureText.Write(measure, reading.Value));
                lines.Value("trials", Text(reading.Trials));
            }
            else
            {
                lines.Value("each", $"[{string.Join(", ", reading.Each.Select(value => MeasureText.Write(measure, value)))}]");
            }

            lines.Text("rater", reading.Rater);
            lines.Text("device", reading.Device);
            lines.Text("position", reading.Position);
            lines.Value("steps", Text(reading.Steps));
            lines.List("corrected", reading.Corrected, correction =>
            {
                lines.Value("was", MeasureText.Write(measure, correction.Was));
                lines.Value("on", DaySpan.Text(correction.On));
                lines.Text("by", correction.By);
                lines.Text("why", correction.Why);
            });
        });
    }

    private static string? Text(int? number) => number?.ToString(CultureInfo.InvariantCulture);
}
