namespace Progression.Core.Stimulation;

/// <summary>The greatest counts of a stim schedule that are accepted; the least is 1 for each. Bounds of plausible typing, not of treatment.</summary>
public static class StimCounts
{
    /// <summary>Contractions in a session.</summary>
    public const int MostContractions = 1000;

    /// <summary>Sessions a day.</summary>
    public const int MostSessionsPerDay = 24;

    /// <summary>Days a week.</summary>
    public const int MostDays = 7;

    /// <summary>Weeks of a course.</summary>
    public const int MostWeeks = 52;
}
