using Progression.App.Pictures;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.App.Propose;

/// <summary>The verdict of the stim ladder in words: what it comes to, what is missing, what would change it, and every rule as it was read.</summary>
internal static class VerdictText
{
    /// <summary>"Stim: step down, High volume to Reduced", or why there is no verdict.</summary>
    public static string Heading(LadderVerdict? verdict, ClinicalLibrary library) => verdict is null
        ? "Stim: no verdict before the first session with stim."
        : verdict.From == verdict.To ? $"Stim: {verdict.OutcomeWords}, on {library.RungOf(verdict.From).Title}."
        : $"Stim: {verdict.OutcomeWords}, {library.RungOf(verdict.From).Title} → {library.RungOf(verdict.To).Title}.";

    /// <summary>The ink that repeats what the heading says.</summary>
    public static Ink InkOf(LadderVerdict? verdict) => verdict?.Outcome switch
    {
        LadderOutcome.ReferAndLock => Ink.Stop,
        LadderOutcome.StepBack or LadderOutcome.NotEnoughInformation => Ink.Warning,
        _ => Ink.Stim,
    };

    /// <summary>The whole page, wrapped to a width.</summary>
    public static IReadOnlyList<PictureRow> Lines(ProposeState state, int width)
    {
        LadderVerdict? verdict = state.Desk.Verdict;
        List<PictureRow> lines = [.. TextLines.Wrapped(Heading(verdict, state.Desk.Library), width, InkOf(verdict))];
        lines.AddRange(state.Desk.Flags.Where(flag => flag.IsOpen).SelectMany(flag => FlagLines(flag, width)));
        if (verdict is null)
        {
            return lines;
        }

        lines.AddRange(TextLines.Labelled("To do", verdict.DecidedBy.Advice, width));
        lines.AddRange(Doubt(verdict, width));
        lines.AddRange(verdict.ToMeasure.SelectMany(missing => TextLines.Labelled("Missing", missing, width)));
        lines.AddRange(verdict.WouldChange.SelectMany(words => TextLines.Labelled("Would change", words, width)));
        IEnumerable<RuleResult> decidingFirst = verdict.Results.OrderByDescending(result => result.Rule.Id == verdict.DecidedBy.Id);
        return [.. lines, .. decidingFirst.SelectMany(result => RuleLines(result, verdict, width))];
    }

    /// <summary>What has to be measured or asked before the ladder can answer; empty when it has answered.</summary>
    public static IEnumerable<string> Missing(LadderVerdict? verdict) => verdict is { Outcome: LadderOutcome.NotEnoughInformation } ? verdict.ToMeasure : [];

    /// <summary>The open red flags in one line; null when there is none.</summary>
    public static string? OpenFlags(IEnumerable<FlagState> flags)
    {
        List<string> open = [.. flags.Where(flag => flag.IsOpen).Select(flag => flag.Flag.Title)];
        return open.Count == 0 ? null : $"X Red flag open: {string.Join("; ", open)}. Follow the clinic's protocol.";
    }

    private static IEnumerable<PictureRow> FlagLines(FlagState flag, int width) =>
    [
        .. TextLines.Wrapped($"X Red flag open: {flag.Flag.Title}", width, Ink.Stop),
        .. TextLines.Indented(
        [
            .. flag.Flag.Checklist.SelectMany(line => TextLines.Wrapped($"- {line}", width - TextLines.Indent)),
            .. flag.Inputs.SelectMany(input => TextLines.Labelled("Input", $"{input.Name}: {input.Value}", width - TextLines.Indent)),
            .. flag.Score is { } score ? TextLines.Labelled("Score", score.Words, width - TextLines.Indent) : [],
            .. TextLines.Labelled("To close", flag.HowToClose, width - TextLines.Indent),
            .. TextLines.Labelled("Source", flag.Flag.Source.ToString(), width - TextLines.Indent),
        ]),
    ];

    private static IEnumerable<PictureRow> Doubt(LadderVerdict verdict, int width) => verdict is { FalseAdvance: double chance, WeakestCriterion: { } criterion }
        ? TextLines.Labelled("How sure", $"by its reading and error alone, about {Number.Text(100 * chance, 0)} in 100 that the weakest criterion is not truly met ({criterion}).", width)
        : [];

    private static IEnumerable<PictureRow> RuleLines(RuleResult result, LadderVerdict verdict, int width)
    {
        string answer = result.Truth switch { Truth.Holds => "applies", Truth.DoesNotHold => "does not apply", _ => "not known" };
        string decided = result.Rule.Id == verdict.DecidedBy.Id ? ", decides" : "";
        return
        [
            PictureRow.Empty,
            .. TextLines.Wrapped($"{result.Rule.Id} ({answer}{decided}): {result.Rule.Title}", width, Ink.Strong),
            .. result.Conditions.SelectMany(condition => ConditionLines(condition, width)),
            .. TextLines.Indented(TextLines.Labelled("Source", result.Rule.Source.ToString(), width - TextLines.Indent)),
        ];
    }

    private static IEnumerable<PictureRow> ConditionLines(Judged condition, int width) =>
    [
        .. TextLines.Wrapped($"{Mark(condition.Truth)} {condition}", width),
        .. TextLines.Indented(
        [
            .. condition.Inputs.SelectMany(input => TextLines.Labelled("Input", $"{input.Name}: {input.Value}", width - TextLines.Indent)),
            .. condition.Limits.SelectMany(limit => TextLines.Labelled("Limit", $"{limit.Title}: {limit.Text}; {limit.Source}", width - TextLines.Indent)),
        ]),
    ];

    private static char Mark(Truth truth) => truth switch { Truth.Holds => '+', Truth.DoesNotHold => '-', _ => '?' };
}
