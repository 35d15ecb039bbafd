using System.Runtime.InteropServices;
using Progression.Core.Entry;
using Terminal.Gui.App;

namespace Progression.App.Shell;

/// <summary>
/// What happens when the session is ended from outside: a signal, a dropped line, an unhandled error. Unsaved work is kept
/// first; then the program ends in order if it can, at once when the line is gone, and shortly after in any case, because on a
/// line that is gone the library's input thread never ends.
/// </summary>
internal sealed class LastWords : IDisposable
{
    // Signal registrations undo themselves when collected, so something static has to hold them.
    private static readonly List<PosixSignalRegistration> Held = [];
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1.5);
    private static readonly TimeSpan StandStillPatience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan LineCheck = TimeSpan.FromSeconds(5);
    private readonly IApplication _application;
    private readonly Action _keep;
    private readonly int _screenThread = Environment.CurrentManagedThreadId;
    private readonly ManualResetEventSlim _standsStill = new();
    private Timer? _lineWatch;
    private int _exitCode;
    private int _spoken;

    private LastWords(IApplication application, Action keep) => (_application, _keep) = (application, keep);

    /// <summary>The exit code a signal asked for; 0 while none came.</summary>
    public int ExitCode => Volatile.Read(ref _exitCode);

    /// <summary>Starts to watch for the end; called on the thread that draws.</summary>
    /// <param name="application">The running library.</param>
    /// <param name="keep">Writes unsaved work to a draft; may be called on any thread.</param>
    public static LastWords Watch(IApplication application, Action keep)
    {
        LastWords words = new(application, keep);
        // By convention a program ended by signal n leaves with 128 + n: 1 hang-up, 2 interrupt, 3 quit, 15 terminate.
        words.On(PosixSignal.SIGHUP, 129);
        words.On(PosixSignal.SIGINT, 130);
        words.On(PosixSignal.SIGQUIT, 131);
        words.On(PosixSignal.SIGTERM, 143);
        AppDomain.CurrentDomain.UnhandledException += words.OnError;
        // Whoever started the program may have it ignore hang-ups; then only a look at the line tells that it is gone.
        words._lineWatch = LineIsThere() ? new Timer(_ => words.LookAtLine(), null, LineCheck, LineCheck) : null;
        return words;
    }

    /// <summary>Stops to watch.</summary>
    public void Dispose()
    {
        AppDomain.CurrentDomain.UnhandledException -= OnError;
        _lineWatch?.Dispose();
        _standsStill.Dispose();
        Held.ForEach(registration => registration.Dispose());
        Held.Clear();
    }

    private void On(PosixSignal signal, int exitCode) => Held.Add(PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = true;
        Volatile.Write(ref _exitCode, exitCode);
        _ = Task.Delay(Patience).ContinueWith(_ => Environment.Exit(exitCode), TaskScheduler.Default);
        Speak();
        LookAtLine();
        _application.Invoke(() => _application.RequestStop());
    }));

    private void LookAtLine()
    {
        if (_lineWatch is not null && !LineIsThere())
        {
            Speak();
            Environment.Exit(ExitCode == 0 ? 129 : ExitCode);
        }
    }

    private static bool LineIsThere()
    {
        try
        {
            File.OpenHandle("/dev/tty", FileMode.Open, FileAccess.Read, FileShare.ReadWrite).Dispose();
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private void OnError(object sender, UnhandledExceptionEventArgs error)
    {
        Speak();
        StopDrawing();
        Console.Out.Write(TerminalReset.Everything);
        Console.Out.Flush();
        Console.Error.WriteLine("Progression stopped because of an error of its own. Unsaved work was kept as a draft.");
        Console.Error.WriteLine(SafeText.OneLine((error.ExceptionObject as Exception)?.Message));
        Environment.Exit(70);
    }

    /// <summary>Has the drawing thread stand still: a picture sent after the reset would hide the cursor again.</summary>
    private void StopDrawing()
    {
        if (Environment.CurrentManagedThreadId != _screenThread)
        {
            _application.Invoke(() =>
            {
                _standsStill.Set();
                Thread.Sleep(System.Threading.Timeout.Infinite);
            });
            _standsStill.Wait(StandStillPatience);
        }
    }

    /// <summary>Keeps the work once; a failure here must not keep the program from ending.</summary>
    public void Speak()
    {
        if (Interlocked.Exchange(ref _spoken, 1) != 0)
        {
            return;
        }
        try
        {
            _keep();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or InvalidOperationException)
        {
            Console.Error.WriteLine("The draft could not be kept: " + SafeText.OneLine(error.Message));
        }
    }
}
