using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Exchange.Tests.Import;

/// <summary>A plan of four weeks for the invented case, whose operation was on Monday, 2 February 2026, unless it is put elsewhere.</summary>
internal static class SomePlan
{
    private static readonly Basis Basis = new("TEST", "Made for a test.", [], [], new Source("Made for tests", Standing.CommonPractice), "Nothing.");

    public static PlanRevision Of(DateOnly? operation = null, int weeks = 4)
    {
        DateOnly day = operation ?? SomeKnee.Operated;
        return new PlanRevision
        {
            Code = SomeKnee.Patient.Code,
            Operation = day,
            Weeks = weeks,
            From = day.AddDays(1),
            Regimen = SomeKnee.Library.DefaultRegimen,
            LibraryVersion = SomeKnee.Library.Version,
            Lanes = Lanes.For(withStim: true),
            Cells = ImmutableDictionary<CellAddress, PlanCell>.Empty,
        };
    }

    public static PlanRevision Stim(this PlanRevision plan, int week, string days, int sessions = 1) =>
        plan.With(new CellAddress(Lanes.Stim, week), new PlanCell(new StimCell(Rung.HighVolume, 15, sessions, DaysOfWeek.Parse(days)!.Value), Basis, null));

    public static PlanRevision Exercise(this PlanRevision plan, int week, string days) => plan.With(
        new CellAddress("quads-strength", week),
        new PlanCell(new ActiveCell("quad-set", ExerciseDose.InRepetitions(3, 10, 1) with { Days = DaysOfWeek.Parse(days)!.Value, Hold = Duration.FromSeconds(5) }), Basis, null));

    public static PlanRevision Target(this PlanRevision plan, int week, double flexion) =>
        plan.With(new CellAddress("flexion", week), new PlanCell(new TargetCell(flexion), Basis, null));
}
