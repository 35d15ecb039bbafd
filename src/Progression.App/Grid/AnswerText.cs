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
        List<PictureRow> lines = [.. Wrapped(answer.Heading, Ink.Strong, width)];
        lines.AddRange(answer.Findings.SelectMany(finding => FindingLines(finding, width)));
        lines.AddRange(answer.Reasons.SelectMany(reason => Labelled("Because", reason, width)));
        lines.AddRange(answer.Inputs.SelectMany(input => Labelled("Input", $"{input.Name}: {input.Value}", width)));
        lines.AddRange(RuleLines(answer.Rule, answer.Limits, answer.Source, width));
        lines.AddRange(Labelled("Would change", answer.WouldChange, width));
        return lines;
    }

    /// <summary>A finding in full: its text, what it rests on, and its cure.</summary>
    public static IEnumerable<PictureRow> WholeFinding(Finding finding, int width)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return
        [
            .. FindingLines(finding, width),
            .. finding.Inputs.SelectMany(input => Labelled("Input", $"{input.Name}: {input.Value}", width)),
            .. RuleLines(finding.Rule, finding.Limits, finding.Source, width),
        ];
    }

    private static IEnumerable<PictureRow> FindingLines(Finding finding, int width)
    {
        IEnumerable<PictureRow> text = Wrapped(FindingWords.Line(finding), FindingWords.InkOf(finding.Severity), width);
        return finding.Cure is { } cure
            ? text.Concat(Labelled(cure.Changes.IsEmpty ? "Cure" : "Cure (c)", cure.Text, width))
            : text;
    }

    private static IEnumerable<PictureRow> RuleLines(string rule, IEnumerable<Limit> limits, Source source, int width) =>
        Labelled("Rule", rule, width)
            .Concat(limits.SelectMany(limit => Labelled("Limit", $"{limit.Title}: {limit.Text}; {limit.Source}", width)))
            .Concat(Labelled("Source", source.ToString(), width));

    private static IEnumerable<PictureRow> Labelled(string label, string text, int width) =>
        TextFit.Wrap($"{label}: {text}", width).Select((line, at) => at == 0
            ? new PictureRow([new(line[..(label.Length + 1)], Ink.Quiet), new(line[(label.Length + 1)..])])
            : PictureRow.Of(line));

    private static IEnumerable<PictureRow> Wrapped(string text, Ink ink, int width) =>
        TextFit.Wrap(text, width).Select(line => PictureRow.Of(line, ink));
}
