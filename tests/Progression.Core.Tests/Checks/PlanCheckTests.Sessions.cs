using Progression.Core.Findings;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Checks;

/// <summary>The plan against the sessions logged so far.</summary>
public sealed partial class PlanCheckTests
{
    [Fact] // Common practice: no stim on damaged skin.
    public void Damaged_skin_under_planned_stim_is_severe_until_a_later_log_is_clear()
    {
        Knee damaged = Knee.Well.Seen(2, Look.Well).Logged(3, skin: SkinCheck.Damaged).Logged(4);

        Finding finding = Assert.Single(damaged.Check(Stimulated(weeks: 4)).Of("SKIN-DAMAGED"));

        Assert.Equal((Severity.Severe, new CellAddress("stim", 1)), (finding.Severity, finding.Cells[0]));
        Assert.Empty(finding.Cure!.Changes);
        Assert.Empty(damaged.Logged(5, skin: SkinCheck.FadingRedness).Check(Stimulated(weeks: 4)).Of("SKIN-DAMAGED"));
        Assert.Empty(damaged.Check(Grid.Empty()).Of("SKIN-DAMAGED"));
    }

    [Theory] // +3 points: Danoff 2018.
    [InlineData(2, 5, 2, 1)]
    [InlineData(2, 4, 2, 0)]
    [InlineData(2, 5, 3, 2)]
    [InlineData(null, 5, 3, 0)]
    public void Sessions_since_the_assessment_that_irritate_are_warned_of(int? before, int? after, int? morning, int warnings) =>
        Assert.Equal(warnings, Knee.Well.Seen(2, Look.Well).Logged(3, before, after, morning).Check(Stimulated(weeks: 4)).Of("SESSION-IRRITATION").Length);

    [Fact]
    public void Sessions_before_the_assessment_are_left_to_the_ladder() =>
        Assert.Empty(Knee.Well.Seen(2, Look.Well).Logged(3, 2, 9, 9).Seen(4, Look.Well).Check(Stimulated(weeks: 4)).Of("SESSION-IRRITATION"));
}
