namespace Progression.Core.Library;

/// <summary>How well a figure is founded; shown wherever the figure is.</summary>
public enum Standing
{
    /// <summary>Seen in the source that is named.</summary>
    Seen,

    /// <summary>Computed from figures seen in the source that is named.</summary>
    Derived,

    /// <summary>Attributed to the source from memory; to be verified before anyone relies on it.</summary>
    FromMemory,

    /// <summary>Usual in the trade; no source is claimed.</summary>
    CommonPractice,
}
