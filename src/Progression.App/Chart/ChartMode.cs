namespace Progression.App.Chart;

/// <summary>What the keys of the chart mean at the moment.</summary>
public enum ChartMode
{
    /// <summary>Looking at the chart.</summary>
    Plot,

    /// <summary>Reading the same as a table of numbers.</summary>
    Numbers,

    /// <summary>Reading what the chart rests on.</summary>
    Why,

    /// <summary>Reading the help page.</summary>
    Help,
}
