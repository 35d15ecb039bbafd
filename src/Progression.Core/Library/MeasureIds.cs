using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>The measures that rules read. A library without one of them is refused.</summary>
public static class MeasureIds
{
    /// <summary>Active knee flexion, degrees.</summary>
    public const string FlexionActive = "flexion_active";
    /// <summary>Passive knee flexion, degrees.</summary>
    public const string FlexionPassive = "flexion_passive";
    /// <summary>Active extension deficit, degrees, flexion-positive.</summary>
    public const string ExtensionActive = "extension_active";
    /// <summary>Passive extension deficit, degrees, flexion-positive.</summary>
    public const string ExtensionPassive = "extension_passive";
    /// <summary>Extension lag, degrees: active minus passive deficit; derived, not entered.</summary>
    public const string Lag = "extension_lag";
    /// <summary>Maximal voluntary extension torque of the operated leg, Nm.</summary>
    public const string QuadricepsTorque = "quadriceps_torque";
    /// <summary>The same of the other leg, Nm.</summary>
    public const string OtherTorque = "quadriceps_torque_other";
    /// <summary>Force at the dynamometer, operated leg, N; becomes torque with the lever arm.</summary>
    public const string QuadricepsForce = "quadriceps_force";
    /// <summary>The same of the other leg, N.</summary>
    public const string OtherForce = "quadriceps_force_other";
    /// <summary>Lever arm of the dynamometer, cm.</summary>
    public const string LeverArm = "lever_arm";
    /// <summary>Torque in percent of the same leg before the operation; derived.</summary>
    public const string PreOpShare = "quadriceps_pre_op_share";
    /// <summary>Operated to other leg, percent; derived.</summary>
    public const string Index = "quadriceps_index";
    /// <summary>Torque per body mass, Nm/kg; computed where body mass is known and it was not entered.</summary>
    public const string TorquePerMass = "quadriceps_torque_per_mass";
    /// <summary>Straight-leg raises in a row.</summary>
    public const string StraightLegRaises = "straight_leg_raises";
    /// <summary>Stroke-test effusion: 0 none, 1 trace, 2 one plus, 3 two plus, 4 three plus.</summary>
    public const string Effusion = "effusion";
    /// <summary>Pain at rest, 0 to 10.</summary>
    public const string PainRest = "pain_rest";
    /// <summary>Pain in activity, 0 to 10.</summary>
    public const string PainActivity = "pain_activity";
    /// <summary>Pain the next morning, 0 to 10.</summary>
    public const string PainNextMorning = "pain_next_morning";
    /// <summary>Girth at the joint line.</summary>
    public const string Girth = "girth";

    /// <summary>Every measure that must be present.</summary>
    public static ImmutableSortedSet<string> All { get; } =
    [
        FlexionActive, FlexionPassive, ExtensionActive, ExtensionPassive, Lag, QuadricepsTorque, OtherTorque, QuadricepsForce, OtherForce, LeverArm,
        PreOpShare, Index, TorquePerMass, StraightLegRaises, Effusion, PainRest, PainActivity, PainNextMorning, Girth,
    ];

    /// <summary>Those that are computed from others and cannot be entered.</summary>
    public static ImmutableSortedSet<string> Computed { get; } = [Lag, PreOpShare, Index];

    /// <summary>The unit in which the rules read each of them; "1" for a plain number.</summary>
    public static ImmutableSortedDictionary<string, string> Units { get; } = new Dictionary<string, string>
    {
        [FlexionActive] = "deg",
        [FlexionPassive] = "deg",
        [ExtensionActive] = "deg",
        [ExtensionPassive] = "deg",
        [Lag] = "deg",
        [QuadricepsTorque] = "Nm",
        [OtherTorque] = "Nm",
        [QuadricepsForce] = "N",
        [OtherForce] = "N",
        [LeverArm] = "cm",
        [PreOpShare] = "%",
        [Index] = "%",
        [TorquePerMass] = "Nm/kg",
        [StraightLegRaises] = "1",
        [Effusion] = "1",
        [PainRest] = "1",
        [PainActivity] = "1",
        [PainNextMorning] = "1",
        [Girth] = "cm",
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
