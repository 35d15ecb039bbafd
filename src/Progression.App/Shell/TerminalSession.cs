using Progression.App.Actions;
using Progression.Records.Settings;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Progression.App.Shell;

/// <summary>Runs a stack of screens on the real terminal and gives the terminal back as it was.</summary>
public static class TerminalSession
{
    // Less than the patience of a session that is ended from outside.
    private static readonly TimeSpan LastWork = TimeSpan.FromSeconds(1);

    /// <summary>Shows the screens until all are left or the session ends. Screens still open at the end are closed.</summary>
    /// <param name="screens">The screens.</param>
    /// <param name="settings">What the person has set, as it is now; null for the usual.</param>
    /// <param name="messages">Takes what is told after the screens are gone; null for nobody.</param>
    /// <param name="watch">Hears how far a long work is; null where none is.</param>
    /// <param name="clock">Measures how long nobody types; null for the system's.</param>
    /// <returns>The exit code: 0 unless a signal ended the session.</returns>
    public static int Run(ScreenStack screens, Func<PersonalSettings>? settings = null, TextWriter? messages = null, WorkWatch? watch = null, TimeProvider? clock = null)
    {
        ArgumentNullException.ThrowIfNull(screens);
        Func<PersonalSettings> now = settings ?? (() => PersonalSettings.Usual);
        (int exitCode, bool timedOut) = Shown(screens, now, watch ?? new WorkWatch(), clock ?? TimeProvider.System);
        if (timedOut)
        {
            // Only now: what is written while the screen stands goes with it.
            messages?.WriteLine($"The session was ended because nobody typed for {now().EndAfter} minutes. What was not saved is kept as a draft.");
        }

        return exitCode;
    }

    private static (int ExitCode, bool TimedOut) Shown(ScreenStack screens, Func<PersonalSettings> now, WorkWatch watch, TimeProvider clock)
    {
        TerminalLook Look() => TerminalLook.From(Environment.GetEnvironmentVariable, now());
        IdleWatch idle = new(clock, () => (TimeSpan.FromMinutes(now().BlankAfter), TimeSpan.FromMinutes(now().EndAfter)));
        Driver.Force16Colors = Look().Colours != TerminalColours.Full;
        using IApplication application = Application.Create();
        using WokenLoop loop = WokenLoop.TakeOver(application);
        application.Init(DriverRegistry.Names.ANSI);
        WorkingScreens working = new(screens, watch);
        using ScreenView view = new(working, Look, idle)
        {
            Redrawn = () =>
            {
                Driver.Force16Colors = Look().Colours != TerminalColours.Full;
                UseMouse(application, now().Mouse);
            },
        };
        Prepare(application, view, now().Mouse);
        working.WhenMoved(() => application.Invoke(view.LookAtWork));
        int exitCode;
        using (new SteadyKeeping(screens.Keep))
        using (new SteadyKeeping(() => LookAtOthers(screens, news => application.Invoke(() => view.Take(news)))))
        using (new IdleAlarm(clock, idle, () => application.Invoke(view.LookAtTime)))
        using (LastWords words = LastWords.Watch(application, screens.Keep))
        {
            try
            {
                application.Run(view);
            }
            catch
            {
                words.Speak();
                throw;
            }

            exitCode = words.ExitCode;
            working.Finish(LastWork);
        }

        if (exitCode == 0)
        {
            application.Driver?.WriteRaw(TerminalReset.Blank);
        }

        screens.Close();
        return (exitCode, view.HasTimedOut);
    }

    /// <summary>Puts the guards around a view; the tests of the screens use the same ones.</summary>
    internal static void Prepare(IApplication application, ScreenView view, bool mouse = false)
    {
        UseMouse(application, mouse);
        application.Paste += (_, paste) =>
        {
            view.Paste(paste.Text);
            paste.Handled = true;
        };
        application.Driver!.ClearedContents += (_, _) => view.Forget();
        ChangedCells.Filter(application, view);
    }

    private static void LookAtOthers(ScreenStack screens, Action<ScreenNews> tell)
    {
        if (screens.Look() is { } news)
        {
            tell(news);
        }
    }

    private static void UseMouse(IApplication application, bool mouse)
    {
        application.Mouse.IsMouseDisabled = !mouse;
        application.Driver!.WriteRaw(TerminalReset.MouseOff + (mouse ? TerminalReset.WheelOn : ""));
    }
}
