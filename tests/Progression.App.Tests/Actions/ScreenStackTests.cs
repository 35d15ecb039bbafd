using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Tests.Actions;

public sealed class ScreenStackTests
{
    private readonly List<string> _heard = [];
    private string? _trouble;

    [Fact]
    public void The_screen_on_top_takes_the_keys_and_is_drawn()
    {
        ScreenStack screens = new(Frame("below"), Frame("above"));
        screens.Press("l", "l");
        Assert.Equal("░ on", Text(screens));
        screens.Press("q", "q");
        Assert.Equal("─ dark", Text(screens));
    }

    [Fact]
    public void A_screen_that_leaves_is_closed_and_tells_the_one_below()
    {
        ScreenStack screens = new(Frame("below"), Frame("above"));
        Assert.True(screens.Press("q", "q"));
        Assert.Equal(["above does Ring", "above closed", "below does Told"], _heard);
    }

    [Fact]
    public void An_effect_may_open_another_screen_and_the_one_below_stays_as_it_was()
    {
        Frame<Lamp> opener = new(Lamp.Screen, new Lamp(On: true)) { Perform = (lamp, _) => Turn.Open(lamp, Frame("opened")) };
        ScreenStack screens = new(opener);
        Assert.IsType<Frame<Lamp>>(screens.Top);
        // The lamp asks for a ring, which opens a screen, and then leaves: what leaves is the screen that was opened.
        screens.Press("q", "q");
        Assert.Equal(["opened closed"], _heard);
        Assert.Equal("░ on", Text(screens));
    }

    [Fact]
    public void When_the_last_screen_is_left_nothing_takes_keys_or_is_drawn()
    {
        ScreenStack screens = new(Frame("only"));
        screens.Press("q", "q");
        Assert.Null(screens.Top);
        Assert.False(screens.Press("l", "l"));
        screens.Paste("text");
        Assert.Equal("", Text(screens));
    }

    [Fact]
    public void Work_is_kept_on_every_open_screen_and_closing_goes_from_the_top()
    {
        ScreenStack screens = new(Frame("below"), Frame("above"));
        screens.Keep();
        screens.Close();
        Assert.Equal(["above kept", "below kept", "above closed", "below closed"], _heard);
    }

    [Fact]
    public void Only_what_changed_since_is_kept_again()
    {
        ScreenStack screens = new(Frame("below"), Frame("above"));
        screens.Keep();
        screens.Keep();
        Assert.Equal(["above kept", "below kept"], _heard);
        screens.Press("l", "l");
        screens.Keep();
        Assert.Equal(["above kept", "below kept", "above kept"], _heard);
    }

    [Fact]
    public void What_could_not_be_kept_is_tried_again_and_told_once_at_the_next_key()
    {
        ScreenStack screens = new(Frame("only"));
        _trouble = "no room.";
        screens.Keep();
        screens.Keep();
        Assert.Equal(["only kept", "only kept"], _heard);
        screens.Press("l", "l");
        Assert.Contains("The draft could not be kept: no room.", screens.Draw(PictureSize.Smallest).Text, StringComparison.Ordinal);
        _trouble = null;
        screens.Keep();
        screens.Keep();
        Assert.Equal(3, _heard.Count);
    }

    [Fact]
    public void A_stack_without_a_screen_is_refused() => Assert.Throws<ArgumentException>(() => new ScreenStack());

    private Frame<Lamp> Frame(string name) => new(Lamp.Screen, new Lamp(Name: name))
    {
        Perform = (lamp, effect) =>
        {
            _heard.Add($"{name} does {effect.GetType().Name}");
            return Turn.Stay(lamp);
        },
        KeepWork = _ =>
        {
            _heard.Add($"{name} kept");
            return _trouble;
        },
        Parting = _ => new Told(),
        Closed = _ => _heard.Add($"{name} closed"),
    };

    private static string Text(ScreenStack screens) => screens.Draw(PictureSize.Smallest).Text.Split('\n')[0];

    private sealed record Told : ScreenEffect;
}
