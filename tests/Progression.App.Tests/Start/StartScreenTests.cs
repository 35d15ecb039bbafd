using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Start;
using Progression.Core.Forecasts;
using Progression.Core.People;
using Progression.Records.Library;

namespace Progression.App.Tests.Start;

public sealed class StartScreenTests
{
    [Fact]
    public void The_list_of_the_demo_looks_like_this() => Snapshot.Match(Text(Demo().To(4)), "start-list-80x24");

    [Fact]
    public void The_first_run_looks_like_this() => Snapshot.Match(Text(Empty), "start-first-80x24");

    [Fact]
    public void The_help_looks_like_this() => Snapshot.Match(Text(Press(Demo(), "?")), "start-help-80x24");

    [Fact]
    public void Enter_asks_for_the_plan_under_the_cursor()
    {
        Assert.Equal([new OpenPlan(CaseCode.Parse("DUNLIN-04")!)], Asked(Press(Demo(), "Down", "Down"), "Enter"));
    }

    [Fact]
    public void The_data_and_the_screening_of_a_case_have_their_keys()
    {
        Assert.Equal([new ChangeCase(CaseCode.Parse("DUNLIN-04")!)], Asked(Press(Demo(), "Down", "Down"), "i"));
        Assert.Equal([new ScreenCase(CaseCode.Parse("DUNLIN-04")!)], Asked(Press(Demo(), "Down", "Down"), "S"));
    }

    [Fact]
    public void An_empty_list_offers_the_demo_and_a_new_case_and_opens_nothing()
    {
        Assert.Contains("n makes one, d shows the demo", Press(Empty, "Enter").Status, StringComparison.Ordinal);
        Assert.Equal([new ShowDemo()], Asked(Empty, "d"));
        Assert.Equal([new NewCase()], Asked(Empty, "n"));
        Assert.Empty(Asked(Empty, "i"));
    }

    [Fact]
    public void The_demo_does_not_open_itself_again() => Assert.Empty(Asked(Demo(), "d"));

    [Fact]
    public void Moving_stops_at_both_ends()
    {
        Assert.Equal(0, Press(Demo(), "Up").Index);
        Assert.Equal(11, Press(Demo(), "End", "Down", "PgDn").Index);
        Assert.Equal(0, Press(Empty, "Down").Index);
    }

    [Fact]
    public void A_long_list_scrolls_by_pages_and_always_shows_the_cursor()
    {
        StartState demo = Demo();
        StartState many = demo with { Cases = [.. Enumerable.Range(0, 400).Select(number => demo.Cases[0] with { Code = CaseCode.Parse($"K-{number:000}")! })] };
        foreach (int index in new[] { 0, 18, 19, 20, 200, 399 })
        {
            Assert.Contains($"K-{index:000}", Text(many.To(index)), StringComparison.Ordinal);
        }
    }

    // The library's limits, common practice there: told from 30 scored forecasts on, a warning under 70 %.
    [Theory]
    [InlineData(29, 29, null)]
    [InlineData(30, 21, "21 of 30 readings (70 %)")]
    [InlineData(30, 20, "! 20 of 30 readings (67 %)")]
    public void How_often_forecasts_held_stands_under_the_list(int scored, int hits, string? told)
    {
        StartState demo = Demo();
        StartState many = demo with
        {
            Cases = [.. Enumerable.Range(0, 400).Select(number => demo.Cases[0] with { Code = CaseCode.Parse($"K-{number:000}")! })],
            HitRate = HitRate.Of(scored, hits, LibraryReader.Default()),
        };
        foreach (int index in new[] { 0, 17, 18, 399 })
        {
            string text = Text(many.To(index));
            Assert.Contains($"K-{index:000}", text, StringComparison.Ordinal);
            Assert.Equal(told is not null, text.Contains($"\n{told ?? "of the forecast before"}", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_draft_that_is_kept_is_marked_and_hostile_names_stay_harmless()
    {
        StartState demo = Demo();
        string text = Text(demo with { Cases = [demo.Shown[0] with { HasDraft = true, SavedBy = "x\u001b[2J\u202E" }] });
        Assert.Contains("K  ", text.Split('\n')[2], StringComparison.Ordinal);
        Assert.Contains("draft kept", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', text);
        Assert.DoesNotContain('\u202E', text);
    }

    private static ImmutableArray<ScreenEffect> Asked(StartState state, string key) => StartScreen.Definition.Press(state, key).Effects;

    private static StartState Empty => SampleStart.Empty;

    private static StartState Demo() => SampleStart.Demo;

    private static string Text(StartState state) => StartPicture.Draw(state, new(80, 24)).Fit(new(80, 24)).Text;

    private static StartState Press(StartState state, params string[] keys) =>
        keys.Aggregate(state, (now, key) => StartScreen.Definition.Press(now, key, key.Length == 1 ? key : null).State);
}
