using System.Collections.Immutable;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>What a CSV file is about.</summary>
public enum CsvContent
{
    /// <summary>Readings of visits.</summary>
    Measures,

    /// <summary>Logged sessions.</summary>
    Sessions,

    /// <summary>The cells of a plan.</summary>
    Plan,
}

/// <summary>A CSV file of another program, read against a case.</summary>
/// <param name="Result">What it comes to.</param>
/// <param name="Heads">Its header; empty where it has none that could be read.</param>
public sealed record CsvImport(ImportResult Result, ImmutableArray<string> Heads)
{
    /// <summary>Reads a file. Whatever the bytes are, the answer is a case or refusals.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="content">What it is about.</param>
    /// <param name="ground">What it is held against.</param>
    /// <param name="choices">What was said about files with a header: now, and before.</param>
    public static CsvImport Read(byte[] bytes, CsvContent content, ImportGround ground, Func<ImmutableArray<string>, CsvChoices> choices)
    {
        ArgumentNullException.ThrowIfNull(ground);
        ArgumentNullException.ThrowIfNull(choices);
        (string? text, ImportProblem? problem) = ImportText.Of(bytes);
        if (text is null)
        {
            return new CsvImport(ImportResult.Refused(problem!), []);
        }

        (CsvTable? table, ImmutableArray<ImportProblem> problems) = CsvTable.Of(text);
        return table is null ? new CsvImport(ImportResult.Refused(problems), []) : new CsvImport(Read(table, content, ground, choices(table.Heads)), table.Heads);
    }

    private static ImportResult Read(CsvTable table, CsvContent content, ImportGround ground, CsvChoices choices) => content switch
    {
        CsvContent.Measures => MeasuresReader.Read(ground, table, choices),
        CsvContent.Sessions => SessionsReader.Read(ground, table, choices),
        _ => PlanReader.Read(ground, table, choices),
    };
}
