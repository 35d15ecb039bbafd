namespace Progression.Core.Entry;

/// <summary>One way of writing a unit, and how much of the quantity's own unit it is.</summary>
/// <param name="Word">The word as typed, compared without regard to case; empty where a bare number is accepted.</param>
/// <param name="Factor">The amount in the quantity's own unit of one such unit.</param>
/// <param name="IsShown">Whether messages name it; other spellings are accepted silently.</param>
public sealed record UnitWord(string Word, decimal Factor = 1, bool IsShown = false);
