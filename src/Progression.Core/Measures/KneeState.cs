using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Measures;

/// <summary>
/// One assessment as rules read it: typed quantities and what is derived from them. Null means not measured or not asked; nothing is filled in.
/// </summary>
public sealed record KneeState
{
    private KneeState(Assessment assessment, Case patient)
    {
        Date = assessment.Date;
        Week = PostOpWeek.Of(patient.Operation.Date, assessment.Date);
        Assessment = assessment;
        ActiveExtension = AngleOf(assessment, MeasureIds.ExtensionActive);
        PassiveExtension = AngleOf(assessment, MeasureIds.ExtensionPassive);
        Flexion = AngleOf(assessment, MeasureIds.FlexionActive) ?? AngleOf(assessment, MeasureIds.FlexionPassive);
        Strength = TorqueOf(assessment, MeasureIds.QuadricepsTorque, MeasureIds.QuadricepsForce);
        OtherStrength = TorqueOf(assessment, MeasureIds.OtherTorque, MeasureIds.OtherForce);
        Torque? before = patient.PreOp is null ? null : TorqueOf(patient.PreOp, MeasureIds.QuadricepsTorque, MeasureIds.QuadricepsForce);
        PreOpShare = Share(Strength, before);
        TorquePerMass = assessment.Value(MeasureIds.TorquePerMass) ?? Strength?.NewtonMetres / patient.BodyMass?.Kilograms;
        Index = patient.OtherKnee == OtherKnee.Sound ? Share(Strength, OtherStrength) : null;
    }

    /// <summary>The day of the assessment.</summary>
    public DateOnly Date { get; }

    /// <summary>Its post-op week, from 1.</summary>
    public int Week { get; }

    /// <summary>What was entered.</summary>
    public Assessment Assessment { get; }

    /// <summary>Active extension deficit, flexion-positive.</summary>
    public Angle? ActiveExtension { get; }

    /// <summary>Passive extension deficit, flexion-positive.</summary>
    public Angle? PassiveExtension { get; }

    /// <summary>
    /// Extension lag: active minus passive deficit of the same visit; null when one of them was not measured. Negative when active extension went
    /// further than passive, which is an entry to be checked, not a recovery.
    /// </summary>
    public Angle? Lag => ActiveExtension is null || PassiveExtension is null
        ? null
        : Angle.FromDegrees(Math.Round(ActiveExtension.Degrees - PassiveExtension.Degrees, 6)); // 10.3 - 5.3 is 5, not a hair over the limit

    /// <summary>Active flexion, or passive where active was not measured.</summary>
    public Angle? Flexion { get; }

    /// <summary>Extension torque of the operated leg, as entered or from force and lever arm.</summary>
    public Torque? Strength { get; }

    /// <summary>Extension torque of the other leg.</summary>
    public Torque? OtherStrength { get; }

    /// <summary>Strength in percent of the same leg before the operation.</summary>
    public Percentage? PreOpShare { get; }

    /// <summary>Extension torque of the operated leg per body mass in Nm/kg, as entered or from torque and body mass.</summary>
    public double? TorquePerMass { get; }

    /// <summary>Operated to other leg, percent; null unless the other knee is known to be sound, because only then is it a yardstick.</summary>
    public Percentage? Index { get; }

    /// <summary>The state at an assessment.</summary>
    public static KneeState At(Assessment assessment, Case patient) => new(assessment, patient);

    /// <summary>The value of a measure, derived ones included; null when not known.</summary>
    public double? Value(string measure) => measure switch
    {
        MeasureIds.Lag => Lag?.Degrees,
        MeasureIds.PreOpShare => PreOpShare?.Percent,
        MeasureIds.Index => Index?.Percent,
        MeasureIds.FlexionActive => Flexion?.Degrees,
        MeasureIds.QuadricepsTorque => Strength?.NewtonMetres,
        MeasureIds.OtherTorque => OtherStrength?.NewtonMetres,
        MeasureIds.TorquePerMass => TorquePerMass,
        _ => Assessment.Value(measure),
    };

    /// <summary>As <see cref="Value"/>, but nothing stands in for something else: passive flexion is not taken for active.</summary>
    public double? OwnValue(string measure) => measure == MeasureIds.FlexionActive ? Assessment.Value(measure) : Value(measure);

    /// <summary>The readings from which the value of a measure comes: two for the lag, the force for a torque that was not entered.</summary>
    public IEnumerable<Reading> Behind(string measure) => measure switch
    {
        MeasureIds.Lag => [.. Behind(MeasureIds.ExtensionActive), .. Behind(MeasureIds.ExtensionPassive)],
        MeasureIds.PreOpShare => Behind(MeasureIds.QuadricepsTorque),
        MeasureIds.Index => [.. Behind(MeasureIds.QuadricepsTorque), .. Behind(MeasureIds.OtherTorque)],
        _ when Assessment.Readings.TryGetValue(measure, out Reading? reading) => [reading],
        MeasureIds.TorquePerMass => Behind(MeasureIds.QuadricepsTorque),
        MeasureIds.QuadricepsTorque => Behind(MeasureIds.QuadricepsForce),
        MeasureIds.OtherTorque => Behind(MeasureIds.OtherForce),
        _ => [],
    };

    private static Angle? AngleOf(Assessment assessment, string measure) =>
        assessment.Value(measure) is double degrees ? Angle.FromDegrees(degrees) : null;

    private static Torque? TorqueOf(Assessment assessment, string torque, string force) =>
        assessment.Value(torque) is double newtonMetres ? Torque.FromNewtonMetres(newtonMetres)
        : assessment.Value(force) is double newtons && assessment.Value(MeasureIds.LeverArm) is double centimetres
            ? Torque.FromNewtonMetres(newtons * centimetres / 100)
        : null;

    private static Percentage? Share(Torque? part, Torque? whole) =>
        part is null || whole is null || whole.NewtonMetres == 0 ? null : Percentage.FromPercent(Math.Min(1000, 100 * part.NewtonMetres / whole.NewtonMetres));
}
