using Progression.App.Actions;

namespace Progression.App.Compare;

/// <summary>Show the chart of a measure.</summary>
/// <param name="Measure">The id of the measure.</param>
public sealed record ShowChart(string Measure) : ScreenEffect;
