using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Papers;

/// <summary>The papers of a case as a screen.</summary>
public static class PapersScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<PapersState> Definition { get; } = new()
    {
        Actions = PapersActions.Table,
        Draw = PapersPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == PapersMode.Name ? state with { Name = state.Name.Put(text), Status = "" } : null,
        Aloud = PapersAloud.Words,
    };

    internal static ScreenPlace Where(PapersState state) => new("Papers")
    {
        Whose = CaseTitle.Of(state.Order.Patient),
        What = state.Chosen.Name,
        Kept = state.Order.Standing.State == Core.Reviews.SignatureState.Signed ? "signed" : "unsigned draft",
    };
}
