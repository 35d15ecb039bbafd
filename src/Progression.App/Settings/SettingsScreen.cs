using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Settings;

/// <summary>The settings, ready for the shell.</summary>
public static class SettingsScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<SettingsState> Definition { get; } = new()
    {
        Actions = SettingsActions.Table,
        Draw = SettingsPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Aloud = new()
        {
            Here = state => state.Mode == SettingsMode.List ? [Line(state, state.Chosen), state.Chosen.Told] : null,
            Read = (state, part) => part.Length == 0 && state.Mode == SettingsMode.List ? SettingRow.All.Select(row => Line(state, row)) : null,
            Go = (state, words) => SpokenNames.Fitting(words, SettingRow.All.Select(row => row.Title)) is { Count: > 0 } found ? state.To(found[0]) : null,
        },
    };

    internal static ScreenPlace Where(SettingsState state) => new("Settings") { What = state.Chosen.Title, Kept = "kept as you change them" };

    private static string Line(SettingsState state, SettingRow row) => $"{row.Title}: {row.Value(state.Settings)}.";
}
