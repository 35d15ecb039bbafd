using System.Collections.Immutable;
using Progression.Core.Clinic;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.Core.Tests.Reviews;

/// <summary>A plan and its review, told in steps: Anna plans, Ben too, Sue and Tom supervise.</summary>
internal sealed record Reviewed(ImmutableArray<PlanStamp> Plans, ReviewRecord Record)
{
    internal static readonly ClinicPerson Anna = new("3001", "anna", [ClinicRole.Therapist]);
    internal static readonly ClinicPerson Ben = new("3002", "ben", [ClinicRole.Therapist]);
    internal static readonly ClinicPerson Sue = new("3003", "sue", [ClinicRole.Supervisor]);
    internal static readonly ClinicPerson Both = new("3004", "bo", [ClinicRole.Therapist, ClinicRole.Supervisor]);
    internal static readonly ClinicPerson Lead = new("3005", "lee", [ClinicRole.Lead]);
    internal static readonly DateTimeOffset Monday = new(2026, 11, 2, 9, 15, 0, TimeSpan.Zero);

    internal static readonly PlanRisk Fine = new(0, 0, 0, 0, null);
    internal static readonly ReviewComment Slower = new(new CellAddress("stim", 3), "Too fast a step for this lag.");

    internal static Reviewed New => new([], ReviewRecord.Empty);

    internal PlanReview Review => new(Plans, Record);

    internal ReviewStanding Standing => Review.Standing;

    internal Reviewed SavedBy(ClinicPerson person) => this with { Plans = Plans.Add(new(Plans.Length + 1, Hash(Plans.Length + 1), person.UserId, person.Name, Monday)) };

    internal Reviewed Asked(ClinicPerson by) => Then(Act(ReviewStep.Requested, by) with { Risk = Fine });

    internal Reviewed Signed(ClinicPerson by) => Then(Signature(by));

    internal Reviewed Then(ReviewAct act) => this with { Record = Record.With(act) };

    internal ReviewAct Signature(ClinicPerson by) => Act(ReviewStep.Signed, by) with { Meaning = SignatureMeaning.Agreed, Risk = Fine };

    internal ReviewAct Act(ReviewStep step, ClinicPerson by) => new()
    {
        Step = step,
        By = new(by.UserId, by.Name, ReviewRules.RoleFor(by, step) ?? by.Roles[0]),
        At = Monday.AddMinutes(Record.Acts.Length),
        Plan = Review.Newest.Reference,
    };

    internal static string Hash(int revision) => new($"{revision}"[0], 64);
}
