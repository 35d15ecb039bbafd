using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Assess;

/// <summary>The lines of the form of an assessment, in the order in which a knee is looked at.</summary>
internal static class AssessLines
{
    public const string Date = "date";
    public const string Rater = "rater";

    private const string SignGroup = "Signs";
    private const string KneeGroup = "Knee";

    private static readonly ImmutableArray<(string Group, ImmutableArray<(string Id, string Title)> Lines)> Groups =
    [
        (KneeGroup,
        [
            (MeasureIds.FlexionActive, "Flexion, active"), (MeasureIds.FlexionPassive, "Flexion, passive"), (MeasureIds.ExtensionActive, "Ext. active"),
            (MeasureIds.ExtensionPassive, "Ext. passive"), (MeasureIds.Lag, "Lag, active - passive"),
        ]),
        ("Strength: force with lever arm, or torque",
        [
            (MeasureIds.QuadricepsForce, "Force, operated leg"), (MeasureIds.OtherForce, "Force, other leg"), (MeasureIds.LeverArm, "Lever arm"),
            (MeasureIds.QuadricepsTorque, "Torque, operated leg"), (MeasureIds.OtherTorque, "Torque, other leg"), (MeasureIds.Index, "Index to other leg"),
            (MeasureIds.PreOpShare, "Of pre-op strength"), (MeasureIds.TorquePerMass, "Torque per body mass"),
        ]),
        ("Function",
        [
            (MeasureIds.StraightLegRaises, "Straight-leg raises"), ("muscle_test", "Muscle test, grade"), ("timed_up_and_go", "Timed up and go"),
            ("chair_stands", "Chair stands in 30 s"), ("five_sit_to_stand", "5 times sit to stand"), ("six_minute_walk", "Six-minute walk"),
            ("stairs_up", "Stairs up"), ("stairs_up_and_down", "Stairs up and down"), ("gait_speed", "Gait speed"),
        ]),
        ("Pain and swelling",
        [
            (MeasureIds.PainRest, "Pain at rest"), (MeasureIds.PainActivity, "Pain in activity"), (MeasureIds.PainNextMorning, "Pain next morning"),
            (MeasureIds.Effusion, "Effusion, stroke test"), (MeasureIds.Girth, "Girth, joint line"),
        ]),
        ("Scores",
        [
            ("koos_pain", "KOOS pain"), ("koos_symptoms", "KOOS symptoms"), ("koos_daily_life", "KOOS daily living"), ("koos_quality_of_life", "KOOS quality of life"),
            ("koos_jr", "KOOS JR interval"), ("oxford_knee_score", "Oxford knee score"), ("lower_extremity_score", "Lower extremity scale"),
        ]),
    ];

    private static readonly ImmutableArray<(string Id, string Title)> SignLines =
    [
        (Signs.ContractionVisible, "Contraction visible"), (Signs.StimContraction, "Stim contracts muscle"), (Signs.SensationNormal, "Sensation normal"),
        (Signs.StraightLegRaise, "Raises straight leg"), (Signs.LagGrows, "Lag grows on raises"), (Signs.SettledByMorning, "Settled by morning"),
        (Signs.PopFallOrGap, "Pop, fall or gap"), (Signs.ClotSigns, "Signs of a clot"), (Signs.InfectionSigns, "Signs of infection"),
        (Signs.UrgentSigns, "Other urgent sign"),
    ];

    public static bool IsExtension(string id) => id is MeasureIds.ExtensionActive or MeasureIds.ExtensionPassive;

    public static bool IsSign(FormLine line) => line.Group == SignGroup;

    public static bool IsComputed(string id) => MeasureIds.Computed.Contains(id) || id == MeasureIds.TorquePerMass;

    /// <summary>The lines with nothing typed. A measure the library has and the groups do not comes under "Other measures".</summary>
    public static ImmutableArray<FormLine> Of(ClinicalLibrary library)
    {
        ImmutableHashSet<string> placed = [.. Groups.SelectMany(group => group.Lines).Select(line => line.Id)];
        return
        [
            new FormLine(Date, "Visit", "Day of the visit"),
            new FormLine(Rater, "Visit", "Who measured"),
            .. Groups.SelectMany(group => group.Lines.Where(line => library.Measures.ContainsKey(line.Id)).Select(line => Line(library.Measures[line.Id], group.Group, line.Title))),
            .. library.Measures.Values.Where(measure => !placed.Contains(measure.Id)).Select(measure => Line(measure, "Other measures", measure.Title)),
            .. SignLines.Concat(Signs.Questions.Keys.Except(SignLines.Select(sign => sign.Id)).Select(id => (Id: id, Title: id.Replace('_', ' '))))
                .Select(sign => new FormLine(sign.Id, SignGroup, sign.Title) { Unit = YesNo.Unit }),
        ];
    }

    /// <summary>The form with the way extension deficits are written in its labels.</summary>
    public static Form Labelled(Form form, DeficitSign? sign)
    {
        string five = sign switch { DeficitSign.Positive => " (5=short)", DeficitSign.Negative => " (-5=short)", _ => "" };
        return form.With(line => IsExtension(line.Id) ? line with { Title = TitleOf(line.Id) + five } : line);
    }

    /// <summary>How deficits are written, as a sentence; empty while nobody has been asked.</summary>
    public static string Convention(DeficitSign? sign) => sign switch
    {
        DeficitSign.Positive => "5 is 5 deg short of straight, -3 is 3 deg beyond it (F3 changes this).",
        DeficitSign.Negative => "-5 is 5 deg short of straight, 3 is 3 deg beyond it (F3 changes this).",
        _ => "How a deficit is written will be asked once.",
    };

    private static FormLine Line(Measure measure, string group, string title) => new(measure.Id, group, title)
    {
        Unit = measure.Id == MeasureIds.Effusion ? "grade" : measure.Unit == "1" ? $"{Number.Text(measure.Least)}-{Number.Text(measure.Most)}" : measure.Unit,
        IsShownOnly = IsComputed(measure.Id),
    };

    private static string TitleOf(string id) => Groups.SelectMany(group => group.Lines).First(line => line.Id == id).Title;
}
