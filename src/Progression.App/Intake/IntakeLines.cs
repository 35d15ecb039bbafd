using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.App.Intake;

/// <summary>The lines of a case: what a plan cannot do without stands first, the rest may stay empty.</summary>
internal static class IntakeLines
{
    public const string Code = "code";
    public const string Operated = "operated";
    public const string Side = "side";
    public const string Load = "weight-bearing";
    public const string Procedure = "procedure";
    public const string OtherKnee = "other-knee";
    public const string Mass = "body-mass";
    public const string Born = "born";
    public const string Therapist = "therapist";
    public const string Flexion = "flexion-at-most";
    public const string Resistance = "no-resistance-before";
    public const string Bounds = "surgeon";
    public const string Stimulator = "stimulator";
    public const string Pads = "pads";
    public const string From = "plan-from";
    public const string Weeks = "plan-to";
    public const string Regimen = "regimen";
    public const string Measured = "measured-before";

    private const string Knee = "Knee";
    private const string Person = "Person: from here on every line may stay empty";
    private const string Surgeon = "What the surgeon bounds";
    private const string Stim = "Stim";
    private const string Plan = "Plan";
    private const string Before = "Before the operation";

    private const string UsualProcedure = "Total knee replacement";

    /// <summary>The measures from before the operation that rules and forecasts rest on most; an assessment of a day before it takes all of them.</summary>
    public static readonly ImmutableArray<(string Id, string Title)> Baseline =
    [
        (MeasureIds.FlexionActive, "Flexion, active"), (MeasureIds.QuadricepsTorque, "Torque, this leg"), (MeasureIds.OtherTorque, "Torque, other leg"),
        ("timed_up_and_go", "Timed up and go"),
    ];

    public static bool IsBaseline(string id) => Baseline.Any(line => line.Id == id);

    /// <summary>The lines, filled in with a case that is saved.</summary>
    public static ImmutableArray<FormLine> Of(IntakeDesk desk) =>
    [
        new FormLine(Code, Knee, "Code of the case") { Given = desk.Case?.Code.Text ?? "" },
        new FormLine(Operated, Knee, "Operated on") { Given = Day(desk.Case?.Operation.Date) },
        new FormLine(Side, Knee, "Knee") { Given = desk.Case is { } known ? Word(known.Operation.Side) : "" },
        new FormLine(Load, Knee, "Weight-bearing") { Given = desk.Case?.WeightBearing is { } load ? IntakeWords.Of(load) : "" },
        new FormLine(Procedure, Knee, "Procedure") { Given = desk.Case?.Operation.Procedure ?? UsualProcedure, IsText = true },
        new FormLine(OtherKnee, Person, "Other knee") { Given = desk.Case is { OtherKnee: not Core.People.OtherKnee.NotKnown } seen ? Word(seen.OtherKnee) : "" },
        new FormLine(Mass, Person, "Body mass") { Given = desk.Case?.BodyMass is { } mass ? Number.Text(mass.Kilograms, 2) : "", Unit = "kg" },
        new FormLine(Born, Person, "Born on") { Given = Day(desk.Case?.Born) },
        new FormLine(Therapist, Person, "Therapist") { Given = desk.Case?.Therapist ?? "", IsText = true },
        new FormLine(Flexion, Surgeon, "Flexion at most") { Given = desk.Case?.Surgeon.FlexionAtMost is { } most ? Number.Text(most.Degrees, 1) : "", Unit = "deg" },
        new FormLine(Resistance, Surgeon, "No resistance before") { Given = Day(desk.Case?.Surgeon.NoResistanceBefore) },
        new FormLine(Bounds, Surgeon, "Anything else") { Given = desk.Case?.Surgeon.Text ?? "", IsText = true },
        new FormLine(Stimulator, Stim, "Stimulator") { Given = desk.Case?.Stimulator ?? "", IsText = true },
        new FormLine(Pads, Stim, "Pads, each") { Given = desk.Case?.Pads?.ToString() ?? "" },
        new FormLine(Regimen, Stim, "Regimen") { Given = desk.Case?.Regimen ?? "", IsText = true },
        new FormLine(From, Plan, "Plan starts on") { Given = Day(desk.Case?.PlanFrom) },
        new FormLine(Weeks, Plan, "Last week of the plan") { Given = $"{desk.Case?.Weeks}", Unit = "week" },
        .. desk.Case?.PreOp is null ? Measures(desk.Library) : [new FormLine(Measured, Before, "Measured on") { IsShownOnly = true }],
    ];

    private static IEnumerable<FormLine> Measures(ClinicalLibrary library) =>
    [
        new FormLine(Measured, Before, "Measured on"),
        .. Baseline.Where(line => library.Measures.ContainsKey(line.Id)).Select(line => new FormLine(line.Id, Before, line.Title) { Unit = library.Measures[line.Id].Unit }),
    ];

    private static string Day(DateOnly? day) => day is { } known ? DayWords.Typed(known) : "";

    private static string Word<T>(T value)
        where T : struct, Enum => $"{value}".ToLowerInvariant();
}
