using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Findings;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.App.Grid;

/// <summary>The grid in words: a cell, a lane through the weeks, a week through the lanes, the findings.</summary>
internal static class GridAloud
{
    public static ScreenAloud<GridState> Words { get; } = new() { Opening = Opening, Here = Here, Read = Read, Asks = Asks, Go = Go };

    private static IEnumerable<string> Opening(GridState state) => state.Mode != GridMode.Grid ? [] :
    [
        $"Planned from {CaseTitle.Day(state.Plan.From)} to the end of week {state.Plan.Weeks}; the present week is week {state.PresentWeek}.",
        .. state.Plan.StimBarred.IsEmpty ? [] : new[] { $"Stim is barred. {string.Join(" ", state.Plan.StimBarred)}" },
        $"Findings: {FindingWords.Counts(state.Findings)}.",
        .. state.Review is { } review ? Reviewed(review) : [],
    ];

    private static IEnumerable<string> Reviewed(GridReview review) =>
        new[] { $"{SignatureWords.Of(review.Standing)}.", SignatureWords.Review(review.Standing), review.Newer.Length > 0 ? $"{review.Newer}: newer takes it up." : "" }.Where(line => line.Length > 0);

    private static IEnumerable<string>? Here(GridState state) => state.Mode switch
    {
        GridMode.Grid => Cell(state),
        GridMode.Why => RowWords.Of(AnswerText.Lines(state, RowWords.Unbroken)),
        GridMode.Findings => Finding(state),
        GridMode.Edit or GridMode.Reason or GridMode.Fill or GridMode.Comment or GridMode.Remark or GridMode.Return or GridMode.Ask => [],
        GridMode.Review => RowWords.Of(ReviewText.Lines(state, RowWords.Unbroken)),
        GridMode.Sign => ReviewPages.SignatureWordsOf(state),
        GridMode.Confirm => [ReviewPages.Question(state)],
        GridMode.Conflict => ConflictPages.Aloud(state),
        GridMode.Days => PageAloud.Days(state),
        GridMode.Compare => PageAloud.DraftLine(state),
        GridMode.Draft => PageAloud.Draft(state),
        _ => null,
    };

    private static IEnumerable<string>? Read(GridState state, string part)
    {
        if (state.Mode is not (GridMode.Grid or GridMode.Findings))
        {
            return part.Length > 0 ? null : state.Mode == GridMode.Compare ? PageAloud.DraftLines(state) : state.Mode == GridMode.Conflict ? ConflictPages.AloudAll(state) : Here(state);
        }

        string[] words = part.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries);
        string rest = words.Length > 1 ? words[1] : "";
        return words.FirstOrDefault() switch
        {
            null => state.Mode == GridMode.Findings ? Findings(state) : Whole(state),
            "findings" => Findings(state),
            "week" => WeekOf(rest, state) is int week ? Week(state, week) : null,
            "lane" => LaneOf(rest, state) is { } lane ? Lane(state, lane) : null,
            _ => null,
        };
    }

    private static ScreenQuestion? Asks(GridState state) => state.Entry is not { } entry ? null
        : entry.Proposed is { } edit ? new ScreenQuestion($"Why is it right for {Place(state.Lane, state.Week)}") { Now = entry.Line.Text, Allowed = edit.Against, Refused = $"{entry.Problem}" }
        : state.Mode == GridMode.Fill ? new ScreenQuestion($"{Place(state.Lane, state.Week)}, filled on for how many weeks")
        {
            Now = entry.Line.Text,
            Allowed = $"1 to {state.Plan.Weeks - state.Week}; nothing typed is all of them.",
            Refused = $"{entry.Problem}",
        }
        : state.Mode is GridMode.Comment or GridMode.Remark or GridMode.Return or GridMode.Ask or GridMode.Sign ? new ScreenQuestion(ReviewPages.Heading(state)) { Now = entry.Line.Text, Refused = $"{entry.Problem}" }
        : new ScreenQuestion(Place(state.Lane, state.Week)) { Now = entry.Line.Text, Allowed = CellNotation.Form(state.Lane, state.Desk.Library), Refused = $"{entry.Problem}" };

    // "flexion week 4", "week 4", "flexion".
    private static GridState? Go(GridState state, string words)
    {
        if (state.Mode is not (GridMode.Grid or GridMode.Findings or GridMode.Days))
        {
            return null;
        }

        string[] asked = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int at = Array.FindIndex(asked, word => word is "week" or "wk");
        int? week = at >= 0 && at + 1 < asked.Length ? WeekOf(asked[at + 1], state) : state.Week;
        string lane = string.Join(' ', at < 0 ? asked : [.. asked[..at], .. asked.Skip(at + 2)]);
        IReadOnlyList<int> lanes = lane.Length == 0 ? [state.LaneIndex] : Lanes(lane, state);
        return week is not int known || lanes.Count == 0 ? null
            : lanes.Count > 1 ? state with { Status = SpokenNames.Which(lanes.Select(index => state.Plan.Lanes[index].Title)) }
            : GridMoves.To(state with { Mode = state.Mode == GridMode.Days ? GridMode.Days : GridMode.Grid }, lanes[0], known);
    }

    private static IEnumerable<string> Cell(GridState state) =>
    [
        $"{Place(state.Lane, state.Week)}{(state.Week == state.PresentWeek ? ", the present week" : "")}: {CellAloud.Of(state, state.Lane, state.Week)}.",
        .. state.FindingsOn(state.Cursor).Select(Said),
        .. state.Review?.On(state.Cursor).Select(said => $"Comment of {ReviewText.Line(said)}") ?? [],
        .. state.IsMarked(state.Cursor) ? new[] { "Another than in the plan that was signed last." } : [],
    ];

    private static IEnumerable<string> Whole(GridState state) =>
    [
        .. Opening(state with { Mode = GridMode.Grid }),
        .. Enumerable.Range(1, state.Plan.Weeks).SelectMany(week => Week(state, week)),
        .. Findings(state),
    ];

    private static IEnumerable<string> Week(GridState state, int week) =>
    [
        $"Week {week}, {CaseTitle.ShortDay(PostOpWeek.Start(state.Plan.Operation, week))} to {CaseTitle.ShortDay(PostOpWeek.End(state.Plan.Operation, week))}{(week == state.PresentWeek ? ", the present week" : "")}.",
        .. from lane in state.Plan.Lanes
           let words = CellAloud.Of(state, lane, week)
           where words != "nothing planned" && words != "before the plan's first day"
           select $"{lane.Title}: {words}.",
    ];

    private static IEnumerable<string> Lane(GridState state, Lane lane) =>
        [$"{lane.Title}, {BandWords.Title(lane.Band)}.", .. Enumerable.Range(1, state.Plan.Weeks).Select(week => $"Week {week}: {CellAloud.Of(state, lane, week)}.")];

    private static IEnumerable<string> Findings(GridState state) => state.Findings.IsEmpty
        ? ["There is no finding on this plan."]
        : [$"Findings: {state.Findings.Length}, worst first.", .. state.Findings.Select(finding => $"{Said(finding)} {At(state, finding)}".TrimEnd())];

    private static IEnumerable<string> Finding(GridState state) => GridFindings.Chosen(state) is not { } chosen
        ? ["There is no finding on this plan."]
        :
        [
            $"Finding {state.Findings.IndexOf(chosen) + 1} of {state.Findings.Length}. {At(state, chosen)}",
            .. RowWords.Of(AnswerText.WholeFinding(chosen, RowWords.Unbroken)),
        ];

    private static string At(GridState state, Finding finding) => finding.Cells.IsEmpty
        ? "It concerns the whole plan."
        : $"It concerns {string.Join("; ", finding.Cells.Select(cell => state.Plan.LaneOf(cell.Lane) is { } lane ? Place(lane, cell.Week) : $"{cell}"))}.";

    private static string Said(Finding finding) => $"{FindingWords.Word(finding.Severity)}: {finding.Text}";

    private static string Place(Lane lane, int week) => $"{lane.Title}, week {week}";

    private static int? WeekOf(string text, GridState state) => text.Length == 0 ? state.Week
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int week) && week >= 1 && week <= state.Plan.Weeks ? week
        : null;

    private static Lane? LaneOf(string words, GridState state) => words.Length == 0 ? state.Lane
        : Lanes(words, state) is { Count: > 0 } lanes ? state.Plan.Lanes[lanes[0]]
        : null;

    private static IReadOnlyList<int> Lanes(string words, GridState state)
    {
        ImmutableArray<Lane> lanes = state.Plan.Lanes;
        return SpokenNames.Fitting(words, lanes.Select(lane => lane.Title)) is { Count: > 0 } titled ? titled : SpokenNames.Fitting(words, lanes.Select(lane => lane.Short));
    }
}
