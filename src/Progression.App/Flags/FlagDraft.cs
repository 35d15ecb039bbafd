using Progression.App.Forms;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Flags;

/// <summary>The answers to the red flags as texts on disk, and back.</summary>
public static class FlagDraft
{
    /// <summary>Names the checklist among the forms of a case.</summary>
    public const string FormName = "flags";

    private const string NoteFor = "note-for";
    private const string Note = "note ";

    /// <summary>What was answered, and a note half typed; null when there is neither.</summary>
    public static KeptForm? Of(FlagListState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        bool noting = state.Note is { IsTouched: true };
        return !state.IsTouched && !noting ? null : new KeptForm(state.Desk.Case.Code, FormName)
        {
            At = state.Chosen?.Question?.Id,
            Fields = FormTexts.Of(state.Answers.Select(answer => (answer.Key, (string?)$"{answer.Value}"))),
            Further = FormTexts.Of(
            [
                (NoteFor, noting ? state.Chosen?.Flag.Flag.Id : null),
                .. noting ? state.Note!.Texts.ById.Select(text => (Note + text.Key, (string?)text.Value)) : [],
            ]),
        };
    }

    /// <summary>The checklist as it was left, on the case as it is now; an answer to a question that is not asked any more is left out and told.</summary>
    /// <param name="desk">What it reads.</param>
    /// <param name="kept">What was kept of it.</param>
    public static FlagListState Restored(FlagDesk desk, KeptForm kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        FlagListState state = FlagListState.Open(desk);
        List<string> lost = [];
        foreach ((string question, string text) in kept.Fields)
        {
            bool asked = state.Rows.Any(row => row.Question?.Id == question) && Enum.TryParse(text, out Answer _);
            lost.AddRange(asked ? [] : [$"{question} {text}"]);
            state = asked ? state.With(question, Enum.Parse<Answer>(text)) : state;
        }

        FlagListState at = state.To(Math.Max(0, state.Rows.ToList().FindIndex(row => row.Question?.Id == kept.At))) with
        {
            Status = lost.Count == 0 ? "As it was left." : $"As it was left, but these are not asked any more: {string.Join(", ", lost)}.",
        };
        return WithNote(at, kept);
    }

    /// <summary>What was answered or typed, line by line, each with its name and what stood there before.</summary>
    public static IEnumerable<(string Place, string Before, string Draft)> Lines(FlagListState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        FlagListState before = FlagListState.Open(state.Desk);
        return
        [
            .. state.Answers.Where(answer => !before.Answers.TryGetValue(answer.Key, out Answer kept) || kept != answer.Value)
                .Select(answer => (TextOf(state, answer.Key), WordOf(before, answer.Key), YesNo.Word(answer.Value))),
            .. (state.Note?.Lines ?? []).Where(line => line.IsTouched).Select(line => (line.Title, line.Given, line.Text)),
        ];
    }

    private static FlagListState WithNote(FlagListState state, KeptForm kept)
    {
        int row = kept.Further.TryGetValue(NoteFor, out string? flag) ? state.Rows.ToList().FindIndex(one => one.Flag.Flag.Id == flag && one.Flag.IsOpen) : -1;
        if (row < 0)
        {
            return state;
        }

        FlagListState noting = FlagFlow.AskNote(state.To(row));
        return noting with
        {
            Note = noting.Note!.With(new FormTexts(FormTexts.Of(kept.Further.Where(text => text.Key.StartsWith(Note, StringComparison.Ordinal)).Select(text => (text.Key[Note.Length..], (string?)text.Value))), "")),
        };
    }

    private static string TextOf(FlagListState state, string question) => state.Rows.FirstOrDefault(row => row.Question?.Id == question)?.Question?.Text ?? question;

    private static string WordOf(FlagListState state, string question) => state.Answers.TryGetValue(question, out Answer answer) ? YesNo.Word(answer) : "";
}
