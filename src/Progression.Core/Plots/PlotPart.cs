using System.Collections.Immutable;

namespace Progression.Core.Plots;

/// <summary>Something that is drawn in a plot.</summary>
public abstract record PlotPart
{
    private PlotPart()
    {
    }

    /// <summary>What the legend calls it; null where it is not in the legend.</summary>
    public string? Legend { get; init; }

    /// <summary>A range over a stretch of the axis.</summary>
    /// <param name="Points">Left to right.</param>
    /// <param name="IsDark">Whether it is the darker of the two greys.</param>
    public sealed record Range(ImmutableArray<PlotRange> Points, bool IsDark) : PlotPart;

    /// <summary>A line.</summary>
    /// <param name="Points">Left to right.</param>
    /// <param name="Stroke">How it is drawn.</param>
    public sealed record Line(ImmutableArray<PlotPoint> Points, PlotStroke Stroke) : PlotPart;

    /// <summary>Single values, with or without an error.</summary>
    /// <param name="Points">The values.</param>
    /// <param name="Mark">The form of each.</param>
    public sealed record Marks(ImmutableArray<PlotMark> Points, PlotForm Mark) : PlotPart;

    /// <summary>Bars from zero up.</summary>
    /// <param name="Bars">The bars; X is the middle of each.</param>
    /// <param name="Width">Their width on the axis.</param>
    /// <param name="Filling">How they are filled.</param>
    public sealed record Columns(ImmutableArray<PlotPoint> Bars, double Width, PlotFilling Filling) : PlotPart;
}

/// <summary>A point.</summary>
/// <param name="X">Across.</param>
/// <param name="Y">Up.</param>
public readonly record struct PlotPoint(double X, double Y);

/// <summary>A range at a place.</summary>
/// <param name="X">Across.</param>
/// <param name="Low">Its lower end.</param>
/// <param name="High">Its upper end.</param>
public readonly record struct PlotRange(double X, double Low, double High);

/// <summary>A single value.</summary>
/// <param name="X">Across.</param>
/// <param name="Y">Up.</param>
public sealed record PlotMark(double X, double Y)
{
    /// <summary>Lower end of its error bar; null for none.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end; null for none.</summary>
    public double? High { get; init; }

    /// <summary>What stands beside it; null for nothing.</summary>
    public string? Label { get; init; }

    /// <summary>Whether that stands above it, instead of under it.</summary>
    public bool IsLabelAbove { get; init; }
}
