using Progression.App.Pictures;
using Progression.Core.Findings;
using Progression.Core.Library;

namespace Progression.App.Grid;

/// <summary>
/// The answer to "why" in lines, always in the same order: what stands there, what speaks against it, the reasons,
/// what they rest on, the rule with its limits and source, and what would change the answer.
/// </summary>
public static class AnswerText
{
    /// <summary>The answer for the cell under the cursor, wrapped to a width.</summary>
    public static IReadOnlyList<PictureRow> Lines(GridState state, int width)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Lines(state.Answer, width);
    }

    /// <summary>An answer, wrapped to a width.</summary>
    public static IReadOnlyList<PictureRow> Lines(Explanation answer, int width)
    {
        ArgumentNullException.ThrowIfNull(answer);
        List<PictureRow> lines = [.. TextLines.Wrapped(answer.Heading, width, Ink.Strong)];
        lines.AddRange(answer.Findings.SelectMany(finding => FindingLines(finding, width)));
        lines.AddRange(answer.Reasons.SelectMany(reason => TextLines.Labelled("Because", reason, width)));
        lines.AddRange(answer.Inputs.SelectMany(input => TextLines.Labelled("Input", $"{input.Name}: {input.Value}", width)));
        lines.AddRange(RuleLines(answer.Rule, answer.Limits, answer.Source, width));
        lines.AddRange(TextLines.Labelled("Would change", answer.WouldChange, width));
        return lines;
    }

    /// <summary>A finding in full: its text, what it rests on, and its cure.</summary>
    public static IEnumerable<PictureRow> WholeFinding(Finding finding, int width)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return
        [
            .. FindingLines(finding, width),
            .. finding.Inputs.SelectMany(input => TextLines.Labelled("Input", $"{input.Name}: {input.Value}", width)),
            .. RuleLines(finding.Rule, finding.Limits, finding.Source, width),
        ];
    }

    private static IEnumerable<PictureRow> FindingLines(Finding finding, int width)
    {
        IEnumerable<PictureRow> text = TextLines.Wrapped(FindingWords.Line(finding), width, FindingWords.InkOf(finding.Severity));
        return finding.Cure is { } cure
            ? text.Concat(TextLines.Labelled(cure.Changes.IsEmpty ? "Cure" : "Cure (c)", cure.Text, width))
            : text;
    }

    private static IEnumerable<PictureRow> RuleLines(string rule, IEnumerable<Limit> limits, Source source, int width) =>
        TextLines.Labelled("Rule", rule, width)
            .Concat(limits.SelectMany(limit => TextLines.Labelled("Limit", $"{limit.Title}: {limit.Text}; {limit.Source}", width)))
            .Concat(TextLines.Labelled("Source", source.ToString(), width));
}
