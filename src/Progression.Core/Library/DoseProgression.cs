namespace Progression.Core.Library;

/// <summary>How a dose grows while its exercise is given.</summary>
/// <param name="Method">What grows.</param>
/// <param name="Step">How much at a time, in repetitions, sets, seconds of hold or minutes; 0 when nothing grows by itself.</param>
/// <param name="EveryWeeks">Weeks between two steps, from 1.</param>
/// <param name="Ceiling">Most it grows to, in the same unit as the step.</param>
public sealed record DoseProgression(ProgressionMethod Method, double Step, int EveryWeeks, double Ceiling)
{
    /// <summary>Whether the load is judged from logged sets, and nothing grows with the weeks.</summary>
    public bool IsByLog => Method is ProgressionMethod.LoadWhenEarned or ProgressionMethod.Dapre or ProgressionMethod.Delorme;
}
