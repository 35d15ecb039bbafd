using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>The parts of the screen that stand beside or in place of the grid.</summary>
internal static class GridPages
{
    private static readonly string[] Legend =
    [
        "Marks in a cell",
        "  X ! ? i                 a stop, a severe finding, a warning, a note: the worst of the cell",
        "  *                       pinned: set by hand, never overwritten by the draft",
        "  ·                       before the plan's first day",
        "  95 (88)                 the goal, and in brackets what was measured that week",
        "  95 ~90                  the goal, and what to expect by the end of that week",
        "  s 9/14 w 20/28          done of planned: stim sessions, exercises",
        "  15x2 5d                 15 contractions, twice a day, on 5 days of the week",
        "  ▼ now                   the present week",
        "  \"                       commented; # where it is set by hand too",
        "  ▸ before a cell         another than in the plan that was signed last (M)",
        "It suggests; a clinician decides. The surgeon's and the local protocol come first.",
    ];

    public static Picture Entry(GridState state, CellEntry entry, PictureSize room)
    {
        string heading = entry is { Problem: null, Proposed: { Changes.Length: > 1 } many } ? $"{many.What}: why is it right? {many.Against}" : $"{state.Lane.Title}, week {state.Week}" + (entry switch
        {
            { Problem: not null } => "",
            _ when state.Mode == GridMode.Fill => $" to be filled on: for how many weeks? 1 to {state.Plan.Weeks - state.Week}, or Enter alone for all of them",
            { Proposed: { } edit } => $": why is it right here? {edit.Against}",
            _ => $": {CellNotation.Form(state.Lane, state.Desk.Library)}",
        });
        heading = state.Mode is GridMode.Comment or GridMode.Remark or GridMode.Return or GridMode.Ask ? ReviewPages.Heading(state) : heading;
        IEnumerable<PictureRow> head = TextFit.Wrap(heading, room.Width).Take(Math.Max(1, room.Height - 1)).Select(text => PictureRow.Of(text));
        List<PictureRow> rows = [.. head];
        (PictureRow line, int column) = LineField.Of(entry.Line, room.Width);
        CaretAt caret = new(column, rows.Count);
        rows.Add(line);
        if (entry.Problem is { } problem)
        {
            rows.AddRange(TextLines.Wrapped(problem.ToString(), room.Width, Ink.Stop));
        }
        return new([.. rows], caret);
    }

    public static IEnumerable<string> HelpLines(GridState state, ActionTable<GridState> actions) =>
        actions.HelpPage(state.HelpFor.ToString()).Concat(Legend);

    public static Picture Help(GridState state, PictureSize room, ActionTable<GridState> actions) =>
        ScrolledText.Of([.. HelpLines(state, actions).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))], state.Scroll, room);

    public static Picture Why(GridState state, PictureSize room) => ScrolledText.Of(AnswerText.Lines(state, room.Width), state.Scroll, room);

    public static Picture Findings(GridState state, PictureSize room)
    {
        if (GridFindings.Chosen(state) is not { } chosen)
        {
            return new([PictureRow.Empty, PictureRow.Of("No findings on this plan.")]);
        }
        int below = Math.Max(6, room.Height / 2);
        int shown = room.Height - below - 1;
        int index = state.Findings.IndexOf(chosen);
        int first = Paging.First(index, shown, state.Findings.Length);
        List<PictureRow> rows = [.. state.Findings.Skip(first).Take(shown).Select((finding, at) => ListLine(state, finding, first + at == index))];
        rows.AddRange(Enumerable.Repeat(PictureRow.Empty, shown - rows.Count));
        rows.Add(TextLines.Rule(room.Width));
        rows.AddRange(ScrolledText.Of([.. AnswerText.WholeFinding(chosen, room.Width)], state.Scroll, new(room.Width, below)).Rows);
        return new([.. rows.Select(row => row.Fit(room.Width))], new CaretAt(0, index - first));
    }

    private static PictureRow ListLine(GridState state, Finding finding, bool chosen)
    {
        string place = finding.Cells.IsEmpty ? "whole plan" : Place(state, finding.Cells);
        return new(
        [
            new($"{FindingWords.Mark(finding.Severity)} {FindingWords.Word(finding.Severity),-8}", chosen ? Ink.Chosen : FindingWords.InkOf(finding.Severity)),
            new($"{TextFit.Exactly(place, 26)} {finding.Text}", chosen ? Ink.Chosen : Ink.Plain),
        ]);
    }

    private static string Place(GridState state, IReadOnlyList<CellAddress> cells)
    {
        string lane = state.Plan.LaneOf(cells[0].Lane)?.Short ?? cells[0].Lane;
        return $"{lane} wk {cells[0].Week}" + (cells.Count > 1 ? $" +{cells.Count - 1}" : "");
    }
}
