using System.Runtime.InteropServices;
using Progression.Records.Storage;

namespace Progression.App.Commands.Records;

/// <summary>
/// Lets a long work be broken off by Ctrl+C where it tells how far it is: there nothing is half done, and what was begun is taken away. A second Ctrl+C ends
/// the program at once.
/// </summary>
internal sealed class BreakOff : IProgress<WorkDone>, IDisposable
{
    private readonly IProgress<WorkDone> _told;
    private readonly PosixSignalRegistration[] _signals;
    private volatile bool _isAsked;

    /// <param name="told">Who hears how far it is.</param>
    internal BreakOff(IProgress<WorkDone> told)
    {
        _told = told;
        _signals = [.. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP }.Select(signal => PosixSignalRegistration.Create(signal, Ask))];
    }

    /// <inheritdoc/>
    public void Report(WorkDone value)
    {
        if (_isAsked)
        {
            throw new OperationCanceledException();
        }

        _told.Report(value);
    }

    public void Dispose() => Array.ForEach(_signals, signal => signal.Dispose());

    private void Ask(PosixSignalContext signal)
    {
        signal.Cancel = !_isAsked;
        _isAsked = true;
    }
}
