using Progression.App.Actions;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Progression.App.Shell;

/// <summary>Runs one screen on the real terminal and gives the terminal back as it was.</summary>
public static class TerminalSession
{
    // One turn of the library's loop per frame of a usual display; its default of 25 makes keys feel slow.
    private const ushort TurnsPerSecond = 60;

    /// <summary>Shows a screen until it is left or the session ends.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="start">The state it begins with.</param>
    /// <param name="perform">Does an effect, and gives the state that tells what came of it.</param>
    /// <param name="keep">Writes a state's unsaved work to a draft when the session ends from outside; any thread.</param>
    /// <returns>The last state, and the exit code: 0 unless a signal ended the session.</returns>
    public static (TState State, int ExitCode) Run<TState>(
        ScreenDefinition<TState> screen, TState start, Func<TState, ScreenEffect, TState> perform, Action<TState> keep)
        where TState : class
    {
        TerminalLook look = TerminalLook.From(Environment.GetEnvironmentVariable);
        Application.MaximumIterationsPerSecond = TurnsPerSecond;
        Driver.Force16Colors = look.Colours != TerminalColours.Full;
        using IApplication application = Application.Create();
        application.Init(DriverRegistry.Names.ANSI);
        using ScreenView<TState> view = new(screen, start, look, perform);
        Prepare(application, view);
        LastWords words = LastWords.Watch(application, () => keep(view.State));
        try
        {
            application.Run(view);
            if (words.ExitCode == 0)
            {
                application.Driver?.WriteRaw(TerminalReset.Blank);
            }
        }
        finally
        {
            words.Unwatch();
        }
        return (view.State, words.ExitCode);
    }

    /// <summary>Puts the guards around a view; the tests of the screens use the same ones.</summary>
    internal static void Prepare<TState>(IApplication application, ScreenView<TState> view)
        where TState : class
    {
        application.Mouse.IsMouseDisabled = true;
        application.Driver!.WriteRaw(TerminalReset.MouseOff);
        application.Paste += (_, paste) =>
        {
            view.Paste(paste.Text);
            paste.Handled = true;
        };
        ChangedCells.Filter(application, view);
        QuietCursor.Keep(application);
    }
}
