using Progression.App.Pictures;
using Progression.Core.Findings;

namespace Progression.App.Grid;

/// <summary>How a severity is written: a mark for a cell, a word beside it, and an ink that repeats both.</summary>
public static class FindingWords
{
    /// <summary>One character in a cell.</summary>
    public static char Mark(Severity severity) => severity switch
    {
        Severity.Stop => 'X',
        Severity.Severe => '!',
        Severity.Warning => '?',
        _ => 'i',
    };

    /// <summary>The word.</summary>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Stop => "stop",
        Severity.Severe => "severe",
        Severity.Warning => "warning",
        _ => "note",
    };

    /// <summary>The ink.</summary>
    public static Ink InkOf(Severity severity) => severity switch
    {
        Severity.Stop or Severity.Severe => Ink.Stop,
        Severity.Warning => Ink.Warning,
        _ => Ink.Note,
    };

    /// <summary>One line: mark, word, text.</summary>
    public static string Line(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return $"{Mark(finding.Severity)} {Word(finding.Severity)}: {finding.Text}";
    }

    /// <summary>How many of each severity, worst first and those that are none left out: "1 stop, 2 warnings".</summary>
    public static string Counts(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        string counts = string.Join(", ", findings.GroupBy(finding => finding.Severity).OrderByDescending(same => same.Key)
            .Select(same => $"{Mark(same.Key)} {same.Count()} {Plural(Word(same.Key), same.Count())}"));
        return counts.Length == 0 ? "no findings" : counts;
    }

    private static string Plural(string word, int count) => count == 1 || word == "severe" ? word : word + "s";
}
