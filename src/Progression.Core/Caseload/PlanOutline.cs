namespace Progression.Core.Caseload;

/// <summary>What a list keeps of a plan.</summary>
/// <param name="Revision">Its revision, from 1.</param>
/// <param name="Weeks">Its last post-op week.</param>
/// <param name="Stim">One letter for each week, as <see cref="Progression.Core.Library.Rung"/> begins: F, H, R, L; "-" for a week without stim.</param>
public sealed record PlanOutline(int Revision, int Weeks, string Stim)
{
    /// <summary>The revision that was signed last; null when none was.</summary>
    public int? SignedRevision { get; init; }

    /// <summary>Whether stim is planned in a post-op week or in one after it.</summary>
    public bool HasStimFrom(int week) => Stim.Length >= week && Stim.AsSpan(Math.Max(0, week - 1)).ContainsAnyExcept('-');
}
