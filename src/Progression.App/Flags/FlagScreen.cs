using Progression.App.Actions;

namespace Progression.App.Flags;

/// <summary>The red-flag checklist, ready for the shell.</summary>
public static class FlagScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<FlagListState> Definition { get; } = new()
    {
        Actions = FlagActions.Table,
        Draw = FlagPicture.Draw,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state is { Mode: FlagMode.Note, Note: { } note } ? state with { Note = note.With(line => line.Put(text)) } : null,
    };
}
