using Progression.App.Actions;

namespace Progression.App.Imports;

/// <summary>An import in words.</summary>
internal static class ImportAloud
{
    public static ScreenAloud<ImportState> Words { get; } = new()
    {
        Here = state => state.Mode switch
        {
            ImportMode.File => [$"It holds {ImportWords.Of(state.Kind)}. A name without a folder is looked for in {state.Folder}."],
            ImportMode.Preview => state.Preview,
            _ => null,
        },
        Read = (state, part) => part.Length == 0 && state.Mode == ImportMode.Preview ? state.Preview : null,
        Asks = state => state.Mode == ImportMode.File ? new ScreenQuestion("Name of the file") { Now = state.Name.Text } : null,
    };
}
