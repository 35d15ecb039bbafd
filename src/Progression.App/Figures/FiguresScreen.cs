using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Figures;

/// <summary>The clinic's figures as a screen.</summary>
public static class FiguresScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<FiguresState> Definition { get; } = new()
    {
        Actions = FiguresActions.Table,
        Draw = FiguresPicture.Draw,
        Where = _ => Place,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Aloud = new ScreenAloud<FiguresState>
        {
            Here = state => state.Mode == FiguresMode.Page ? new FiguresText(state.Summary, FiguresText.WholeWidth).Lines().Where(line => line.Length > 0) : null,
            Read = (state, part) => state.Mode == FiguresMode.Page && part.Length == 0 ? new FiguresText(state.Summary, FiguresText.WholeWidth).Lines().Where(line => line.Length > 0) : null,
        },
    };

    internal static ScreenPlace Place => new("Clinic figures");
}
