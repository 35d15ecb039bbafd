using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.App.Settings;
using Progression.App.Tests.Actions;
using Progression.Records.Settings;

namespace Progression.App.Tests.Settings;

public sealed class SettingsScreenTests
{
    private static readonly SettingsState Start = new() { Settings = PersonalSettings.Usual, File = "/srv/somebody/settings.yaml" };

    [Fact]
    public void Enter_takes_the_next_choice_and_asks_to_keep_it()
    {
        Step<SettingsState> step = SettingsScreen.Definition.Press(Start, "Enter");
        Assert.Equal(ColourChoice.None, step.State.Settings.Colours);
        Assert.Equal(new ChangeSettings(step.State.Settings), Assert.Single(step.Effects));
    }

    [Fact]
    public void Choices_go_round_both_ways()
    {
        Assert.Equal(ColourChoice.Full, Press(Start, "Left").Settings.Colours);
        Assert.Equal(PersonalSettings.Usual, Press(Start, "Enter", "Enter", "Enter", "Enter").Settings);
        SettingsState blank = Press(Start, "Down", "Down", "Down", "Down");
        Assert.Equal([15, 5, 0], [Press(blank, "l").Settings.BlankAfter, Press(blank, "h").Settings.BlankAfter, Press(blank, "h", "h", "h", "h").Settings.BlankAfter]);
        Assert.Equal(480, Press(blank, "h", "h", "h", "h", "h").Settings.BlankAfter);
    }

    [Theory]
    [InlineData("Right", 10)]
    [InlineData("Left", 5)]
    public void A_time_written_by_hand_goes_on_to_the_nearest_of_ours(string key, int minutes)
    {
        SettingsState odd = (Start with { Settings = Start.Settings with { BlankAfter = 7 } }).To(4);
        Assert.Equal(minutes, Press(odd, key).Settings.BlankAfter);
    }

    [Fact]
    public void All_as_usual_is_one_key() => Assert.Equal(PersonalSettings.Usual, Press(Start, "Enter", "Down", "Enter", "x").Settings);

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void It_is_drawn(int width, int height)
    {
        Faces.Match(SettingsScreen.Definition.Draw(Start.To(4), new PictureSize(width, height)), $"settings-{width}x{height}");
        Faces.Match(SettingsScreen.Definition.Draw(Press(Start, "?"), new PictureSize(width, height)), $"settings-help-{width}x{height}");
    }

    [Fact]
    public void Its_keys_are_shown_and_told()
    {
        KeyTableRules.Hold(SettingsActions.Table);
        Assert.All([Start, Press(Start, "?")], state => KeyTableRules.HintsFit(SettingsActions.Table, state));
    }

    [Fact]
    public void Any_keys_in_any_order_leave_it_whole() => AnyKeys.Hold(SettingsScreen.Definition, Start);

    private static SettingsState Press(SettingsState state, params string[] keys) =>
        keys.Aggregate(state, (now, key) => SettingsScreen.Definition.Press(now, key, key.Length == 1 ? key : null).State);
}
