namespace Progression.Core.Library;

/// <summary>What the knee should do by the end of a post-op week.</summary>
/// <param name="Id">The permanent id.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Measure">The measure it bounds, or null for one that is seen, not measured.</param>
/// <param name="Week">Weeks since the operation at which it is due: 2 is the end of post-op week 2; halves are allowed.</param>
/// <param name="Target">The value to reach, in the measure's unit; null when nothing is measured. Which direction is better is the measure's.</param>
/// <param name="Drives">Whether the draft's weekly targets pass through it; other milestones are shown in their week only.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Milestone(string Id, string Title, string? Measure, double Week, double? Target, bool Drives, Source Source);
