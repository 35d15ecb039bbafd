using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Checks;

/// <summary>Exercises whose needs are not met; needs are common practice unless the library says otherwise.</summary>
public sealed partial class PlanCheckTests
{
    [Fact]
    public void An_exercise_whose_need_fails_beside_stim_is_a_pairing_warning()
    {
        Knee knee = Knee.Well.Seen(7, Look.Well.Lag(11));
        PlanRevision plan = Grid.Empty(from: 7).Put("quads-strength", 2, "long-arc-part 3x10").Put("stim", 2, "high 10x1 daily");

        Finding finding = Assert.Single(knee.Check(plan).Of("PAIR-NEEDS"));

        Assert.Contains("extension lag at most 10 deg", finding.Text, StringComparison.Ordinal);
        Assert.Equal(new CellAddress("quads-strength", 2), Assert.Single(finding.Cells));
        Assert.Equal(Severity.Warning, finding.Severity);
        // The hardest exercise of the lane that a lag of 11 deg allows is the straight-leg raise (at most 15 deg).
        PlanRevision cured = PlanEdit.Apply(plan, finding.Cure!);
        Assert.StartsWith("straight-leg-raise ", cured.Text("quads-strength", 2), StringComparison.Ordinal);
        Assert.Empty(knee.Check(cured).Of("PAIR-NEEDS"));
    }

    [Fact]
    public void The_same_without_stim_is_a_warning_of_the_exercise_alone()
    {
        PlanRevision plan = Grid.Empty(from: 7).Put("quads-strength", 2, "long-arc-part 3x10");
        Knee knee = Knee.Well.Seen(7, Look.Well.Lag(11));

        Assert.Empty(knee.Check(plan).Of("PAIR-NEEDS"));
        Assert.Single(knee.Check(plan).Of("ACTIVE-NEEDS"));
        Assert.Empty(Knee.Well.Seen(7, Look.Well.Lag(10)).Check(plan).Of("ACTIVE-NEEDS"));
    }

    [Fact]
    public void A_need_that_is_not_known_is_noted_only()
    {
        Finding finding = Assert.Single(
            Knee.Well.Seen(7, Look.Well.Without(MeasureIds.ExtensionActive)).Check(Grid.Empty(from: 7).Put("quads-strength", 2, "long-arc-part 3x10")).Of("ACTIVE-NEEDS-OPEN"));

        Assert.Equal((Severity.Note, null), (finding.Severity, finding.Cure));
    }

    [Fact]
    public void Where_nothing_easier_is_allowed_the_exercise_is_taken_out()
    {
        Knee knee = Knee.Well.Bearing(WeightBearing.None).Seen(7, Look.Well);
        PlanRevision plan = Grid.Empty(from: 7).Put("walking", 2, "walk-with-aid 5 min");

        Finding finding = Assert.Single(knee.Check(plan).Of("ACTIVE-NEEDS"));

        PlanRevision cured = PlanEdit.Apply(plan, finding.Cure!);
        Assert.Null(cured.ContentAt("walking", 2));
        Assert.Empty(knee.Check(cured).Of("ACTIVE-NEEDS"));
    }

    [Fact]
    public void An_exercise_the_library_does_not_know_is_named_and_not_counted()
    {
        ActiveCell unknown = new("handstand", ExerciseDose.InRepetitions(3, 10));
        PlanRevision plan = PlanEdit.Set(Grid.Empty(), new CellAddress("hip", 2), unknown);

        Assert.Contains("\"handstand\"", One("ACTIVE-UNKNOWN", plan).Text, StringComparison.Ordinal);
        Assert.False(PlanFigures.Of(plan, Knee.Library)[1].AnyActiveWork);
    }
}
