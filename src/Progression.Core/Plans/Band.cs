namespace Progression.Core.Plans;

/// <summary>The bands of the grid, top to bottom.</summary>
public enum Band
{
    /// <summary>What the knee should do by when.</summary>
    Milestones,

    /// <summary>Electrical stimulation of the quadriceps.</summary>
    Stim,

    /// <summary>Exercises.</summary>
    Active,

    /// <summary>Computed: pairing, load, time. Never stored, never edited.</summary>
    Checks,
}
