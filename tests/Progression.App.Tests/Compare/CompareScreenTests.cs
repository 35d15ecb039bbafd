using Progression.App.Actions;
using Progression.App.Compare;
using Progression.App.Pictures;
using Progression.App.Tests.Actions;
using Progression.App.Tests.Pictures;

namespace Progression.App.Tests.Compare;

public sealed class CompareScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void The_comparison_looks_as_reviewed(int width, int height) => Snapshot.Match(Text(State.To(3), width, height), $"compare-{width}x{height}");

    [Fact]
    public void Its_pages_look_as_reviewed()
    {
        Snapshot.Match(Text(Press(State, "Enter")), "compare-why-80x24");
        Snapshot.Match(Text(Press(State, "?")), "compare-help-80x24");
    }

    [Fact]
    public void In_seven_bits_it_looks_as_reviewed() =>
        Snapshot.Match(string.Join('\n', Text(State).Split('\n').Select(SevenBit.Of)), "compare-ascii-80x24");

    [Fact]
    public void What_was_not_measured_is_a_dash_and_never_a_zero()
    {
        string effusion = Text(State).Split('\n').Single(line => line.Contains("Effusion", StringComparison.Ordinal));
        Assert.Contains(ComparePicture.NotMeasured, effusion, StringComparison.Ordinal);
        Assert.DoesNotContain("0", effusion[..50], StringComparison.Ordinal);
        Assert.Contains("Not measured at the newest visit.", Text(State.To(5)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_newest_visit_is_shown_however_far_one_goes_back()
    {
        CompareState back = Press(State, "Left", "Left", "Left", "Left", "Left", "Left", "Left", "Left", "Left");
        string head = Text(back).Split('\n')[1];
        Assert.Contains("pre-op", head, StringComparison.Ordinal);
        Assert.Contains("wk 9", head, StringComparison.Ordinal);
        Assert.Contains("between", head, StringComparison.Ordinal);
        Assert.Equal("There are no older visits.", Press(back, "Left").Status);
        Assert.Equal("The newest visits are shown.", Press(State, "Right").Status);
    }

    [Fact]
    public void A_change_is_never_called_unchanged()
    {
        Assert.Contains("~ -2 no detectable change\n", Text(State), StringComparison.Ordinal);
        Assert.DoesNotContain("unchanged", Text(State), StringComparison.Ordinal);
    }

    [Fact]
    public void A_small_unit_is_told_in_hundredths()
    {
        Assert.Equal("0.29", MeasureLabel.Value(SampleComparison.Measure("torque_per_mass", "Torque per mass", "Nm/kg", Core.Library.Direction.HigherIsBetter) with { Most = 6 }, 0.291));
        Assert.Equal("15.5", MeasureLabel.Value(SampleComparison.Rises, 15.46));
    }

    [Fact]
    public void A_measure_seen_once_has_nothing_to_compare_with() =>
        Assert.Contains("Measured once: there is nothing to compare with yet.", Text(State.To(6)), StringComparison.Ordinal);

    [Fact]
    public void A_measure_that_cannot_be_classed_says_why() =>
        Assert.Contains("? not classed. One step on a scale of steps waits to be seen again.", string.Join(' ', Text(State.To(5), 200, 50).Split('\n')), StringComparison.Ordinal);

    [Fact]
    public void The_chart_of_the_row_is_asked_for()
    {
        Step<CompareState> step = CompareScreen.Definition.Press(State.To(3), "c");
        Assert.Equal([new ShowChart("quadriceps_torque")], step.Effects);
    }

    [Fact]
    public void With_nothing_measured_it_says_so_and_opens_nothing()
    {
        Assert.Contains("Nothing has been measured yet.", Text(SampleComparison.Empty), StringComparison.Ordinal);
        Assert.Empty(CompareScreen.Definition.Press(SampleComparison.Empty, "c").Effects);
        Assert.Equal("Nothing has been measured yet.", Press(SampleComparison.Empty, "Enter").Status);
    }

    [Fact]
    public void Moving_stops_at_both_ends()
    {
        Assert.Equal(0, Press(State, "Up").Index);
        Assert.Equal(6, Press(State, "End", "Down", "PgDn").Index);
    }

    [Fact]
    public void Its_keys_keep_the_rules_of_all_screens()
    {
        KeyTableRules.Hold(CompareActions.Table);
        Assert.All(ComparePicture.HelpLines(State), line => Assert.InRange(line.Length, 1, 80));
        Assert.All([State, SampleComparison.Empty with { Mode = CompareMode.Help }, Press(State, "w"), Press(State, "Left")], state => KeyTableRules.HintsFit(CompareActions.Table, state));
    }

    [Fact]
    public void No_order_of_keys_breaks_it()
    {
        AnyKeys.Hold(CompareScreen.Definition, State);
        AnyKeys.Hold(CompareScreen.Definition, SampleComparison.Empty);
    }

    [Fact]
    public void It_fits_every_window() =>
        Assert.All(
            [State, State.To(6), Press(State, "Left"), Press(State, "Left", "Left", "Left"), Press(State, "w"), Press(State, "?"), SampleComparison.Empty],
            state => AnySize.Fits(size => ComparePicture.Draw(state, size)));

    private static CompareState State => SampleComparison.State;

    private static string Text(CompareState state, int width = 80, int height = 24) => ComparePicture.Draw(state, new(width, height)).Fit(new(width, height)).Text;

    private static CompareState Press(CompareState state, params string[] keys) =>
        keys.Aggregate(state, (now, key) => CompareScreen.Definition.Press(now, key, key.Length == 1 ? key : null).State);
}
