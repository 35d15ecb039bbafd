using Progression.Core.Library;

namespace Progression.Core.Plans;

/// <summary>A row of the grid.</summary>
/// <param name="Id">Its permanent id, also what a person types to name it: "stim", "flexion", "quads-strength".</param>
/// <param name="Band">Its band.</param>
/// <param name="Title">Its name.</param>
/// <param name="Short">Its name in a narrow column, at most fourteen characters.</param>
public sealed record Lane(string Id, Band Band, string Title, string Short)
{
    /// <summary>For a milestone lane: the measure it aims at; null for milestones that are seen, not measured.</summary>
    public string? Measure { get; init; }

    /// <summary>For an active lane: the purpose it serves.</summary>
    public ActiveSlot? Slot { get; init; }
}
