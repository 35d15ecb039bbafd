using Progression.App.Chart;
using Progression.App.Pictures;
using Progression.App.Tests.Actions;
using Progression.App.Tests.Pictures;
using Progression.Core.Plots;

namespace Progression.App.Tests.Chart;

public sealed class ChartScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void The_chart_looks_as_reviewed(int width, int height) => Snapshot.Match(Text(State, width, height), $"chart-{width}x{height}");

    [Fact]
    public void Its_other_faces_look_as_reviewed()
    {
        Snapshot.Match(string.Join('\n', Text(State).Split('\n').Select(SevenBit.Of)), "chart-ascii-80x24");
        Snapshot.Match(Text(Press(State, "t")), "chart-numbers-80x24");
        Snapshot.Match(Text(Press(State, "w"), 80, 50), "chart-why-80x50");
        Snapshot.Match(Text(Press(State, "z"), 120, 40), "chart-whole-120x40");
        Snapshot.Match(Text(SampleChart.Withheld), "chart-withheld-80x24");
        Snapshot.Match(Text(SampleChart.Of(SampleChart.Walk)), "chart-plain-80x24");
    }

    [Fact]
    public void A_forecast_that_is_withheld_says_why_and_the_readings_stay()
    {
        string text = Text(SampleChart.Withheld);
        Assert.Contains("No forecast: A red flag is open", text, StringComparison.Ordinal);
        Assert.DoesNotContain('▒', text);
        Assert.Equal(4, text.Count(letter => letter == '●')); // three readings and the legend
    }

    [Fact]
    public void Beyond_the_published_data_there_is_no_band()
    {
        string[] rows = Text(Press(State, "z")).Split('\n');
        IEnumerable<string> right = rows.Skip(2).Take(12).Select(row => row.PadRight(80)[60..]);
        Assert.All(right, part => Assert.DoesNotContain('▒', part));
        Assert.Contains(right, part => part.Contains("· ·", StringComparison.Ordinal));
    }

    [Fact]
    public void No_single_date_is_ever_promised()
    {
        string text = Text(Press(State, "w"), 200, 50);
        Assert.Contains("about 2 in 10 by week 8", text, StringComparison.Ordinal);
        Assert.DoesNotContain("will be", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_words_of_a_goal_cover_no_reading_and_no_other_goal()
    {
        ChartSubject crowded = SampleChart.Flexion with { Goals = [.. Enumerable.Range(1, 11).Select(week => SampleChart.Flexion.Goals[0] with { Week = week, Target = 88 })] };
        string[] rows = Text(SampleChart.Of(crowded)).Split('\n');
        Assert.Equal(10, rows.Sum(row => row.Count(letter => letter == '◇')) - 1); // one of the eleven lies under the third reading; the legend has one more
        Assert.Equal(4, rows.Take(15).Sum(row => row.Count(letter => letter == '●')) + 1);
        Assert.DoesNotContain(rows, row => row.Contains("88 by wk", StringComparison.Ordinal));
    }

    [Fact]
    public void A_surprise_asks_for_another_measurement()
    {
        ChartSubject off = SampleChart.Flexion with
        {
            Forecast = SampleChart.Flexion.Forecast! with { Surprise = new(-2.7, true, "off the chart: re-measure, check rater and position, look at the red flags") },
        };
        Assert.Contains("! The newest reading is off the chart: re-measure", Text(SampleChart.Of(off)), StringComparison.Ordinal);
    }

    [Fact]
    public void Weeks_and_measures_stop_at_their_ends()
    {
        ChartState two = SampleChart.Of(SampleChart.Flexion, SampleChart.Walk);
        Assert.Equal(1, Press(two, "Home", "Left").Week);
        Assert.Equal(12, Press(two, "End", "Right").Week);
        Assert.Equal(26, Press(two, "z", "End", "Right").Week);
        Assert.Equal(1, Press(two, "n").Index);
        Assert.Equal("This is the last measure.", Press(two, "n", "n").Status);
        Assert.Equal("This is the first measure.", Press(two, "p").Status);
    }

    [Fact]
    public void A_cursor_beyond_the_next_measure_s_weeks_comes_back()
    {
        ChartState two = SampleChart.Of(SampleChart.Flexion, SampleChart.Walk);
        Assert.Equal(12, Press(two, "z", "End", "n").Week);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void The_terminal_s_cursor_rests_on_the_words(int width, int height)
    {
        Picture picture = ChartPicture.Draw(State, new(width, height));
        Assert.StartsWith("End of week 4", picture.Rows[picture.Caret!.Row].Text[picture.Caret.Column..], StringComparison.Ordinal);
    }

    [Fact]
    public void With_nothing_measured_it_says_so()
    {
        Assert.Contains("nothing to chart", Text(SampleChart.Of()), StringComparison.Ordinal);
        Assert.Equal("Nothing has been measured yet.", Press(SampleChart.Of(), "w").Status);
    }

    [Fact]
    public void Its_keys_keep_the_rules_of_all_screens()
    {
        KeyTableRules.Hold(ChartActions.Table);
        Assert.All(ChartPicture.HelpLines(State), line => Assert.InRange(line.Length, 1, 80));
        Assert.All([State, Press(State, "t"), Press(State, "w"), Press(State, "?")], state => KeyTableRules.HintsFit(ChartActions.Table, state));
    }

    [Fact]
    public void No_order_of_keys_breaks_it()
    {
        AnyKeys.Hold(ChartScreen.Definition, SampleChart.Of(SampleChart.Flexion, SampleChart.Walk));
        AnyKeys.Hold(ChartScreen.Definition, SampleChart.Of());
    }

    [Fact]
    public void It_fits_every_window() =>
        Assert.All(
            [
                State, Press(State, "z"), Press(State, "End"), Press(State, "Home"), Press(State, "t"), Press(State, "w"), Press(State, "?"),
                SampleChart.Withheld, SampleChart.Of(SampleChart.Walk), SampleChart.Of(), State with { Today = 40 }, State with { Today = -1 },
            ],
            state => AnySize.Fits(size => ChartPicture.Draw(state, size)));

    private static ChartState State => SampleChart.State;

    private static string Text(ChartState state, int width = 80, int height = 24) => ChartPicture.Draw(state, new(width, height)).Fit(new(width, height)).Text;

    private static ChartState Press(ChartState state, params string[] keys) =>
        keys.Aggregate(state, (now, key) => ChartScreen.Definition.Press(now, key, key.Length == 1 ? key : null).State);
}
