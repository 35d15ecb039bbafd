using Progression.App.Forms;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Rules;

namespace Progression.App.Flags;

/// <summary>Lays out the red-flag checklist: each flag with its questions, and below what is to be gone through where one shows.</summary>
public static class FlagPicture
{
    private const int LeastBelow = 7;

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(FlagListState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        PictureSize room = FormScreen.Inside(size);
        (Picture body, IEnumerable<PictureRow> foot) = state switch
        {
            { Mode: FlagMode.Help } => (FormScreen.Help(HelpLines(state), state.Scroll, size.Width), []),
            { Note: { } note } => (FormPicture.Draw(note, room, _ => FormBeside.Nothing), FormScreen.Foot(note.Problem, ["Both are needed: who closes it (a name, role or initials), and what was found and done."], size.Width)),
            _ => (List(state, room), FormScreen.Wrapped(state.Chosen?.Question?.Text ?? "This flag is raised by the readings and signs of a visit; a in the grid enters one.", size.Width, Ink.Strong)),
        };
        return FormScreen.Draw(FlagScreen.Where(state), body, foot, (state.Status, FlagActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(FlagListState state) =>
    [
        .. FlagActions.Table.HelpPage(state.HelpFor.ToString()),
        "Marks",
        "  OPEN                    shows and nobody has closed it: steps of the ladder and forecasts are locked",
        "  closed no ?             closed with a note; answered no; not asked or not known",
        "A score only adds up points. Suspicion alone is reason enough to refer. Follow the clinic's protocol.",
    ];

    /// <summary>Lines of the part below the list, for scrolling.</summary>
    internal static IReadOnlyList<PictureRow> Below(FlagListState state, int width) => state.Chosen is { } row ? [.. Details(row.Flag, width)] : [];

    private static Picture List(FlagListState state, PictureSize room)
    {
        List<PictureRow> rows = [];
        int current = 0;
        string flag = "";
        for (int at = 0; at < state.Rows.Length; at++)
        {
            FlagRow row = state.Rows[at];
            if (row.Flag.Flag.Id != flag)
            {
                current = at == state.Index ? rows.Count : current;
                rows.Add(Heading(row, at == state.Index && row.Question is null));
                flag = row.Flag.Flag.Id;
            }

            if (row.Question is { } question)
            {
                current = at == state.Index ? rows.Count : current;
                string answer = state.Answers.TryGetValue(question.Id, out Core.People.Answer given) ? YesNo.Word(given) : "";
                rows.Add(PictureRow.Of(TextFit.Exactly($"  {TextFit.Exactly(answer, 10)}{SafeText.OneLine(question.Text)}", room.Width), at == state.Index ? Ink.Chosen : Ink.Plain));
            }
        }

        int below = Math.Max(LeastBelow, room.Height / 2);
        int shown = room.Height - below - 1;
        int first = Paging.First(current, shown, rows.Count, overlap: 1);
        List<PictureRow> seen = [.. rows.Skip(first).Take(shown)];
        seen.AddRange(Enumerable.Repeat(PictureRow.Empty, shown - seen.Count));
        return new([.. seen, PictureRow.Of(new string('─', room.Width), Ink.Quiet), .. Below(state, room.Width).Skip(state.Scroll).Take(below)], new CaretAt(0, current - first));
    }

    private static PictureRow Heading(FlagRow row, bool isChosen)
    {
        (string mark, Ink ink) = row.Flag switch
        {
            { IsOpen: true } => ("OPEN", Ink.Stop),
            { ClosedBy: not null } => ("closed", Ink.Note),
            { Raised: Truth.DoesNotHold } => ("no", Ink.Plain),
            _ => ("?", Ink.Warning),
        };
        return new([new(TextFit.Exactly(mark, 7), isChosen ? Ink.Chosen : ink), new(row.Flag.Flag.Title, isChosen ? Ink.Chosen : Ink.Strong)]);
    }

    private static IEnumerable<PictureRow> Details(FlagState flag, int width)
    {
        string since = flag.Since is { } day ? $" since {DayWords.Typed(day)}" : "";
        string heading = flag switch
        {
            { IsOpen: true } => $"OPEN{since}: {flag.Flag.Title}. c closes it with a note.",
            { ClosedBy: { } note } => $"Closed {DayWords.Typed(note.On)} by {note.By}: {note.Text}",
            { Raised: Truth.DoesNotHold } => $"{flag.Flag.Title}: no.",
            _ => $"{flag.Flag.Title}: not asked or not known.",
        };
        foreach (PictureRow line in FormScreen.Wrapped(heading, width, flag.IsOpen ? Ink.Stop : Ink.Strong))
        {
            yield return line;
        }

        if (flag.Raised == Truth.Holds)
        {
            foreach (PictureRow line in flag.Flag.Checklist.SelectMany(item => FormScreen.Wrapped($"- {item}", width, Ink.Plain)))
            {
                yield return line;
            }
        }

        if (flag.Score is { } score)
        {
            foreach (PictureRow line in FormScreen.Wrapped(score.Words, width, Ink.Note))
            {
                yield return line;
            }
        }

        foreach (PictureRow line in flag.Inputs.SelectMany(input => FormScreen.Wrapped($"{input.Name}: {input.Value}", width, Ink.Quiet)))
        {
            yield return line;
        }

        foreach (PictureRow line in FormScreen.Wrapped($"Source: {flag.Flag.Source}", width, Ink.Quiet))
        {
            yield return line;
        }
    }
}
