using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Exchange.Csv;

/// <summary>A column that a file may have.</summary>
/// <param name="Name">Our own name for it: "date", "flexion_active".</param>
/// <param name="Also">Another name that a head may have; empty for none.</param>
internal sealed record CsvField(string Name, string Also = "")
{
    /// <summary>A column that is left out.</summary>
    public const string Ignore = "ignore";
    /// <summary>The day.</summary>
    public const string Date = "date";
    /// <summary>The code of the case.</summary>
    public const string Code = "code";
    /// <summary>The post-op week, to be checked.</summary>
    public const string Week = "week";
    /// <summary>Whether a visit was before the operation: "baseline" or "visit".</summary>
    public const string Visit = "visit";
    /// <summary>The measure of a row.</summary>
    public const string Measure = "measure";
    /// <summary>Its value.</summary>
    public const string Value = "value";
    /// <summary>Its unit.</summary>
    public const string Unit = "unit";
    /// <summary>Number of trials.</summary>
    public const string Trials = "trials";
    /// <summary>Who measured.</summary>
    public const string Rater = "rater";
    /// <summary>The device.</summary>
    public const string Device = "device";
    /// <summary>Position of the person.</summary>
    public const string Position = "position";
    /// <summary>Steps of the staircase.</summary>
    public const string Steps = "steps";
    /// <summary>The name of a measure or lane, to be read only.</summary>
    public const string Title = "title";

    private static readonly ImmutableArray<CsvField> OfEveryFile = [new(Ignore), new(Date), new(Code), new(Week)];

    /// <summary>The columns of a file of measures: one row for each reading, or one column for each measure.</summary>
    public static ImmutableArray<CsvField> Measures(ClinicalLibrary library) =>
    [
        .. OfEveryFile, new(Visit), new(Measure), new(Title), new(Value), new(Unit), new(Trials), new(Rater), new(Device), new(Position), new(Steps),
        .. library.Measures.Values.OrderBy(measure => measure.Place).Select(measure => new CsvField(measure.Id, measure.Title)),
    ];

    /// <summary>The columns of a file of sessions.</summary>
    public static ImmutableArray<CsvField> Sessions { get; } = [.. OfEveryFile, .. SessionsCsv.Fields.Select(field => new CsvField(field))];

    /// <summary>The columns of a file of a plan. What the grid itself knows (title, first and last day, whether it was set by hand) may stand there and is not read.</summary>
    public static ImmutableArray<CsvField> Plan { get; } =
        [new(Ignore), new(Code), new(Week), new(Title), new(PlanCsv.Lane), new(PlanCsv.Content), new(PlanCsv.Reason), new("from"), new("to"), new("set_by_hand")];

    /// <summary>A head without what differs between programs: case, spaces, hyphens and underscores.</summary>
    public static string Plain(string head) =>
        string.Join('_', head.ToLowerInvariant().Split([' ', '-', '_', '\u00A0'], StringSplitOptions.RemoveEmptyEntries));
}
