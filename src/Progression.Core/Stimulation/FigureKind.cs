namespace Progression.Core.Stimulation;

/// <summary>What a figure is.</summary>
/// <param name="Key">The permanent name in JSON; it ends in the unit where there is one.</param>
/// <param name="Title">The name in words.</param>
/// <param name="Unit">The unit symbol; empty for a plain number.</param>
public sealed record FigureKind(string Key, string Title, string Unit);
