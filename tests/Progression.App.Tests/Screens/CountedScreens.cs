using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.App.Screens;
using Progression.App.Stores;

namespace Progression.App.Tests.Screens;

/// <summary>The whole workbook on a store, driven by keys and counted: the letters of a value that is typed are none of its keystrokes.</summary>
internal sealed class CountedScreens(OpenStore store)
{
    private readonly ScreenStack _screens = new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Open());

    /// <summary>Keys pressed so far.</summary>
    public int Keystrokes { get; private set; }

    public Frame Top => _screens.Top!;

    public string Text => _screens.Draw(new PictureSize(80, 24)).Fit(new PictureSize(80, 24)).Text;

    /// <summary>What the shell does a second or two after a change, and when the line drops.</summary>
    public void Keep() => _screens.Keep();

    public void Keys(params string[] keys)
    {
        foreach (string key in keys)
        {
            Keystrokes++;
            _screens.Press(key, key.Length == 1 ? key : null);
        }
    }

    /// <summary>Types values, each letter a key as a person types it, and Enter after each; only the Enters count.</summary>
    public void Lines(params string[] values)
    {
        foreach (string value in values)
        {
            Types(value);
            Keys("Enter");
        }
    }

    /// <summary>Types a value without handing it in.</summary>
    public void Types(string value)
    {
        foreach (char letter in value)
        {
            _screens.Press(letter == ' ' ? "Space" : $"{letter}", $"{letter}");
        }
    }

    /// <summary>From the list to the screening of a new case.</summary>
    public void MakeCase()
    {
        Keys("n");
        Lines("wren-01", "16 nov", "l", "wbat");
        Keys("Ctrl+S");
    }

    public TState State<TState>()
        where TState : class => Assert.IsType<Frame<TState>>(Top).State;
}
