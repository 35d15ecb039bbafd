using Progression.Core.Library;

namespace Progression.Core.Doses;

/// <summary>What a published rule of load progression says of the next load. It suggests; the therapist chooses within it, or not.</summary>
/// <param name="Range">The loads it leaves open; null when what is missing could change the answer.</param>
/// <param name="Why">The reason; for a null range, what is missing.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record NextLoad(LoadRange? Range, string Why, Source Source);
