using System.Collections.Immutable;
using Progression.App.Grid;
using Progression.Core.Clinic;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.App.Tests.Grid;

/// <summary>The plan of <see cref="Sample"/> in a clinic: Anna and Ben plan, Sue supervises.</summary>
internal static class SampleReview
{
    public static readonly ClinicPerson Anna = new("3001", "anna", [ClinicRole.Therapist]);
    public static readonly ClinicPerson Ben = new("3002", "ben", [ClinicRole.Therapist]);
    public static readonly ClinicPerson Sue = new("3003", "sue", [ClinicRole.Supervisor]);
    public static readonly DateTimeOffset Monday = new(2026, 11, 16, 9, 15, 0, TimeSpan.Zero);
    private static readonly CellAddress Bend = new("bend", 3);
    private static readonly PlanRisk Fine = new(0, 0, 1, 0, null);

    public static ReviewAct Request => Act(ReviewStep.Requested, Anna, 1) with { Risk = Fine };

    public static ReviewAct Signature => Act(ReviewStep.Signed, Sue, 1) with { Risk = Fine, Meaning = SignatureMeaning.Agreed };

    public static ReviewAct Said => Act(ReviewStep.Commented, Sue, 1) with { Comments = [new(Bend, "Less in week 3, please."), new(null, "Else well made.")] };

    /// <summary>Revision 1 as Anna saved it.</summary>
    public static GridState Saved(ClinicPerson looks, params ImmutableArray<ReviewAct> acts) => Of(Sample.State, looks, (null, 1), acts);

    /// <summary>Anna has asked for a review of revision 1.</summary>
    public static GridState Asked(ClinicPerson looks, params ImmutableArray<ReviewAct> more) => Saved(looks, [Request, .. more]);

    /// <summary>Revision 1 was signed; in revision 2 bending in week 3 is emptied for a reason, and a review is asked for.</summary>
    public static GridState Changed(ClinicPerson looks, params ImmutableArray<ReviewAct> more)
    {
        PlanRevision signed = Sample.Plan();
        GridState state = GridState.Open(Sample.Desk, PlanEdit.Set(signed, Bend, null, "sore after week 2"));
        return Of(state, looks, (signed, 2), [Request, Signature, Act(ReviewStep.Requested, Anna, 2) with { Risk = Fine }, .. more]);
    }

    /// <summary>Anna has emptied bending in weeks 3 and 4, while Ben changed it in week 3 and walking in week 5.</summary>
    public static GridState Conflicted()
    {
        PlanRevision from = Sample.Plan();
        PlanRevision theirs = PlanEdit.Set(PlanEdit.Set(from, Bend, from.ContentAt("bend", 2)), new("walking", 5), null, "snow");
        GridState mine = Sample.Press(Sample.At(Sample.Press(Sample.At(Saved(Anna), "bend", 3), "x"), "bend", 4), "x");
        return GridConflicts.Open(mine, new PlanConflict(mine.Saved, theirs, "ben saved revision 2 at 2026-11-16 09:20 UTC, while you worked on revision 1."));
    }

    public static ReviewAct Act(ReviewStep step, ClinicPerson by, int revision) => new()
    {
        Step = step,
        By = new(by.UserId, by.Name, by.Roles[0]),
        At = Monday,
        Plan = Stamp(revision).Reference,
    };

    private static GridState Of(GridState state, ClinicPerson looks, (PlanRevision? Signed, int Revisions) plan, ImmutableArray<ReviewAct> acts) => state with
    {
        Review = new GridReview(new PlanReview([.. Enumerable.Range(1, plan.Revisions).Select(Stamp)], new ReviewRecord(acts)), looks, plan.Signed),
    };

    private static PlanStamp Stamp(int revision) => new(revision, new string($"{revision}"[0], 64), Anna.UserId, Anna.Name, Monday);
}
