using Progression.App.Shell;

namespace Progression.App.Tests.Shell;

public sealed class IdleWatchTests
{
    private readonly RunningClock _clock = new();
    private (TimeSpan Blank, TimeSpan End) _times = (TimeSpan.FromMinutes(10), TimeSpan.FromMinutes(60));

    [Theory]
    [InlineData(0, IdlePhase.Open)]
    [InlineData(539, IdlePhase.Open)]
    [InlineData(540, IdlePhase.Warned)]
    [InlineData(599, IdlePhase.Warned)]
    [InlineData(600, IdlePhase.Blank)]
    [InlineData(3599, IdlePhase.Blank)]
    [InlineData(3600, IdlePhase.Over)]
    public void A_screen_that_was_left_is_warned_of_blanked_and_ended(int seconds, IdlePhase phase)
    {
        IdleWatch watch = Watch();
        _clock.Pass(seconds);
        Assert.Equal(phase, watch.Phase);
    }

    [Fact]
    public void A_key_begins_the_time_anew_and_tells_what_it_ended()
    {
        IdleWatch watch = Watch();
        _clock.Pass(601);
        Assert.Equal(IdlePhase.Blank, watch.Touch());
        Assert.Equal(IdlePhase.Open, watch.Phase);
        Assert.Equal(TimeSpan.FromSeconds(540), watch.UntilNext);
    }

    [Fact]
    public void The_next_phase_is_waited_for_exactly()
    {
        IdleWatch watch = Watch();
        _clock.Pass(545);
        Assert.Equal(TimeSpan.FromSeconds(55), watch.UntilNext);
        _clock.Pass(55);
        Assert.Equal(TimeSpan.FromMinutes(50), watch.UntilNext);
        _clock.Pass(3000);
        Assert.Null(watch.UntilNext);
    }

    [Fact]
    public void Never_is_never()
    {
        _times = default;
        IdleWatch watch = Watch();
        _clock.Pass(1_000_000);
        Assert.Equal((IdlePhase.Open, null), (watch.Phase, watch.UntilNext));
    }

    [Fact]
    public void Times_that_are_set_meanwhile_hold_at_once()
    {
        IdleWatch watch = Watch();
        _clock.Pass(120);
        _times = (TimeSpan.FromMinutes(1), TimeSpan.Zero);
        Assert.Equal(IdlePhase.Blank, watch.Phase);
    }

    [Fact]
    public void A_session_may_end_before_it_is_blanked()
    {
        _times = (TimeSpan.FromMinutes(10), TimeSpan.FromMinutes(5));
        IdleWatch watch = Watch();
        _clock.Pass(300);
        Assert.Equal(IdlePhase.Over, watch.Phase);
    }

    private IdleWatch Watch() => new(_clock, () => _times);
}

/// <summary>A clock whose running time is passed by hand.</summary>
internal sealed class RunningClock : TimeProvider
{
    private long _now;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => _now;

    public void Pass(int seconds) => _now += seconds * TimeSpan.TicksPerSecond;
}
