namespace Progression.Core.Statistics;

/// <summary>A time at which somebody's event happened or somebody was looked at for the last time.</summary>
/// <param name="Time">The time.</param>
/// <param name="AtRisk">Followed up to this time without the event; those whose following ends here are among them.</param>
/// <param name="Events">Events at this time.</param>
/// <param name="Censored">Last looks at this time without the event. By convention they come after the events.</param>
public sealed record KaplanMeierStep(double Time, int AtRisk, int Events, int Censored)
{
    /// <summary>Share without the event just after this time, 0 to 1.</summary>
    public required double Waiting { get; init; }

    /// <summary>Lower end of its interval; null where there is none: before the first event and where nobody is left without it.</summary>
    public required double? Low { get; init; }

    /// <summary>Upper end of its interval; null where there is none.</summary>
    public required double? High { get; init; }
}
