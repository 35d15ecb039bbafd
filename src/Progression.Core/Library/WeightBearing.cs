namespace Progression.Core.Library;

/// <summary>How much load the surgeon allows on the leg, from least to most.</summary>
public enum WeightBearing
{
    /// <summary>None.</summary>
    None,

    /// <summary>Touch only.</summary>
    Touch,

    /// <summary>Partial.</summary>
    Partial,

    /// <summary>As tolerated.</summary>
    AsTolerated,

    /// <summary>Full.</summary>
    Full,
}
