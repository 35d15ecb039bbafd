using System.Globalization;
using Progression.Core.Outcomes;

namespace Progression.Exchange.Csv;

/// <summary>The clinic's figures as a table, a row for each; an empty cell is not known, or kept back.</summary>
public static class OutcomesCsv
{
    /// <summary>The table.</summary>
    public static string Of(ClinicSummary summary)
    {
        CsvWriter csv = new("group", "what", "id", "title", "unit", "people", "events", "value", "low", "high", "range", "withheld");
        foreach (OutcomeRow row in OutcomeRows.Of(summary))
        {
            csv.Text(row.Group).Text(row.What).Text(row.Id).Text(row.Title).Text(row.Unit).Number(row.People?.ToString(CultureInfo.InvariantCulture)).Number(row.Events?.ToString(CultureInfo.InvariantCulture))
                .Number(Text(row.Value)).Number(Text(row.Low)).Number(Text(row.High)).Text(row.Range).Text(row.IsWithheld ? "yes" : "no");
        }

        return csv.ToString();
    }

    private static string? Text(double? value) => value is double known ? Core.Quantities.Number.Text(known) : null;
}
