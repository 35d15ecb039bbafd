namespace Progression.Core.Measures;

/// <summary>What can be said of the difference between two readings.</summary>
public enum ChangeClass
{
    /// <summary>Better by at least the detectable change.</summary>
    Improved,

    /// <summary>Within what error alone can make. Never read as "unchanged".</summary>
    NoDetectableChange,

    /// <summary>Worse by at least the detectable change.</summary>
    Worse,
}
