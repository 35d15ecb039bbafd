namespace Progression.Core.Library;

/// <summary>Whether ramps lie inside the stated on-time or lengthen the cycle.</summary>
public enum RampPlacement
{
    /// <summary>The on-time includes the ramps.</summary>
    Inside,

    /// <summary>The ramps come on top of the on-time.</summary>
    Outside,
}

/// <summary>What a stated pulse width measures.</summary>
public enum WidthBasis
{
    /// <summary>One phase of the pulse.</summary>
    Phase,

    /// <summary>The whole pulse, both phases.</summary>
    Pulse,
}

/// <summary>The shape of the stimulating current.</summary>
public enum Waveform
{
    /// <summary>Two equal and opposite rectangular phases.</summary>
    Symmetric,

    /// <summary>A rectangular phase balanced by a longer, weaker one.</summary>
    Asymmetric,

    /// <summary>One rectangular phase.</summary>
    Monophasic,

    /// <summary>Bursts of a sine carrier.</summary>
    BurstSine,

    /// <summary>Bursts of a triangular carrier.</summary>
    BurstTriangle,
}
