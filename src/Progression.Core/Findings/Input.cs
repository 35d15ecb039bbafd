namespace Progression.Core.Findings;

/// <summary>Something a rule looked at.</summary>
/// <param name="Name">What it is, with its date where it has one.</param>
/// <param name="Value">Its value with unit; "not measured", "not asked" or "not known" when missing, never zero.</param>
public sealed record Input(string Name, string Value);
