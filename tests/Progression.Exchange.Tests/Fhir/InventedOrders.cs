using System.Collections.Immutable;
using Progression.Core.Clinic;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Exchange.Fhir;
using Progression.Records.Codes;
using Progression.Records.Library;
using Progression.SeedDemo;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>Invented cases with plans and reviews, as a clinic would send them.</summary>
internal static class InventedOrders
{
    public static readonly DateOnly Today = new(2026, 11, 25);
    public static readonly ClinicalLibrary Library = LibraryReader.Read(null).Library!;
    public static readonly StandardCodes Codes = StandardCodesReader.Shipped();

    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 30, 0, TimeSpan.FromHours(1));
    private static readonly ReviewPerson Therapist = new("2001", "kl", ClinicRole.Therapist);
    private static readonly ReviewPerson Supervisor = new("2002", "mb", ClinicRole.Supervisor);
    private static readonly ReviewedPlan First = new(3, new string('a', 64));
    private static readonly ReviewedPlan Second = new(4, new string('b', 64));

    /// <summary>Every case of the demo.</summary>
    public static ImmutableArray<Case> Cases { get; } = DemoCaseload.Make(Today, Library);

    /// <summary>A case whose readings have everything a reading can have: trials, another rater, device, position, steps, a correction, a lag.</summary>
    public static Case Full
    {
        get
        {
            Case patient = Cases[0];
            Assessment last = patient.Assessments[^1];
            Reading torque = Reading.OfTrials(MeasureIds.QuadricepsTorque, [61.5, 64, 62.123456]) with { Device = "Fixed dynamometer", Position = "Sitting, knee at 60 deg" };
            Reading flexion = new(MeasureIds.FlexionPassive, 95.5) { Rater = "MB", Corrected = [new Correction(59.5, last.Date, "KL", "Digits were swapped.")] };
            Reading stairs = new("stairs_up", 14.37) { Steps = 11, Trials = 2 };
            return patient with
            {
                Born = new DateOnly(1957, 5, 14),
                Assessments =
                [
                    .. patient.Assessments[..^1],
                    last with
                    {
                        Rater = "KL",
                        Readings = last.Readings.SetItems(new[] { torque, flexion, stairs }.Select(one => KeyValuePair.Create(one.Measure, one))),
                        SignsSeen = last.SignsSeen.SetItem(Signs.LagGrows, Answer.Unknown).SetItem(Signs.StraightLegRaise, Answer.Yes).SetItem(Signs.ClotSigns, Answer.No),
                    },
                ],
            };
        }
    }

    /// <summary>A case without a plan.</summary>
    public static FhirOrder Of(Case patient) => new() { Patient = patient, Library = Library, Codes = Codes, At = Now };

    /// <summary>A case with the plan drafted for it, not saved.</summary>
    public static FhirOrder Drafted(Case patient) => Of(patient) with { Plan = PlanDraft.Draft(patient, Library, null).Value ?? throw new InvalidOperationException(patient.Code.Text) };

    /// <summary>The same saved as revision 3.</summary>
    public static FhirOrder Saved(Case patient) => Reviewed(patient);

    /// <summary>The same with what was done about its review.</summary>
    public static FhirOrder Reviewed(Case patient, params ReviewStep[] steps) => Drafted(patient) with
    {
        Saved = new PlanStamp(3, First.Hash, Therapist.UserId, Therapist.Name, Now.AddDays(-1)),
        Standing = ReviewStanding.Of(First, Record(steps)),
    };

    /// <summary>The same after the plan was saved again.</summary>
    public static FhirOrder Changed(Case patient, params ReviewStep[] steps) => Drafted(patient) with
    {
        Saved = new PlanStamp(4, Second.Hash, Therapist.UserId, Therapist.Name, Now),
        Standing = ReviewStanding.Of(Second, Record(steps)),
    };

    /// <summary>Every situation a bundle can be in.</summary>
    public static IEnumerable<FhirOrder> All =>
    [
        .. Cases.Select(Drafted),
        Of(Full),
        Drafted(Full) with { Name = "Invented Person", WithBirthDate = true },
        Saved(Full),
        Saved(Full) with { Saved = null },
        Reviewed(Full, ReviewStep.Requested),
        Reviewed(Full, ReviewStep.Requested, ReviewStep.Withdrawn),
        Reviewed(Full, ReviewStep.Requested, ReviewStep.Commented, ReviewStep.Returned),
        Reviewed(Full, ReviewStep.Requested, ReviewStep.Signed),
        Changed(Full, ReviewStep.Requested, ReviewStep.Signed),
        Changed(Full, ReviewStep.Requested),
    ];

    private static ReviewRecord Record(ReviewStep[] steps) => new([.. steps.Select(Act)]);

    private static ReviewAct Act(ReviewStep step, int index) => new()
    {
        Step = step,
        By = step is ReviewStep.Requested or ReviewStep.Withdrawn ? Therapist : Supervisor,
        At = Now.AddHours(index - 12),
        Plan = First,
        Comments = step == ReviewStep.Returned ? [new ReviewComment(new CellAddress("stim", 3), "One week longer, please.")] : [],
        Meaning = step == ReviewStep.Signed ? SignatureMeaning.Agreed : null,
    };
}
