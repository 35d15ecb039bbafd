using Progression.App.Actions;

namespace Progression.App.Tests.Actions;

public sealed class ScreenDefinitionTests
{
    [Fact]
    public void A_key_does_its_action() => Assert.True(Lamp.Screen.Press(new Lamp(), "l").State.On);

    [Fact]
    public void A_refused_key_says_why() =>
        Assert.Equal("The lamp is dark already.", Lamp.Screen.Press(new Lamp(), "d").State.Status);

    [Fact]
    public void An_unknown_key_says_where_the_keys_are_listed() =>
        Assert.Equal("z does nothing here; F1 lists the keys.", Lamp.Screen.Press(new Lamp(), "z", "z").State.Status);

    [Fact]
    public void A_letter_is_text_where_text_is_taken() =>
        Assert.Equal("l", Lamp.Screen.Press(new Lamp(Naming: true), "l", "l").State.Name);

    [Fact]
    public void A_paste_is_text_and_never_keys()
    {
        Assert.Equal("lamp", Lamp.Screen.Paste(new Lamp(Naming: true), "lamp").Name);
        Lamp outside = Lamp.Screen.Paste(new Lamp(), "l");
        Assert.False(outside.On);
        Assert.Equal("Pasted text was ignored: nothing here takes text.", outside.Status);
    }

    [Fact]
    public void A_step_carries_its_effects_in_order()
    {
        Step<Lamp> step = Lamp.Screen.Press(new Lamp(), "q");
        Assert.Equal([typeof(Repaint), typeof(Ring), typeof(LeaveScreen)], step.Effects.Select(effect => effect.GetType()));
    }
}
