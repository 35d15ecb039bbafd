namespace Progression.Core.Adherence;

/// <summary>
/// What was done of what was planned, over the weeks that are over. More than planned in one week does not make up for another: each week counts up to its plan.
/// </summary>
/// <param name="Planned">Planned in the weeks of which something is logged.</param>
/// <param name="Done">Logged in them, each week up to its plan; 0 to <paramref name="Planned"/>.</param>
/// <param name="Beyond">Logged over the plan, all weeks together.</param>
/// <param name="NotKnown">Planned in the weeks of which nothing is logged.</param>
public sealed record DoneShare(int Planned, int Done, int Beyond, int NotKnown)
{
    /// <summary>Nothing planned, nothing logged.</summary>
    public static DoneShare Nothing { get; } = new(0, 0, 0, 0);

    /// <summary>Share of the plan that was done in the weeks with a log, 0 to 100; null where nothing was planned in them.</summary>
    public double? Percent => Planned == 0 ? null : 100.0 * Done / Planned;

    /// <summary>The least share that was done of everything planned, 0 to 100: as if nothing was done in weeks without a log; null where nothing was planned.</summary>
    public double? PercentAtLeast => Planned + NotKnown == 0 ? null : 100.0 * Done / (Planned + NotKnown);

    /// <summary>Both together.</summary>
    public DoneShare Plus(DoneShare other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new(Planned + other.Planned, Done + other.Done, Beyond + other.Beyond, NotKnown + other.NotKnown);
    }

    /// <summary>The share of one week.</summary>
    /// <param name="planned">Planned in it.</param>
    /// <param name="done">Logged in it; null when nothing is logged.</param>
    public static DoneShare OfWeek(int planned, int? done) => done is int known
        ? new(planned, Math.Min(planned, known), Math.Max(0, known - planned), 0)
        : new(0, 0, 0, planned);
}
