using Progression.Core.Findings;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Checks;

/// <summary>A knee that may become stiff. Part 6 of the project's reference: chance of 90 deg by week 8 under 0.5, or no gain from week 4 on.</summary>
public sealed partial class PlanCheckTests
{
    private static Knee Bends(params (int Day, double Degrees)[] looks) =>
        looks.Aggregate(Knee.Well, (knee, look) => knee.Seen(look.Day, Look.Well.With(MeasureIds.FlexionActive, look.Degrees)));

    private static int Warned(Knee knee, string rule, ClinicalLibrary? library = null) => knee.Check(Grid.Empty(weeks: 12), library).Of(rule).Length;

    [Theory]
    [InlineData(62, 1)]
    [InlineData(98, 0)]
    public void A_knee_more_likely_than_not_under_the_floor_in_week_8_is_told_to_the_surgeon(double degrees, int warnings) =>
        Assert.Equal(warnings, Warned(Bends((7, degrees - 12), (14, degrees - 6), (28, degrees)), "FLEXION-CHANCE"));

    [Fact] // The limit is moved over and under the chance of one knee.
    public void The_chance_is_warned_of_under_its_limit_and_not_at_it()
    {
        Knee knee = Bends((7, 66), (14, 72), (28, 80));
        double chance = 100 * Forecasting.ChanceAtLeast(knee.Case, Knee.Library, MeasureIds.FlexionActive, 90, 8, Knee.Day(28))!.Value;

        Assert.InRange(chance, 5, 95);
        Assert.Equal(0, Warned(knee, "FLEXION-CHANCE", Knee.LibraryWith(LimitIds.FlexionChance, chance - 0.1)));
        Assert.Equal(0, Warned(knee, "FLEXION-CHANCE", Knee.LibraryWith(LimitIds.FlexionChance, chance)));
        Assert.Equal(1, Warned(knee, "FLEXION-CHANCE", Knee.LibraryWith(LimitIds.FlexionChance, chance + 0.1)));
    }

    [Fact]
    public void It_says_who_is_told_and_by_when()
    {
        Finding finding = Assert.Single(Bends((7, 50), (14, 56), (28, 62)).Check(Grid.Empty(weeks: 12)).Of("FLEXION-CHANCE"));

        Assert.Equal((Severity.Warning, new CellAddress("flexion", 5)), (finding.Severity, Assert.Single(finding.Cells)));
        Assert.StartsWith(
            "The knee may become stiff: the chance of at least 90 deg of flexion by week 8 is under 50 %. Measure again and tell the surgeon by week 6:",
            finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_foretold_without_a_reading_of_active_flexion_or_while_a_red_flag_is_open()
    {
        Knee slow = Bends((7, 50), (14, 56));

        Assert.Equal(0, Warned(Knee.Well.Seen(7, Look.Empty.With(MeasureIds.FlexionPassive, 50)), "FLEXION-CHANCE"));
        Assert.Equal(1, Warned(slow, "FLEXION-CHANCE"));
        Assert.Equal(0, Warned(slow.Seen(16, Look.Well.With(MeasureIds.FlexionActive, 56).Says(Signs.ClotSigns, Answer.Yes)), "FLEXION-CHANCE"));
    }

    [Theory] // Detectable at 90 %: 1.645 x sqrt(2) x 4 deg = 9.31 deg. Week 4 is days 21 to 27, week 6 begins on day 35.
    [InlineData(24, 35, 99, 0)]
    [InlineData(24, 35, 98.9, 1)]
    [InlineData(24, 35, 91, 1)]
    [InlineData(24, 34, 91, 0)]
    [InlineData(14, 35, 91, 1)]
    [InlineData(13, 35, 91, 0)]
    public void No_detectable_gain_from_week_4_on_is_told_from_week_6(int first, int second, double degrees, int warnings) =>
        Assert.Equal(warnings, Warned(Bends((first, 89.6), (second, degrees)), "FLEXION-NO-GAIN"));

    [Theory] // 100 deg at week 7 is acceptable: Ebert 2014.
    [InlineData(99.9, 1)]
    [InlineData(100, 0)]
    [InlineData(101, 0)]
    public void A_knee_that_bends_well_need_not_gain(double degrees, int warnings) =>
        Assert.Equal(warnings, Warned(Bends((24, 97), (42, degrees)), "FLEXION-NO-GAIN"));

    [Fact] // A knee under the floor in week 6 has its red flag, and that is enough.
    public void The_red_flag_of_a_stiff_knee_speaks_alone()
    {
        Knee stiff = Bends((24, 85), (35, 85));

        Assert.Equal((0, 0, 1), (Warned(stiff, "FLEXION-NO-GAIN"), Warned(stiff, "FLEXION-CHANCE"), Warned(stiff, "LADDER-REFER-STIFF")));
    }
}
