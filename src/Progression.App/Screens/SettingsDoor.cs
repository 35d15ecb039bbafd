using Progression.App.Actions;
using Progression.App.Settings;
using Progression.App.Stores;

namespace Progression.App.Screens;

/// <summary>Opens the settings; a change holds and is kept at once.</summary>
internal static class SettingsDoor
{
    /// <summary>The settings as a screen.</summary>
    public static Frame Open(SettingsKeeper keeper) => new Frame<SettingsState>(SettingsScreen.Definition, new SettingsState { Settings = keeper.Current, File = keeper.File })
    {
        Perform = (state, effect) => effect is not ChangeSettings change ? Turn.Stay(state)
            : keeper.Change(change.Settings) is { } problem ? Turn.Stay(state with { Status = $"It holds until you leave, but was not kept: {problem}" })
            : new Turn<SettingsState>(state with { Status = "Kept." }, [new Move.Redraw()]),
    };
}
