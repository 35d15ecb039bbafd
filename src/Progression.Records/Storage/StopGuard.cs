using System.Runtime.InteropServices;

namespace Progression.Records.Storage;

/// <summary>
/// Keeps Ctrl+Z from stopping the process while it holds the lock, which would keep everybody else waiting until it goes on; the stop comes when the lock has
/// been released. What cannot be held back (SIGSTOP) makes the others name this process.
/// </summary>
internal sealed partial class StopGuard : IDisposable
{
    private const int TerminalStop = 20;
    private readonly PosixSignalRegistration? _held;
    private volatile bool _isAsked;

    public StopGuard()
    {
        if (!OperatingSystem.IsWindows())
        {
            _held = PosixSignalRegistration.Create(PosixSignal.SIGTSTP, signal => signal.Cancel = _isAsked = true);
        }
    }

    public void Dispose()
    {
        _held?.Dispose();
        if (_isAsked)
        {
            _ = Kill(Environment.ProcessId, TerminalStop);
        }
    }

    [LibraryImport("libc", EntryPoint = "kill")]
    private static partial int Kill(int process, int signal);
}
