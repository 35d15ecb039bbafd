using Progression.App.Actions;
using Progression.App.Forms;
using Progression.App.Pictures;
using Progression.Core.Rules;
using Progression.Core.People;

namespace Progression.App.Flags;

/// <summary>The red flags in words: a question a line with its answer.</summary>
internal static class FlagAloud
{
    public static ScreenAloud<FlagListState> Words { get; } = new() { Opening = Opening, Here = Here, Read = Read, Asks = Asks, Go = Go };

    private static IEnumerable<string> Opening(FlagListState state)
    {
        int open = state.Flags.Count(flag => flag.IsOpen);
        yield return open == 0 ? "No red flag is open." : $"Open red flags: {open}. Follow the clinic's protocol.";
    }

    private static IEnumerable<string>? Here(FlagListState state) => state switch
    {
        { Mode: FlagMode.Help } => null,
        { Mode: FlagMode.Note } => ["Both are needed: who closes it, and what was found and done."],
        { Chosen: { } row } => [$"{state.Index + 1} of {state.Rows.Length}. {Line(state, row)}", .. row.Flag.IsOpen ? RowWords.Of(FlagPicture.Below(state, RowWords.Unbroken)) : []],
        _ => ["The library has no red flags."],
    };

    private static IEnumerable<string>? Read(FlagListState state, string part) =>
        part.Length > 0 || state.Mode != FlagMode.Questions ? null : [.. Opening(state), .. state.Rows.Select(row => Line(state, row))];

    private static ScreenQuestion? Asks(FlagListState state) => state is { Mode: FlagMode.Note, Note: { } note } ? FormAloud.Asks(note, "") : null;

    private static FlagListState? Go(FlagListState state, string words) =>
        state.Mode == FlagMode.Questions && SpokenNames.Fitting(words, state.Rows.Select(row => $"{row.Flag.Flag.Title} {row.Question?.Text}")) is { Count: > 0 } rows ? state.To(rows[0]) : null;

    private static string Line(FlagListState state, FlagRow row)
    {
        string answer = row.Question is { } asked ? state.Answers.TryGetValue(asked.Id, out Answer given) ? YesNo.Word(given) : "no answer yet" : Standing(row.Flag);
        return $"{row.Flag.Flag.Title}{(row.Question is null ? "" : $": {row.Question.Text}")} {char.ToUpperInvariant(answer[0])}{answer[1..]}.";
    }

    private static string Standing(FlagState flag) => flag.IsOpen ? "open" : flag.ClosedBy is { } note ? $"closed by {note.By}" : "not raised by the readings";
}
