using Progression.Core.Library;

namespace Progression.Core.People;

/// <summary>Turns extension deficits from the way they are written where the person is treated into the stored, flexion-positive way, and back.</summary>
public static class WrittenDeficit
{
    /// <summary>Whether a measure is an extension deficit, whose sign is a matter of convention.</summary>
    public static bool Concerns(string measure) => measure is MeasureIds.ExtensionActive or MeasureIds.ExtensionPassive;

    /// <summary>A value as it is stored of one as it is written, or the other way round: turning twice gives the value back.</summary>
    /// <param name="sign">How deficits are written.</param>
    /// <param name="measure">The measure; the value of any but an extension deficit stays as it is.</param>
    /// <param name="value">The value in the measure's unit.</param>
    public static double Turn(DeficitSign sign, string measure, double value) => Turns(sign, measure) ? 0 - value : value;

    /// <summary>A measure with its range as it is written.</summary>
    public static Measure Range(DeficitSign sign, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return Turns(sign, measure.Id) ? measure with { Least = 0 - measure.Most, Most = 0 - measure.Least } : measure;
    }

    /// <summary>What a deficit of 5 degrees looks like: "5 deg is 5 deg short of straight, -5 deg beyond it".</summary>
    public static string Words(DeficitSign sign) => sign == DeficitSign.Positive
        ? "5 deg is 5 deg short of straight, -5 deg beyond it"
        : "-5 deg is 5 deg short of straight, 5 deg beyond it";

    private static bool Turns(DeficitSign sign, string measure) => sign == DeficitSign.Negative && Concerns(measure);
}
