namespace Progression.App.Shell;

/// <summary>What becomes of a session that nobody types into.</summary>
public enum IdlePhase
{
    /// <summary>Somebody types, or did a moment ago.</summary>
    Open,

    /// <summary>The screen is about to be blanked; any key keeps it open.</summary>
    Warned,

    /// <summary>The screen is blank; a key brings it back.</summary>
    Blank,

    /// <summary>The session ends.</summary>
    Over,
}

/// <summary>
/// Tells how long nobody has typed. A screen that was left shows a patient's plan to whoever passes, so it is blanked after a while and the session ended
/// after a longer one; both times are the person's to set, and a warning comes a minute before.
/// </summary>
/// <param name="clock">The clock; only its running time is read.</param>
/// <param name="times">How long until the screen is blanked, and until the session ends; zero for never. Asked anew each time, as they can be set meanwhile.</param>
public sealed class IdleWatch(TimeProvider clock, Func<(TimeSpan Blank, TimeSpan End)> times)
{
    /// <summary>How long before the screen is blanked the person is warned.</summary>
    public static readonly TimeSpan Warning = TimeSpan.FromMinutes(1);

    private long _last = clock.GetTimestamp();

    /// <summary>The phase now.</summary>
    public IdlePhase Phase
    {
        get
        {
            TimeSpan idle = clock.GetElapsedTime(_last);
            return Ends().LastOrDefault(end => idle >= end.After).Phase;
        }
    }

    /// <summary>How long until the next phase begins; null when none comes.</summary>
    public TimeSpan? UntilNext
    {
        get
        {
            TimeSpan idle = clock.GetElapsedTime(_last);
            return Ends().Where(end => end.After > idle).Select(end => (TimeSpan?)(end.After - idle)).Min();
        }
    }

    /// <summary>Somebody typed; gives the phase that it ended.</summary>
    public IdlePhase Touch()
    {
        IdlePhase ended = Phase;
        _last = clock.GetTimestamp();
        return ended;
    }

    /// <summary>When each phase after the first begins, in this order. With one minute until it is blanked, half of it is warned of.</summary>
    private IEnumerable<(TimeSpan After, IdlePhase Phase)> Ends()
    {
        (TimeSpan blank, TimeSpan end) = times();
        if (blank > TimeSpan.Zero)
        {
            yield return (blank > Warning ? blank - Warning : blank / 2, IdlePhase.Warned);
            yield return (blank, IdlePhase.Blank);
        }

        if (end > TimeSpan.Zero)
        {
            yield return (end, IdlePhase.Over);
        }
    }
}
