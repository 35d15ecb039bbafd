using Progression.App.Actions;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Progression.App.Shell;

/// <summary>Runs a stack of screens on the real terminal and gives the terminal back as it was.</summary>
public static class TerminalSession
{
    /// <summary>Shows the screens until all are left or the session ends. Screens still open at the end are closed.</summary>
    /// <param name="screens">The screens.</param>
    /// <returns>The exit code: 0 unless a signal ended the session.</returns>
    public static int Run(ScreenStack screens)
    {
        ArgumentNullException.ThrowIfNull(screens);
        TerminalLook look = TerminalLook.From(Environment.GetEnvironmentVariable);
        Driver.Force16Colors = look.Colours != TerminalColours.Full;
        using IApplication application = Application.Create();
        using WokenLoop loop = WokenLoop.TakeOver(application);
        application.Init(DriverRegistry.Names.ANSI);
        using ScreenView view = new(screens, look);
        Prepare(application, view);
        int exitCode;
        using (new SteadyKeeping(screens.Keep))
        using (LastWords words = LastWords.Watch(application, screens.Keep))
        {
            application.Run(view);
            exitCode = words.ExitCode;
        }

        if (exitCode == 0)
        {
            application.Driver?.WriteRaw(TerminalReset.Blank);
        }

        screens.Close();
        return exitCode;
    }

    /// <summary>Puts the guards around a view; the tests of the screens use the same ones.</summary>
    internal static void Prepare(IApplication application, ScreenView view)
    {
        application.Mouse.IsMouseDisabled = true;
        application.Driver!.WriteRaw(TerminalReset.MouseOff);
        application.Paste += (_, paste) =>
        {
            view.Paste(paste.Text);
            paste.Handled = true;
        };
        ChangedCells.Filter(application, view);
    }
}
