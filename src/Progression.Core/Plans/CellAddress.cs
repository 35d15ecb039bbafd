namespace Progression.Core.Plans;

/// <summary>A cell of the grid.</summary>
/// <param name="Lane">The id of its lane.</param>
/// <param name="Week">Its post-op week, from 1.</param>
public readonly record struct CellAddress(string Lane, int Week)
{
    /// <summary>"stim, week 3".</summary>
    public override string ToString() => $"{Lane}, week {Week}";
}
