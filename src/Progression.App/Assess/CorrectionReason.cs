namespace Progression.App.Assess;

/// <summary>Who puts values of an earlier visit right, and why.</summary>
/// <param name="By">A name, role or initials.</param>
/// <param name="Why">The reason.</param>
public sealed record CorrectionReason(string By, string Why);
