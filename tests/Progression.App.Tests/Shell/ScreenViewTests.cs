using System.Drawing;
using Progression.App.Shell;
using Progression.App.Tests.Actions;
using Terminal.Gui.Input;

namespace Progression.App.Tests.Shell;

// The library keeps process-wide settings, so its tests run one after the other.
[Collection("terminal library")]
public sealed class ScreenViewTests
{
    [Fact]
    public void Shows_the_picture_and_follows_the_keys()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp());
        Assert.StartsWith("─ dark", screen.Text, StringComparison.Ordinal);
        screen.Keys(Key.CursorUp);
        Assert.StartsWith("░ on", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Esc_does_not_end_the_screen()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp());
        screen.Keys(Key.Esc);
        Assert.False(screen.Left);
        Assert.Contains("Esc does nothing here", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_quick_esc_before_a_key_is_taken_as_both()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp());
        screen.Keys(Key.L.WithAlt);
        Assert.True(screen.State.On);
        Assert.Contains("Esc does nothing here", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Effects_are_performed_in_order_and_leaving_ends_the_screen()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp());
        screen.Keys(Key.Q);
        Assert.Equal([new Ring()], screen.Performed);
        Assert.True(screen.Left);
    }

    [Fact]
    public void Letters_and_spaces_are_typed_where_text_is_taken()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp());
        screen.Keys(Key.Enter, Key.L, Key.Space, Key.D.WithShift, new Key('7'));
        Assert.Equal("l D7", screen.State.Name);
    }

    [Fact]
    public void A_paste_with_control_characters_stays_text()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp(Naming: true));
        screen.Paste("q\rl");
        Assert.False(screen.Left);
        Assert.False(screen.State.On);
    }

    [Fact]
    public void The_cursor_rests_where_the_picture_says()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp());
        Assert.Equal(new Point(1, 0), screen.View.Cursor.Position);
    }

    [Fact]
    public void A_window_too_small_asks_for_room_and_shows_all_again_when_it_grows()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp(), 70, 20);
        Assert.Contains("70 columns and 20 lines", screen.Text, StringComparison.Ordinal);
        screen.Resize(80, 24);
        Assert.StartsWith("─ dark", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Seven_bit_terminals_get_seven_bit_letters()
    {
        using HeadlessScreen<Lamp> screen = new(Lamp.Screen, new Lamp(), look: new(TerminalColours.None, SevenBitOnly: true));
        Assert.StartsWith("- dark", screen.Text, StringComparison.Ordinal);
    }
}
