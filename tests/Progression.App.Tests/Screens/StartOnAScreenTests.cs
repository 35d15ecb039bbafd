using Progression.App.Start;
using Progression.App.Tests.Shell;
using Progression.App.Tests.Start;
using Terminal.Gui.Input;

namespace Progression.App.Tests.Screens;

[Collection("terminal library")]
public sealed class StartOnAScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void The_list_is_drawn_and_the_cursor_follows(int width, int height)
    {
        using HeadlessScreen<StartState> screen = new(StartScreen.Definition, SampleStart.Demo, width, height);
        screen.Keys(Key.CursorDown, Key.CursorDown);
        Assert.Equal(new System.Drawing.Point(0, 4), screen.View.Cursor.Position);
        Assert.Contains("DUNLIN-04", screen.Text.Split('\n')[4], StringComparison.Ordinal);
        Assert.Equal(width >= 100, screen.Text.Contains("Assessed", StringComparison.Ordinal));
        screen.Keys(Key.Q);
        Assert.True(screen.Left);
    }
}
