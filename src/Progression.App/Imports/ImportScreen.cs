using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Imports;

/// <summary>An import as a screen.</summary>
public static class ImportScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<ImportState> Definition { get; } = new()
    {
        Actions = ImportActions.Table,
        Draw = ImportPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == ImportMode.File ? state with { Name = state.Name.Put(text), Status = "" } : null,
        Aloud = ImportAloud.Words,
    };

    internal static ScreenPlace Where(ImportState state) => new("Import")
    {
        Whose = CaseTitle.Of(state.Patient),
        What = state.Mode == ImportMode.Preview ? "before it comes in" : "",
        Kept = state.Result is { } result ? $"{result.Coming} new, {result.Problems.Length} refused" : "",
    };
}
