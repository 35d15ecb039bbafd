using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Reassessing;

namespace Progression.App.Propose;

/// <summary>Lays out the proposal: what the ladder comes to, the changes with their marks, and the reason of the one under the cursor.</summary>
public static class ProposePicture
{
    private const int LaneWidth = 14;
    private const int MostMissing = 3;

    private static readonly string[] Legend =
    [
        "Marks",
        "  [x] [ ]                 taken, not taken",
        "  [*]                     pinned: the cell stays, the disagreement is shown",
        "  +[x]                    goes together with another change",
        "It suggests; a clinician decides. The surgeon's and local protocols come first.",
    ];

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(ProposeState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode is ProposeMode.List or ProposeMode.Reason ? List(state, room) : ScrolledText.Of(PageLines(state, room.Width), state.Scroll, room);
        return ScreenSheet.Of(ProposeScreen.Where(state), body, (state.Status, ProposeActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the page that is read, or of the pane.</summary>
    internal static IReadOnlyList<PictureRow> PageLines(ProposeState state, int width) => state.Mode switch
    {
        ProposeMode.Verdict => VerdictText.Lines(state, width),
        ProposeMode.Outlook => ProposeText.Outlook(state, width),
        ProposeMode.Help => [.. ProposeActions.Table.HelpPage(state.HelpFor.ToString()).Concat(Legend).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))],
        _ => state.Chosen is { } chosen ? ProposeText.Change(state, chosen, width, full: state.Mode == ProposeMode.Why) : [],
    };

    private static Picture List(ProposeState state, PictureSize room)
    {
        List<PictureRow> head = [.. TextLines.Wrapped(VerdictText.Heading(state.Desk.Verdict, state.Desk.Library), room.Width, VerdictText.InkOf(state.Desk.Verdict))];
        head.AddRange(Missing(state, room.Width));
        if (VerdictText.OpenFlags(state.Desk.Flags) is { } flags)
        {
            head.AddRange(TextLines.Wrapped(flags, room.Width, Ink.Stop));
        }

        if (state.Chosen is null)
        {
            return new([.. head, PictureRow.Empty, .. Nothing(state, room.Width)]);
        }

        int shown = Math.Max(3, Math.Min(state.Desk.Changes.Length, room.Height - head.Count - 1 - (room.Height / 2)));
        PictureSize under = new(room.Width, room.Height - head.Count - shown - 1);
        int first = Paging.First(state.Index, shown, state.Desk.Changes.Length);
        Picture rows = new Picture([.. state.Desk.Changes.Skip(first).Take(shown).Select((change, at) => Row(state, change, first + at == state.Index, room.Width))]).Fit(new(room.Width, shown));
        Picture pane = state.Reason is { } line ? Reason(line, under) : ScrolledText.Of(PageLines(state, under.Width), state.Scroll, under);
        int above = head.Count + shown + 1;
        CaretAt caret = pane.Caret is { } at ? at with { Row = above + at.Row } : new CaretAt(0, head.Count + state.Index - first);
        return new([.. head, .. rows.Rows, TextLines.Rule(room.Width), .. pane.Rows], caret);
    }

    private static IEnumerable<PictureRow> Missing(ProposeState state, int width)
    {
        List<string> missing = [.. VerdictText.Missing(state.Desk.Verdict)];
        int shown = missing.Count > MostMissing ? MostMissing - 1 : missing.Count;
        IEnumerable<string> lines = missing.Take(shown).Concat(missing.Count > shown ? [$"{missing.Count - shown} more; v shows all"] : []);
        return lines.Select(line => PictureRow.Of(TextFit.Exactly($"Missing: {SafeText.OneLine(line)}", width)));
    }

    internal static IEnumerable<PictureRow> Nothing(ProposeState state, int width) => state.Desk.Assessment is null
        ? state.Desk.Problems.SelectMany(problem => TextLines.Wrapped($"No proposal could be made. {problem}", width, Ink.Stop))
        : TextLines.Wrapped("The plan stands as it is: the assessment asks for no change. Ctrl+S keeps a note of it with the plan.", width);

    private static PictureRow Row(ProposeState state, ProposedChange change, bool chosen, int width)
    {
        string mark = change.IsPinned ? "[*]" : state.Taken.Contains(change.Address) ? "[x]" : "[ ]";
        string together = change.With is null ? " " : "+";
        string place = $"{together}{mark} wk {change.Address.Week,-3} {TextFit.Exactly(state.LaneOf(change.Address)?.Short ?? change.Address.Lane, LaneWidth)} ";
        (string old, string now) = (state.Text(change.Address, change.Old), state.Text(change.Address, change.New));
        string text = change.IsPinned ? $"pinned: {old}; the draft: {now}" : ProposeText.Turn(old, now, width - SafeText.Width(place));
        return new PictureRow([new(place, chosen ? Ink.Chosen : Ink.Plain), new(text, change.IsPinned ? Ink.Warning : Ink.Plain)]).Fit(width);
    }

    private static Picture Reason(LineEntry line, PictureSize room)
    {
        List<PictureRow> rows = [.. TextLines.Wrapped("Nothing is taken: why does the plan stay as it is? The reason is kept with the plan.", room.Width, Ink.Strong)];
        (PictureRow row, int column) = LineField.Of(line, room.Width);
        return new([.. rows, row], new CaretAt(column, rows.Count));
    }
}
