using Progression.App.Actions;

namespace Progression.App.Trying;

/// <summary>The try-out, ready for the shell.</summary>
public static class TryScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<TryState> Definition { get; } = new()
    {
        Actions = TryActions.Table,
        Draw = TryPicture.Draw,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == TryMode.Readings ? state.With(state.Form.With(line => line.Put(text))) : null,
    };
}
