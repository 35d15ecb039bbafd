using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Tests.Actions;

/// <summary>Presses keys of a screen's table at random, the same ones every time.</summary>
internal static class AnyKeys
{
    private const int Seed = 20261125;
    private const int Presses = 500;

    /// <summary>Whatever is pressed in whatever order, the screen goes on and fills its window.</summary>
    public static void Hold<TState>(ScreenDefinition<TState> screen, TState start)
        where TState : class
    {
        Random random = new(Seed);
        string[] keys = [.. screen.Actions.All.SelectMany(action => action.Keys).Distinct().Order(StringComparer.Ordinal)];
        PictureSize[] sizes = [new(80, 24), new(131, 37), new(200, 50)];
        TState state = start;
        for (int press = 0; press < Presses; press++)
        {
            string key = keys[random.Next(keys.Length)];
            state = screen.Press(state, key, key.Length == 1 ? key : key == "Space" ? " " : null).State;
            PictureSize size = sizes[random.Next(sizes.Length)];
            Picture picture = screen.Draw(state, size);
            Assert.Equal(size.Height, picture.Rows.Length);
            Assert.All(picture.Rows.SkipLast(2), row => Assert.True(row.Width <= size.Width, $"{key}: {row.Text}"));
        }
    }
}
