using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Intake;

/// <summary>The screening, ready for the shell.</summary>
public static class ScreeningScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<ScreeningState> Definition { get; } = new()
    {
        Actions = ScreeningActions.Table,
        Draw = ScreeningPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Aside is { } aside && state.Mode is ScreeningMode.Clearance or ScreeningMode.Day ? state with { Aside = aside.With(line => line.Put(text)) } : null,
        Aloud = ScreeningAloud.Words,
    };

    internal static ScreenPlace Where(ScreeningState state) => new("Screening before stim")
    {
        Whose = CaseTitle.Of(state.Case),
        What = state.IsStep ? "2 of 3" : $"asked {DayText.Written(state.AskedOn)}",
        Kept = state.IsTouched ? "not saved yet" : "",
        IsUnsaved = state.IsTouched,
    };
}
