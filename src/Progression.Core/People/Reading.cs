namespace Progression.Core.People;

/// <summary>One measured value. A measure that was not taken has no reading; there is no reading of "zero for missing".</summary>
/// <param name="Measure">The id of the measure in the library, which also gives the unit.</param>
/// <param name="Value">The value in the measure's unit; the mean when several trials were taken.</param>
public sealed record Reading(string Measure, double Value)
{
    /// <summary>Trials behind the value; null when not stated.</summary>
    public int? Trials { get; init; }

    /// <summary>The device; null when not stated.</summary>
    public string? Device { get; init; }

    /// <summary>Position of the person; null when not stated.</summary>
    public string? Position { get; init; }
}
