using Progression.App.Actions;
using Progression.Records.Settings;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Settings;

/// <summary>Use these settings from now on, and keep them.</summary>
/// <param name="Settings">All of them.</param>
public sealed record ChangeSettings(PersonalSettings Settings) : ScreenEffect;

/// <summary>The table of the settings' keys.</summary>
public static class SettingsActions
{
    /// <summary>The table.</summary>
    public static ActionTable<SettingsState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. List().In(nameof(SettingsMode.List), "Settings"),
            .. CommonRows.Help<SettingsState>(state => state with { Mode = SettingsMode.List, Scroll = 0 }, Scrolled).In(nameof(SettingsMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<SettingsState>> List() =>
    [
        Shows<SettingsState>("help", ["F1", "?"], "this page", state => state with { Mode = SettingsMode.Help, Scroll = 0 }).Hinted(1, "help"),
        Does<SettingsState>("on", ["Enter", "Right", "l", "Space"], "the next choice for this setting", state => Turned(state, 1)).Hinted(2, "next choice"),
        Does<SettingsState>("back", ["Left", "h"], "the choice before", state => Turned(state, -1)).Hinted(3, "choice before"),
        Shows<SettingsState>("down", ["Down", "j", "Tab"], "the setting below", state => state.To(state.Index + 1)).Hinted(4, "below"),
        Shows<SettingsState>("up", ["Up", "k", "Shift+Tab"], "the setting above", state => state.To(state.Index - 1)),
        Shows<SettingsState>("first", ["Home"], "the first setting", state => state.To(0)),
        Shows<SettingsState>("last", ["End"], "the last setting", state => state.To(int.MaxValue)),
        Does<SettingsState>("usual", ["x"], "all as they are when nothing is set", state => Changed(state, PersonalSettings.Usual)).Hinted(6, "usual"),
        Does<SettingsState>("leave", ["Esc", "q"], "back to the list", state => Step.To(state, new LeaveScreen())).Hinted(5, "back").AsBack(),
        CommonRows.Repaint<SettingsState>(),
    ];

    private static Step<SettingsState> Turned(SettingsState state, int by) => Changed(state, state.Chosen.Step(state.Settings, by));

    private static Step<SettingsState> Changed(SettingsState state, PersonalSettings settings) =>
        Step.To(state with { Settings = settings, Status = "" }, new ChangeSettings(settings));

    private static SettingsState Scrolled(SettingsState state, int lines) =>
        state with { Scroll = Math.Clamp(state.Scroll + lines, 0, SettingsPicture.HelpLines.Count - 1) };
}
