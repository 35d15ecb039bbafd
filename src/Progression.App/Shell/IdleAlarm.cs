namespace Progression.App.Shell;

/// <summary>Has the screen look at the time when a phase of waiting begins, and otherwise lets it rest.</summary>
internal sealed class IdleAlarm : IDisposable
{
    // The times can be set while nobody is warned; so seldom a look costs nothing.
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan Shortest = TimeSpan.FromMilliseconds(50);
    private readonly IdleWatch _watch;
    private readonly ITimer _timer;

    /// <summary>Starts it.</summary>
    /// <param name="clock">The clock of the watch.</param>
    /// <param name="watch">Tells when the next phase begins.</param>
    /// <param name="look">Called then, on any thread; also when nothing has changed.</param>
    public IdleAlarm(TimeProvider clock, IdleWatch watch, Action look)
    {
        _watch = watch;
        _timer = clock.CreateTimer(
            _ =>
            {
                look();
                Arm();
            },
            null,
            System.Threading.Timeout.InfiniteTimeSpan,
            System.Threading.Timeout.InfiniteTimeSpan);
        Arm();
    }

    /// <inheritdoc/>
    public void Dispose() => _timer.Dispose();

    private void Arm()
    {
        TimeSpan next = _watch.UntilNext is { } until && until < Longest ? until : Longest;
        try
        {
            _timer.Change(next < Shortest ? Shortest : next, System.Threading.Timeout.InfiniteTimeSpan);
        }
        catch (ObjectDisposedException)
        {
            // It was the last time: the session has ended meanwhile.
        }
    }
}
