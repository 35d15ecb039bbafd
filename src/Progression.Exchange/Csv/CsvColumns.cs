using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Progression.Core.Entry;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>What each column of a file is: by our own names, by names of measures, or as the person said. A column nobody knows is refused, not left out.</summary>
internal static partial class CsvColumns
{
    /// <summary>The columns, or everything that is wrong with them.</summary>
    /// <param name="table">The file.</param>
    /// <param name="known">The columns a file may have.</param>
    /// <param name="choices">What the person said.</param>
    public static (ImmutableArray<CsvColumn> Columns, ImmutableArray<ImportProblem> Problems) Of(CsvTable table, ImmutableArray<CsvField> known, CsvChoices choices)
    {
        List<ImportProblem> problems = [.. Unused(table, choices)];
        List<CsvColumn> columns = [];
        for (int at = 0; at < table.Heads.Length; at++)
        {
            string head = table.Heads[at];
            if (head.Length == 0 && table.Rows.All(row => string.IsNullOrWhiteSpace(row.Cells[at])))
            {
                continue;
            }

            (string means, bool isSaid) = Said(head, choices) is { } said ? (said, true) : (head, false);
            if (Field(means, known, isSaid) is not { } field)
            {
                problems.Add(Unknown(head, isSaid ? means : null, known));
            }
            else if (field.Name != CsvField.Ignore)
            {
                columns.Add(new CsvColumn(at, head, field.Name, field.Unit ?? Bracketed(head)));
            }
        }

        problems.AddRange(columns.GroupBy(column => column.Field).Where(same => same.Count() > 1).Select(same => new ImportProblem(
            ImportPlace.Row(1, same.Last().Head), "Two columns are the same.", $"one column for {same.Key}; \"{CsvField.Ignore}\" leaves one out", string.Join(", ", same.Select(one => one.Head)))));
        return ([.. columns], [.. problems]);
    }

    /// <summary>Whether text names a column that a file may have.</summary>
    public static bool IsKnown(string means, ImmutableArray<CsvField> known) => Field(means, known, isSaid: true) is not null;

    private static string? Said(string head, CsvChoices choices) => choices.Columns.Where(one => CsvChoices.Same(one.Head, head)).Select(one => one.Means).FirstOrDefault();

    private static IEnumerable<ImportProblem> Unused(CsvTable table, CsvChoices choices) =>
        choices.Columns.Where(one => table.Heads.All(head => !CsvChoices.Same(head, one.Head))).Select(one => new ImportProblem(
            ImportPlace.Row(1), "There is no such column.", "one of " + string.Join(", ", table.Heads.Take(20)), one.Head));

    // What the person says may have its unit as a last word; a head has it in brackets.
    private static (string Name, string? Unit)? Field(string text, ImmutableArray<CsvField> known, bool isSaid)
    {
        if (Named(text, known) is { } whole)
        {
            return (whole, null);
        }

        string trimmed = text.Trim();
        int space = trimmed.IndexOf(' ', StringComparison.Ordinal);
        return Bracket().Match(text) is { Success: true } match && Named(match.Groups[1].Value, known) is { } named ? (named, null)
            : isSaid && space > 0 && Named(trimmed[..space], known) is { } before ? (before, trimmed[(space + 1)..].Trim())
            : null;
    }

    private static string? Named(string text, ImmutableArray<CsvField> known)
    {
        string plain = CsvField.Plain(text);
        return plain.Length == 0 ? null : known.Where(field => field.Name == plain || (field.Also.Length > 0 && CsvField.Plain(field.Also) == plain)).Select(field => field.Name).FirstOrDefault();
    }

    // "(0-10)" is a range and no unit.
    private static string? Bracketed(string head) =>
        Bracket().Match(head) is { Success: true } match && match.Groups[2].Value.Trim() is { Length: > 0 } unit && !char.IsAsciiDigit(unit[0]) ? unit : null;

    private static ImportProblem Unknown(string head, string? said, ImmutableArray<CsvField> known)
    {
        string near = NearestWord.To(CsvField.Plain(said ?? head), known.Select(field => field.Name)) is { } word ? $" Did you mean \"{word}\"?" : "";
        return said is null
            ? new ImportProblem(ImportPlace.Row(1, head), "It is not known what this column is." + near, $"a known column, or --map \"{Found.Of(head)}=NAME\"; NAME \"{CsvField.Ignore}\" leaves it out", head)
            : new ImportProblem(ImportPlace.Row(1, head), "There is no such column to be mapped to." + near, string.Join(", ", known.Select(field => field.Name)), said);
    }

    [GeneratedRegex(@"^([^()\[\]]*)[(\[]([^()\[\]]{1,20})[)\]]\s*\z", RegexOptions.CultureInvariant)]
    private static partial Regex Bracket();
}
