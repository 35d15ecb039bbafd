using Progression.App.Actions;

namespace Progression.App.Tests.Actions;

public sealed class ActionTableTests
{
    [Fact]
    public void A_key_that_means_two_things_in_one_mode_is_refused_with_both_names()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(() => new ActionTable<Lamp>(_ => "lamp",
            [Lamp.Row("light", "lamp", ["x"], 1, lamp => lamp), Lamp.Row("dark", "lamp", ["x"], 2, lamp => lamp)]));
        Assert.Contains("x means light and dark", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_id_stands_once() => Assert.Throws<ArgumentException>(() => new ActionTable<Lamp>(_ => "lamp",
        [Lamp.Row("light", "lamp", ["x"], 1, lamp => lamp), Lamp.Row("light", "lamp", ["y"], 2, lamp => lamp)]));

    [Fact]
    public void A_key_may_mean_something_else_in_another_mode()
    {
        Assert.Equal("name", Lamp.Screen.Actions.For(new Lamp(), "Enter")?.Id);
        Assert.Equal("done", Lamp.Screen.Actions.For(new Lamp(Naming: true), "Enter")?.Id);
    }

    [Fact]
    public void Hints_are_at_most_six_that_can_be_done_now_with_help_first() =>
        Assert.Equal(["help", "light", "name", "leave", "six", "seven"], Lamp.Screen.Actions.Hints(new Lamp()).Select(action => action.Id));

    [Fact]
    public void The_hint_line_holds_whole_hints_only() => Assert.Equal("F1 help  l light", Lamp.Screen.Actions.HintLine(new Lamp(), 20));

    [Fact]
    public void The_help_page_lists_every_action_of_the_mode_with_all_its_keys()
    {
        IReadOnlyList<string> page = Lamp.Screen.Actions.HelpPage("lamp");
        Assert.Equal("Lamp", page[0]);
        Assert.Equal(10, page.Count);
        Assert.Equal(["Everywhere", "  :, Ctrl+P               find an action by its words, and do it"], page.TakeLast(2));
        Assert.Contains("  l, Up                   Does light.", page);
    }
}
