using System.Globalization;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Exchange.Csv;

/// <summary>
/// A plan as a table: a row for each cell that holds something, lane by lane as the grid has them, its content in the notation of the grid. What is computed
/// (pairing, load, time) is left out.
/// </summary>
public static class PlanCsv
{
    /// <summary>The column of the lane's id.</summary>
    internal const string Lane = "lane";

    /// <summary>The column of what stands in the cell.</summary>
    internal const string Content = "content";

    /// <summary>The column of why it was set by hand.</summary>
    internal const string Reason = "reason";

    /// <summary>The table.</summary>
    public static string Of(PlanRevision plan, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(plan);
        CsvWriter csv = new(CsvField.Code, Lane, CsvField.Title, CsvField.Week, "from", "to", Content, "set_by_hand", Reason);
        foreach (Core.Plans.Lane lane in plan.Lanes.Where(lane => lane.Band != Band.Checks))
        {
            for (int week = 1; week <= plan.Weeks; week++)
            {
                if (plan.At(new CellAddress(lane.Id, week)) is { Content: { } content } cell)
                {
                    csv.Text(plan.Code.Text).Text(lane.Id).Text(lane.Title).Number(week.ToString(CultureInfo.InvariantCulture))
                        .Text($"{PostOpWeek.Start(plan.Operation, week):yyyy-MM-dd}").Text($"{PostOpWeek.End(plan.Operation, week):yyyy-MM-dd}")
                        .Text(CellNotation.Text(lane, content, library)).Text(cell.IsPinned ? "yes" : "no").Text(cell.Pin?.Reason);
                }
            }
        }

        return csv.ToString();
    }
}
