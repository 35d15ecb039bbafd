using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Progression.App.Shell;

/// <summary>
/// Turns the library's loop when there is something to do and lets it rest otherwise. The library alone turns it a fixed number
/// of times a second, which is too seldom for a key and too often for a session at rest.
/// </summary>
internal sealed class WokenLoop : IDisposable
{
    /// <summary>How long nothing may happen before the loop rests. A lone Esc is held back for 50 ms, in case it begins a sequence.</summary>
    private static readonly TimeSpan Awake = TimeSpan.FromMilliseconds(200);

    /// <summary>The library asks the terminal a few questions one after another, and waits a second for one that is not answered.</summary>
    private static readonly TimeSpan Start = TimeSpan.FromMilliseconds(2500);
    private static readonly TimeSpan Doze = TimeSpan.FromMilliseconds(10);
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(1);

    // What was drawn and where the cursor went settles within two turns; these come at once.
    private const int SettlingTurns = 2;

    private readonly AutoResetEvent _woken = new(false);
    private readonly PosixSignalRegistration? _resized;
    private ITimedEvents? _timers;
    private readonly long _started = Stopwatch.GetTimestamp();
    private long _lastWoken;
    private int _settling = SettlingTurns;

    private WokenLoop() =>
        _resized = OperatingSystem.IsWindows() ? null : PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => Wake());

    /// <summary>Takes over keyboard and loop of a library that is not initialised yet.</summary>
    /// <exception cref="MissingFieldException">The library is another version and has no place for it.</exception>
    public static WokenLoop TakeOver(IApplication application)
    {
        WokenLoop loop = new();
        ComponentFactory(application) = new WokenDriver(new WokenInput(loop.Wake), new FrameOutput());
        Application.MaximumIterationsPerSecond = ushort.MaxValue;
        application.Iteration += (_, _) => loop.Pause();
        application.TimedEvents!.Added += (_, _) => loop.Wake();
        loop._timers = application.TimedEvents;
        return loop;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _resized?.Dispose();
        _woken.Dispose();
    }

    // Only the library's own code can hand it another keyboard, by this field; its list of drivers is not asked.
    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "_componentFactory")]
    private static extern ref IComponentFactory? ComponentFactory([UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")] object application);

    private void Wake() => _woken.Set();

    private void Pause()
    {
        if (_settling > 0)
        {
            _settling--;
            return;
        }
        if (_woken.WaitOne(Patience()))
        {
            _lastWoken = Stopwatch.GetTimestamp();
            _settling = SettlingTurns;
        }
    }

    private TimeSpan Patience()
    {
        bool awake = Stopwatch.GetElapsedTime(_lastWoken) < Awake || Stopwatch.GetElapsedTime(_started) < Start;
        TimeSpan patience = awake ? Doze : Rest;
        return _timers is TimedEvents timers && timers.CheckTimers(out int untilNext) && untilNext < patience.TotalMilliseconds
            ? TimeSpan.FromMilliseconds(untilNext)
            : patience;
    }
}
