using Progression.App.Shell;
using Progression.App.Tests.Actions;
using Terminal.Gui.Input;

namespace Progression.App.Tests.Shell;

public sealed class BlankedScreenTests : IDisposable
{
    private readonly RunningClock _clock = new();
    private readonly HeadlessScreen<Lamp> _screen;

    public BlankedScreenTests() =>
        _screen = new(Lamp.Screen, new Lamp(), idle: new IdleWatch(_clock, () => (TimeSpan.FromMinutes(10), TimeSpan.FromMinutes(60))));

    [Fact]
    public void A_minute_before_the_screen_is_blanked_its_last_line_says_so_and_a_key_keeps_it()
    {
        string before = _screen.Text;
        _clock.Pass(541);
        Assert.Contains("any key keeps it open", _screen.LookAtTime().Text, StringComparison.Ordinal);
        Assert.Equal(before.Split('\n')[0], _screen.Text.Split('\n')[0]);
        _screen.Keys(Key.F12);
        Assert.DoesNotContain("any key keeps it open", _screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blank_screen_shows_nothing_of_the_work_and_the_key_that_brings_it_back_does_nothing_else()
    {
        string before = _screen.Text;
        Lamp state = _screen.State;
        _clock.Pass(600);
        string blank = _screen.LookAtTime().Text;
        Assert.StartsWith("Progression: blanked because nobody typed.", blank, StringComparison.Ordinal);
        Assert.DoesNotContain(before.Split('\n')[0].Trim(), blank, StringComparison.Ordinal);
        Assert.Equal(before, _screen.Keys(Key.Q).Text);
        Assert.Same(state, _screen.State);
        Assert.False(_screen.Left);
    }

    [Fact]
    public void A_paste_into_a_blank_screen_is_not_taken()
    {
        Lamp state = _screen.State;
        _clock.Pass(600);
        _screen.LookAtTime().Paste("30 deg");
        Assert.Same(state, _screen.State);
    }

    [Fact]
    public void A_session_nobody_types_into_ends()
    {
        _clock.Pass(3600);
        _screen.LookAtTime();
        Assert.True(_screen.Left);
        Assert.True(_screen.View.HasTimedOut);
    }

    public void Dispose() => _screen.Dispose();
}
