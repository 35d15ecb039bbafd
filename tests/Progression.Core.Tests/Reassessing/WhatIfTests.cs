using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Reassessing;

namespace Progression.Core.Tests.Reassessing;

/// <summary>A scratch copy moves the plan and leaves what it was made from alone.</summary>
public sealed class WhatIfTests
{
    private static readonly Knee Seen = Knee.Well.Stimulated(2, strong: true).Seen(8, Look.Well).Seen(15, Look.Well);
    private static readonly PlanRevision Plan = Seen.Draft();

    [Fact] // With a lag of 12 deg on day 15 nothing is closed: the rung is held.
    public void Another_lag_moves_the_ladder()
    {
        WhatIf scratch = WhatIf.With(Plan, Seen.Case, Knee.Library, MeasureIds.Lag, 12).Value!;

        Assert.Equal("reduced 15x1 daily", Plan.Text("stim", 3));
        Assert.StartsWith("high ", scratch.Plan.Text("stim", 3), StringComparison.Ordinal);
        Assert.Equal((13d, 4d), (scratch.Patient.Assessments[^1].Value(MeasureIds.ExtensionActive), Seen.Case.Assessments[^1].Value(MeasureIds.ExtensionActive)));
    }

    [Fact]
    public void Not_measured_takes_the_reading_away()
    {
        WhatIf scratch = WhatIf.With(Plan, Seen.Case, Knee.Library, MeasureIds.FlexionActive, null).Value!;

        Assert.Null(scratch.Patient.Assessments[^1].Value(MeasureIds.FlexionActive));
    }

    [Fact]
    public void A_dose_that_was_tried_stays_when_a_reading_is_tried_after_it()
    {
        CellAddress cell = new("stim", 4);
        WhatIf dose = WhatIf.Unchanged(Plan, Seen.Case).Put(cell, Grid.Read(Plan, "stim", "low 10x1 mon"));

        WhatIf both = WhatIf.With(dose.Plan, dose.Patient, Knee.Library, MeasureIds.FlexionActive, 60).Value!;

        Assert.Equal("low 10x1 mon", both.Plan.Text("stim", 4));
    }

    [Theory]
    [InlineData(MeasureIds.FlexionActive, 400, "The value cannot be entered.")]
    [InlineData(MeasureIds.Effusion, 1.5, "The value cannot be entered.")]
    [InlineData(MeasureIds.Index, 50, "This is not a reading that can be entered.")]
    [InlineData("height", 5, "This is not a reading that can be entered.")]
    public void What_cannot_be_entered_cannot_be_tried(string measure, double value, string wrong) =>
        Assert.Equal(wrong, Assert.Single(WhatIf.With(Plan, Seen.Case, Knee.Library, measure, value).Problems).Wrong);

    [Fact]
    public void A_lag_needs_the_passive_deficit_of_the_same_visit()
    {
        Knee knee = Knee.Well.Seen(8, Look.Well.Without(MeasureIds.ExtensionPassive));

        Assert.StartsWith("The lag cannot be tried", Assert.Single(WhatIf.With(knee.Draft(), knee.Case, Knee.Library, MeasureIds.Lag, 4).Problems).Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_assessment_there_is_nothing_to_change() =>
        Assert.Single(WhatIf.With(Plan, Knee.Well.Case, Knee.Library, MeasureIds.FlexionActive, 90).Problems);
}
