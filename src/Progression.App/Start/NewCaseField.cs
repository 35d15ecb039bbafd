namespace Progression.App.Start;

/// <summary>The lines of the form of a new case, from top to bottom.</summary>
public enum NewCaseField
{
    /// <summary>The code of the case.</summary>
    Code,

    /// <summary>The day of the operation.</summary>
    Operation,

    /// <summary>Which knee.</summary>
    Side,

    /// <summary>The load allowed on the leg.</summary>
    WeightBearing,

    /// <summary>What was done.</summary>
    Procedure,
}
