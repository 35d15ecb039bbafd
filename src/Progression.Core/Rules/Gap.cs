using Progression.Core.Measures;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>How far a reading is from what a criterion asks.</summary>
/// <param name="What">What was read, in words.</param>
/// <param name="Value">What was read, in the unit.</param>
/// <param name="Target">What is asked, in the unit.</param>
/// <param name="Unit">The unit symbol; "1" for a plain number.</param>
/// <param name="AtMost">Whether the target is the most allowed; otherwise it is the least.</param>
public sealed record Gap(string What, double Value, double Target, string Unit, bool AtMost)
{
    /// <summary>
    /// The margin in standard errors of what was read, on the scale of that error; positive when the criterion is met. Null where no error is known.
    /// </summary>
    public double? StandardErrors { get; init; }

    /// <summary>How far the reading is on the good side, in the unit; negative when it falls short.</summary>
    public double Margin => AtMost ? Target - Value : Value - Target;

    /// <summary>The chance, 0 to 1, that the criterion is not truly met, by the reading and its error alone; null where no error is known.</summary>
    public double? ChanceNotMet => StandardErrors is double errors ? GuardBand.NotMet(errors, 1) : null;

    /// <summary>What is still to go: "extension lag 8 deg: 3 deg to go (at most 5 deg)".</summary>
    public string Words => $"{What} {Amount(Value)}: {Amount(Math.Max(0, -Margin))} to go ({(AtMost ? "at most" : "at least")} {Amount(Target)})";

    private string Amount(double value) => Unit == "1" ? Number.Text(value, 2) : $"{Number.Text(value, Unit == "Nm/kg" ? 2 : 1)} {Unit}";
}
