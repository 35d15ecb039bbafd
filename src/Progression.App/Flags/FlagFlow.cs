using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.Entry;
using Progression.Core.People;

namespace Progression.App.Flags;

/// <summary>What the keys of the red-flag checklist do.</summary>
internal static class FlagFlow
{
    private const int MostName = 60;
    private const int MostText = 300;

    /// <summary>Answers the question under the cursor and goes on; a no to the question that covers all of a flag passes its others by.</summary>
    public static FlagListState Answer(FlagListState state, Answer answer)
    {
        FlagRow row = state.Chosen!;
        FlagListState answered = state.With(row.Question!.Id, answer);
        int next = Next(answered.Rows, state.Index, answer == Core.People.Answer.No ? row.Question.Id : null);
        bool raised = answered.Flags.Any(flag => flag.IsOpen && flag.Flag.Id == row.Flag.Flag.Id);
        FlagListState moved = raised ? answered : answered.To(next);
        return moved with
        {
            Status = raised ? "A red flag: follow the clinic's protocol. The list is below; Down goes on."
                : next == state.Index ? "That was the last question: Ctrl+S keeps the answers."
                : "",
        };
    }

    public static FlagListState TakeBack(FlagListState state) => state.With(state.Chosen!.Question!.Id, null) with { Status = "Taken back: not asked." };

    public static FlagListState AskNote(FlagListState state)
    {
        string group = $"Closing: {state.Chosen!.Flag.Flag.Title}";
        return state with
        {
            Mode = FlagMode.Note,
            Status = "",
            Note = Form.Of(new FormLine("by", group, "Closed by") { IsText = true }, new FormLine("text", group, "What was found, done") { IsText = true }),
        };
    }

    public static Step<FlagListState> HandInNote(FlagListState state)
    {
        Form note = state.Note!.HandIn(Wrong);
        return note.Problem is null && state.Note.IsLast ? TakeNote(state) : Step.To(state with { Note = note, Status = "" });
    }

    public static Step<FlagListState> TakeNote(FlagListState state)
    {
        if (state.Note!.FirstWrong(Wrong) is { } refused)
        {
            return Step.To(state with { Note = refused, Status = "" });
        }

        FlagNote note = new(state.Chosen!.Flag.Flag.Id, state.Desk.Today, state.Note.TextOf("by"), state.Note.TextOf("text"));
        FlagListState closed = state.With(note) with { Mode = FlagMode.Questions, Note = null, Status = $"Closed by {note.By}." };
        return Step.To(closed, new FlagClosed(closed.Patient, note));
    }

    public static Step<FlagListState> Finish(FlagListState state) => Step.To(state with { Status = "" }, new FlagsAnswered(state.Patient));

    public static Step<FlagListState> Leave(FlagListState state) => Step.To(state, new LeaveScreen(new FlagsLeft(state.IsTouched ? state : null)));

    public static string? WhyNoAnswer(FlagListState state) => state.Chosen is null ? "The library has no red flags."
        : state.Chosen.Question is null ? "This flag is raised by the readings and signs of a visit; there is nothing to answer here." : null;

    public static string? WhyNoTakingBack(FlagListState state) => WhyNoAnswer(state)
        ?? (Kept(state, state.Chosen!.Question!.Id) ? "This answer is kept with today's visit; it can be answered anew."
            : state.Answers.ContainsKey(state.Chosen.Question.Id) ? null : "This question has no answer yet.");

    public static string? WhyNoNote(FlagListState state) => state.Chosen?.Flag is not { } flag ? "The library has no red flags."
        : flag.IsOpen ? null
        : flag.ClosedBy is { } note ? $"This flag was closed by {note.By} on {DayWords.Short(note.On)}." : "This flag is not open.";

    public static string? WhyNotFinish(FlagListState state) => state.IsTouched ? null : "Nothing has been answered yet.";

    private static bool Kept(FlagListState state, string sign) => state.Desk.Case.Assessments.Any(visit => visit.Date == state.Desk.Today && visit.SignsSeen.ContainsKey(sign));

    // A sign can cover all of more than one flag.
    private static int Next(ImmutableArray<FlagRow> rows, int from, string? denied)
    {
        for (int at = from + 1; at < rows.Length; at++)
        {
            if (rows[at].Question is not null && !rows[at].Flag.Flag.Questions.Any(question => question.CoversAll && question.Id == denied))
            {
                return at;
            }
        }

        return from;
    }

    private static Problem? Wrong(FormLine line) => FreeText.Wrong(line.Title, line.Text, line.Id == "by" ? MostName : MostText, isNeeded: true);
}
