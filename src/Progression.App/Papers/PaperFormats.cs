using System.Collections.Immutable;

namespace Progression.App.Papers;

/// <summary>The word for each format, and the ending of its files.</summary>
public static class PaperFormats
{
    /// <summary>Word and ending of each format.</summary>
    public static ImmutableArray<(PaperFormat Format, string Word, string Ending)> All { get; } =
    [
        (PaperFormat.Text, "text", ".txt"),
        (PaperFormat.Markdown, "markdown", ".md"),
        (PaperFormat.Html, "html", ".html"),
        (PaperFormat.Pdf, "pdf", ".pdf"),
        (PaperFormat.Svg, "svg", ".svg"),
        (PaperFormat.Png, "png", ".png"),
        (PaperFormat.Csv, "csv", ".csv"),
        (PaperFormat.Calendar, "calendar", ".ics"),
        (PaperFormat.Fhir, "fhir", ".json"),
    ];

    /// <summary>The word a person says for it.</summary>
    public static string Word(PaperFormat format) => All.First(row => row.Format == format).Word;

    /// <summary>How its files end, with the dot.</summary>
    public static string Ending(PaperFormat format) => All.First(row => row.Format == format).Ending;

    /// <summary>The format a file of this name is in; null where the ending tells none.</summary>
    public static PaperFormat? Of(string file) =>
        All.Where(row => file.EndsWith(row.Ending, StringComparison.OrdinalIgnoreCase)).Select(row => (PaperFormat?)row.Format).FirstOrDefault();
}
