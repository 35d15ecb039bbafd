using System.Globalization;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Exchange.Csv;

/// <summary>The readings of a case as a table, one row for each, the visit before the operation first. What is computed from others is left out.</summary>
public static class MeasuresCsv
{
    /// <summary>The header.</summary>
    internal static readonly string[] Heads =
    [
        CsvField.Code, CsvField.Date, CsvField.Week, CsvField.Visit, CsvField.Measure, CsvField.Title, CsvField.Value, CsvField.Unit,
        CsvField.Trials, CsvField.Rater, CsvField.Device, CsvField.Position, CsvField.Steps,
    ];

    /// <summary>The word for the visit before the operation.</summary>
    internal const string Baseline = "baseline";

    /// <summary>The word for any other visit.</summary>
    internal const string Since = "visit";

    /// <summary>The table.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="library">Knows names, units and order of the measures.</param>
    public static string Of(Case patient, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        CsvWriter csv = new(Heads);
        if (patient.PreOp is { } before)
        {
            Visit(csv, before, (patient, library), isBaseline: true);
        }

        foreach (Assessment visit in patient.Assessments)
        {
            Visit(csv, visit, (patient, library), isBaseline: false);
        }

        return csv.ToString();
    }

    private static void Visit(CsvWriter csv, Assessment visit, (Case Patient, ClinicalLibrary Library) of, bool isBaseline)
    {
        foreach (Reading reading in visit.Readings.Values.Where(one => of.Library.Measures.ContainsKey(one.Measure)).OrderBy(one => of.Library.Measures[one.Measure].Place))
        {
            Measure measure = of.Library.Measures[reading.Measure];
            csv.Text(of.Patient.Code.Text).Text($"{visit.Date:yyyy-MM-dd}")
                .Number(isBaseline ? null : Whole(PostOpWeek.Of(of.Patient.Operation.Date, visit.Date))).Text(isBaseline ? Baseline : Since)
                .Text(measure.Id).Text(measure.Title);
            (measure.Id == MeasureIds.Effusion ? csv.Text(MeasureText.Write(measure, reading.Value)) : csv.Number(MeasureText.Amount(reading.Value)))
                .Text(measure.Unit == "1" ? null : measure.Unit).Number(Whole(reading.Trials)).Text(reading.Rater ?? visit.Rater)
                .Text(reading.Device).Text(reading.Position).Number(Whole(reading.Steps));
        }
    }

    private static string? Whole(int? number) => number?.ToString(CultureInfo.InvariantCulture);
}
