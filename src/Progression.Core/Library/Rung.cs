namespace Progression.Core.Library;

/// <summary>A rung of the stim ladder, in the order in which stim is weaned. A higher number is less stim.</summary>
public enum Rung
{
    /// <summary>The person gets used to a strong contraction.</summary>
    Familiarise,

    /// <summary>The regimen as written.</summary>
    HighVolume,

    /// <summary>Fewer sessions, same intensity.</summary>
    Reduced,

    /// <summary>A few sessions a week, same intensity.</summary>
    LowVolume,

    /// <summary>No stim; strengthening goes on.</summary>
    Stopped,
}
