using Progression.App.Actions;
using Progression.App.Forms;
using Progression.App.Pictures;

namespace Progression.App.Flags;

/// <summary>The red-flag checklist, ready for the shell.</summary>
public static class FlagScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<FlagListState> Definition { get; } = new()
    {
        Actions = FlagActions.Table,
        Draw = FlagPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state is { Mode: FlagMode.Note, Note: { } note } ? state with { Note = note.With(line => line.Put(text)) } : null,
        Aloud = FlagAloud.Words,
    };

    internal static ScreenPlace Where(FlagListState state) => new("Red flags")
    {
        Whose = CaseTitle.Of(state.Desk.Case),
        What = DayWords.Place(state.Desk.Case.Operation.Date, state.Desk.Today),
        Kept = state.IsTouched ? "not saved yet" : "a clinician decides",
        IsUnsaved = state.IsTouched,
    };
}
