namespace Progression.Core.Library;

/// <summary>What is known of the recovery of a measure before a person's own readings are looked at.</summary>
public sealed record RecoveryPrior
{
    /// <summary>The permanent id: "flexion-wide".</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in words.</summary>
    public required string Title { get; init; }

    /// <summary>The id of the measure it foretells.</summary>
    public required string Measure { get; init; }

    /// <summary>Whether forecasts start from it; of the others a clinic may take one into use.</summary>
    public required bool InUse { get; init; }

    /// <summary>How it stands to others of its measure, in a word: "wide"; null when there is nothing to say.</summary>
    public string? Variant { get; init; }

    /// <summary>The curve with its spread.</summary>
    public required RecoveryCurve Curve { get; init; }

    /// <summary>Standard error of measurement to reckon with, on the scale of the measure's error; null for the measure's own.</summary>
    public double? Error { get; init; }

    /// <summary>Weeks since the operation up to which the data behind it reach.</summary>
    public required double HorizonWeek { get; init; }

    /// <summary>Whether a clinic has put it into its own files.</summary>
    public bool IsClinic { get; init; }

    /// <summary>Where the levels come from.</summary>
    public required Source Source { get; init; }

    /// <summary>How well the spreads, the correlation and the misfit are founded.</summary>
    public required Standing SpreadStanding { get; init; }
}
