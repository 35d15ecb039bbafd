namespace Progression.Core.Findings;

/// <summary>How much a finding weighs, from least to most.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>To be looked at.</summary>
    Warning,

    /// <summary>Goes against the heart of the plan.</summary>
    Severe,

    /// <summary>A safety stop: nothing goes on until a clinician has settled it.</summary>
    Stop,
}
