namespace Progression.Core.Plots;

/// <summary>How a line is drawn.</summary>
public enum PlotStroke
{
    /// <summary>Whole.</summary>
    Solid,

    /// <summary>Dashes.</summary>
    Dashed,

    /// <summary>Dots.</summary>
    Dotted,
}

/// <summary>The form of a single value.</summary>
public enum PlotForm
{
    /// <summary>A filled disc.</summary>
    Disc,

    /// <summary>An empty diamond.</summary>
    Diamond,

    /// <summary>An upright tick on a line.</summary>
    Tick,
}

/// <summary>How a bar is filled.</summary>
public enum PlotFilling
{
    /// <summary>Light grey.</summary>
    Grey,

    /// <summary>White with slanted lines.</summary>
    Hatched,

    /// <summary>Black.</summary>
    Black,
}
