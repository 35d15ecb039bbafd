namespace Progression.EndToEnd.Probe;

/// <summary>A clock on which a minute takes a second.</summary>
internal sealed class QuickClock : TimeProvider
{
    private const int Quicker = 60;

    public override long TimestampFrequency => System.TimestampFrequency / Quicker;

    public override long GetTimestamp() => System.GetTimestamp();

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) => new QuickTimer(System.CreateTimer(callback, state, Real(dueTime), Real(period)));

    private static TimeSpan Real(TimeSpan time) => time < TimeSpan.Zero ? time : time / Quicker;

    private sealed class QuickTimer(ITimer real) : ITimer
    {
        public bool Change(TimeSpan dueTime, TimeSpan period) => real.Change(Real(dueTime), Real(period));

        public void Dispose() => real.Dispose();

        public ValueTask DisposeAsync() => real.DisposeAsync();
    }
}
