using System.Collections.Immutable;

namespace Progression.Core.People;

/// <summary>The yes/no questions of an assessment that rules read.</summary>
public static class Signs
{
    /// <summary>A voluntary contraction of the quadriceps can be seen.</summary>
    public const string ContractionVisible = "contraction_visible";
    /// <summary>Sensation of the thigh is back and normal.</summary>
    public const string SensationNormal = "sensation_normal";
    /// <summary>The straight leg can be raised unaided.</summary>
    public const string StraightLegRaise = "straight_leg_raise";
    /// <summary>The lag grows over repeated straight-leg raises.</summary>
    public const string LagGrows = "lag_grows";
    /// <summary>Pain raised by the last session had settled by next morning.</summary>
    public const string SettledByMorning = "settled_by_morning";
    /// <summary>A pop, a fall or a gap above the kneecap.</summary>
    public const string PopFallOrGap = "pop_fall_or_gap";
    /// <summary>Signs that may mean a clot.</summary>
    public const string ClotSigns = "clot_signs";
    /// <summary>Signs that may mean an infection.</summary>
    public const string InfectionSigns = "infection_signs";
    /// <summary>Any other urgent sign.</summary>
    public const string UrgentSigns = "urgent_signs";
    /// <summary>Stim makes the whole quadriceps contract visibly.</summary>
    public const string StimContraction = "stim_contraction";

    /// <summary>Every sign with its question.</summary>
    public static ImmutableSortedDictionary<string, string> Questions { get; } = new Dictionary<string, string>
    {
        [ContractionVisible] = "Can a voluntary contraction of the quadriceps be seen?",
        [SensationNormal] = "Is sensation of the thigh back and normal?",
        [StraightLegRaise] = "Can the straight leg be raised unaided?",
        [LagGrows] = "Does the lag grow over repeated straight-leg raises?",
        [SettledByMorning] = "Had pain and swelling after the last session settled by next morning?",
        [PopFallOrGap] = "Was there a pop, a fall, or is there a gap above the kneecap?",
        [ClotSigns] = "Are there signs that may mean a clot (calf pain, swelling of the whole leg, breathlessness)?",
        [InfectionSigns] = "Are there signs that may mean an infection (fever, spreading redness, drainage, a hot knee)?",
        [UrgentSigns] = "Is there any other urgent sign (new foot drop or numbness, a cold foot, a tight painful calf, a new giving way, confusion)?",
        [StimContraction] = "Does stim make the whole quadriceps contract visibly?",
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
