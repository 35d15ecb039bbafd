namespace Progression.Core.Caseload;

/// <summary>What a list keeps of one assessment: the values that due dates, bands and red flags read. Null means not measured.</summary>
/// <param name="Day">Days since the operation.</param>
public sealed record VisitFacts(int Day)
{
    /// <summary>Active knee flexion, degrees.</summary>
    public double? FlexionActive { get; init; }

    /// <summary>Passive knee flexion, degrees.</summary>
    public double? FlexionPassive { get; init; }

    /// <summary>Active extension deficit, degrees, flexion-positive.</summary>
    public double? ExtensionActive { get; init; }

    /// <summary>Passive extension deficit, degrees, flexion-positive.</summary>
    public double? ExtensionPassive { get; init; }

    /// <summary>Straight-leg raises in a row.</summary>
    public double? StraightLegRaises { get; init; }

    /// <summary>Strength in percent of the same leg before the operation.</summary>
    public double? PreOpShare { get; init; }

    /// <summary>Operated to other leg, percent; null where the other leg is no yardstick.</summary>
    public double? Index { get; init; }

    /// <summary>The answers to the signs of <see cref="CaseFacts.Signs"/>, one letter each: y, n, u (asked, not known), - (not asked).</summary>
    public string Answers { get; init; } = "";

    /// <summary>Extension lag: active minus passive deficit, degrees; null when one of them was not measured.</summary>
    public double? Lag => ExtensionActive is double active && ExtensionPassive is double passive ? Math.Round(active - passive, 6) : null;

    /// <summary>Active flexion, or passive where active was not measured.</summary>
    public double? Flexion => FlexionActive ?? FlexionPassive;
}
