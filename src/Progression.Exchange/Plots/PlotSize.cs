namespace Progression.Exchange.Plots;

/// <summary>How large a plot is drawn.</summary>
/// <param name="Width">Width in the unit in which letters are 12 high.</param>
/// <param name="Height">Height in the same unit.</param>
/// <param name="PixelsPerUnit">Pixels of a PNG for one unit; 2 is sharp on paper.</param>
public sealed record PlotSize(int Width, int Height, int PixelsPerUnit)
{
    /// <summary>800 x 500 units, 1600 x 1000 pixels.</summary>
    public static PlotSize Usual { get; } = new(800, 500, 2);
}
