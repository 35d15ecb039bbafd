using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Trying;

/// <summary>The try-out, ready for the shell.</summary>
public static class TryScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<TryState> Definition { get; } = new()
    {
        Actions = TryActions.Table,
        Draw = TryPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == TryMode.Readings ? state.With(state.Form.With(line => line.Put(text))) : null,
        Aloud = TryAloud.Words,
    };

    internal static ScreenPlace Where(TryState state) => new("What if")
    {
        Whose = CaseTitle.Of(state.Original),
        What = $"assessed {CaseTitle.ShortDay(state.Original.Assessments[^1].Date)}",
        Kept = "nothing is kept",
    };
}
