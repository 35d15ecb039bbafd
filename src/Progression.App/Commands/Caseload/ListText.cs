using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Progression.App.Caseload;

namespace Progression.App.Commands.Caseload;

/// <summary>The list as an aligned table: one line for each case, its states in words, and how many there are.</summary>
internal static class ListText
{
    private static readonly string[] Heading = ["Code", "Knee", "Operated", "Week", "Due", "Plan", "Saved", "By", "State"];

    internal static string Of(CaseListing listing, ImmutableArray<CaseLine> cases)
    {
        List<string[]> rows = [Heading, .. cases.Select(line => Row(line, listing.Today))];
        int[] widths = [.. Heading.Select((_, column) => rows.Max(row => row[column].Length))];
        StringBuilder text = new();
        foreach (string[] row in cases.IsEmpty ? [] : rows)
        {
            text.AppendLine(string.Join("  ", row.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd());
        }

        string all = listing.Cases.Length == 1 ? "1 case" : string.Create(CultureInfo.InvariantCulture, $"{listing.Cases.Length:N0} cases");
        return text.Append(cases.Length == listing.Cases.Length ? $"{all}." : string.Create(CultureInfo.InvariantCulture, $"{cases.Length:N0} of {all}.")).ToString();
    }

    private static string[] Row(CaseLine line, DateOnly today)
    {
        string week = line.Standing is not { } standing ? "" : line.Weeks is int weeks ? $"{standing.Week} of {weeks}" : $"{standing.Week}";
        return
        [
            line.Code.Text, line.Knee, line.Operation is DateOnly day ? $"{day:yyyy-MM-dd}" : "", week, CaseWords.Due(line.Standing, today),
            line.Revision is int revision ? $"rev {revision}" : "none", $"{line.SavedAt:yyyy-MM-dd}", line.SavedBy, string.Join(", ", line.Marks.Select(mark => CaseWords.Of(line, mark))),
        ];
    }
}
