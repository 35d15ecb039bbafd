namespace Progression.App.Shell;

/// <summary>
/// Keeps the work once a second off the screen's thread, so that what a kill loses is at most the last second or two. A turn that takes longer than a second
/// is not joined by a second one.
/// </summary>
internal sealed class SteadyKeeping : IDisposable
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(1);
    private readonly Action _keep;
    private readonly Timer _timer;
    private int _busy;

    /// <summary>Starts to keep.</summary>
    /// <param name="keep">Writes what changed to drafts; called on any thread.</param>
    public SteadyKeeping(Action keep)
    {
        _keep = keep;
        _timer = new Timer(_ => Keep(), null, Every, Every);
    }

    /// <inheritdoc/>
    public void Dispose() => _timer.Dispose();

    private void Keep()
    {
        if (Interlocked.Exchange(ref _busy, 1) != 0)
        {
            return;
        }

        try
        {
            _keep();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or OperationCanceledException)
        {
            // Tried again at the next turn; a screen that can tells its person.
        }
        finally
        {
            Volatile.Write(ref _busy, 0);
        }
    }
}
