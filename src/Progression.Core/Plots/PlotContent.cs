using System.Collections.Immutable;

namespace Progression.Core.Plots;

/// <summary>A plot as numbers and words, before it has a look. It reads without colour: what belongs apart differs in form, line or filling.</summary>
public sealed record PlotContent
{
    /// <summary>What it is of; never a person's name.</summary>
    public required string Title { get; init; }

    /// <summary>Everything it shows, in words, for whoever does not see it.</summary>
    public required string Words { get; init; }

    /// <summary>From left to right.</summary>
    public required PlotAxis Across { get; init; }

    /// <summary>From bottom to top.</summary>
    public required PlotAxis Up { get; init; }

    /// <summary>What is drawn, the undermost first.</summary>
    public required ImmutableArray<PlotPart> Parts { get; init; }

    /// <summary>A line under the plot; null for none.</summary>
    public string? Note { get; init; }
}

/// <summary>An axis.</summary>
/// <param name="Label">What it tells, with the unit.</param>
/// <param name="From">Its lower end.</param>
/// <param name="To">Its upper end, over the lower one.</param>
/// <param name="Step">From one labelled value to the next.</param>
public sealed record PlotAxis(string Label, double From, double To, double Step)
{
    /// <summary>The values that are labelled: the multiples of the step.</summary>
    public ImmutableArray<double> Ticks
    {
        get
        {
            int first = (int)Math.Ceiling((From / Step) - 1e-9);
            int last = (int)Math.Floor((To / Step) + 1e-9);
            return [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(at => Math.Round(at * Step, 9))];
        }
    }
}
