using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Caseload;
using Progression.App.Pictures;
using Progression.App.Start;
using Progression.App.Tests.Actions;
using Progression.App.Tests.Pictures;
using Progression.Core.People;

namespace Progression.App.Tests.Start;

/// <summary>The list narrowed, ordered and read.</summary>
public sealed class StartListTests
{
    private static readonly StartState Demo = SampleStart.Demo;

    [Fact]
    public void The_list_looks_like_this_wide_in_colour_and_without()
    {
        Snapshot.Match(Draw(Demo.To(4), 200, 60).Text, "start-list-200x60");
        Snapshot.Match(InkMap.Of(Draw(Demo.To(4), 80, 24)), "start-list-inks-80x24");
        Snapshot.Match(InkMap.Of(Draw(Demo.To(4), 200, 60)), "start-list-inks-200x60");
        Snapshot.Match(SevenBit.Of(Draw(Press(Demo, "o"), 80, 24).Text.Replace('\n', '|')).Replace('|', '\n'), "start-list-ascii-80x24");
    }

    [Fact]
    public void Finding_looks_like_this()
    {
        Snapshot.Match(Draw(Typed(Press(Demo, "/"), "ri"), 80, 24).Text, "start-find-80x24");
        Snapshot.Match(Draw(Typed(Press(Demo, "/"), "nobody"), 80, 24).Text, "start-nothing-80x24");
    }

    [Fact]
    public void Every_letter_narrows_the_list_and_rubbing_out_widens_it()
    {
        StartState finding = Typed(Press(Demo, "/"), "n-0");

        Assert.Equal(["AVOCET-10"], Typed(Press(Demo, "/"), "avo").Shown.Select(line => line.Code.Text));
        Assert.Equal(["DUNLIN-04", "HERON-05", "WREN-07"], finding.Shown.Select(line => line.Code.Text));
        Assert.Equal(12, Press(finding, "Backspace", "Backspace", "Backspace").Shown.Length);
        Assert.All(Typed(Press(Demo, "/"), "LEFT").Shown, line => Assert.Equal("left", line.Knee));
        Assert.Equal(12, Typed(Press(Demo, "/"), "anna").Shown.Length);
    }

    [Fact]
    public void Enter_opens_what_is_found_and_the_list_keeps_it()
    {
        Step<StartState> step = StartScreen.Definition.Press(Press(Typed(Press(Demo, "/"), "n-0"), "Down"), "Enter");

        Assert.Equal([new OpenPlan(CaseCode.Parse("HERON-05")!)], step.Effects);
        Assert.Equal((StartMode.List, 3), (step.State.Mode, step.State.Shown.Length));
    }

    [Fact]
    public void Esc_shows_all_again_and_the_cursor_stays_on_its_case()
    {
        StartState found = Press(Typed(Press(Demo, "/"), "wren"), "Tab");

        Assert.Equal((StartMode.List, "WREN-07"), (found.Mode, found.Chosen!.Code.Text));
        StartState all = Press(found, "Esc");
        Assert.Equal((12, "WREN-07", ""), (all.Shown.Length, all.Chosen!.Code.Text, all.Finding.Text));
        Assert.Contains("q leaves", Press(all, "Esc").Status, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_is_found_nothing_opens()
    {
        StartState none = Typed(Press(Demo, "/"), "nobody");

        Assert.Empty(StartScreen.Definition.Press(none, "Enter").Effects);
        Assert.Contains("Esc shows all", Press(none, "Enter").Status, StringComparison.Ordinal);
        Assert.Null(Press(none, "Tab", "Down", "End", "PgUp").Chosen);
    }

    [Fact]
    public void Pasted_text_is_looked_for_and_is_never_a_command()
    {
        Assert.Equal("q n d", StartScreen.Definition.Paste(Press(Demo, "/"), "q\nn\nd").Finding.Text);
        Assert.Contains("ignored", StartScreen.Definition.Paste(Demo, "q").Status, StringComparison.Ordinal);
    }

    // The demo's situations: LARK-03 waits for its reassessment; CRANE-12 and DUNLIN-04 are behind; flags, a contraindication and open screening block.
    [Theory]
    [InlineData(1, "LARK-03")]
    [InlineData(2, "CRANE-12 DUNLIN-04")]
    [InlineData(4, "CRANE-12 DUNLIN-04 PLOVER-02 SNIPE-08")]
    [InlineData(6, "")]
    public void F_goes_through_what_is_to_be_done(int presses, string codes) => Assert.Equal(
        codes.Split(' ', StringSplitOptions.RemoveEmptyEntries),
        Press(Demo, [.. Enumerable.Repeat("f", presses)]).Shown.Select(line => line.Code.Text));

    [Fact]
    public void The_choice_goes_round_both_ways_and_says_so()
    {
        Assert.Equal("Only: due.", Press(Demo, "f").Status);
        Assert.Equal(CaseFilter.Drafts, Press(Demo, "F").Choice.Filter);
        Assert.Equal("All cases.", Press(Demo, "f", "F").Status);
        Assert.Equal("Ordered by due.", Press(Demo, "o").Status);
        Assert.Equal(CaseOrder.Code, Press(Demo, "o", "O").Choice.Order);
    }

    [Theory]
    [InlineData(0, "AVOCET-10")]
    [InlineData(1, "LARK-03")]
    [InlineData(2, "TERN-11")]
    [InlineData(3, "AVOCET-10")]
    public void O_goes_through_the_orders(int presses, string first)
    {
        StartState ordered = Press(Demo.To(5), [.. Enumerable.Repeat("o", presses)]);

        Assert.Equal(first, ordered.Shown[0].Code.Text);
        Assert.Equal(presses == 0 ? 5 : 0, ordered.Index);
    }

    [Fact]
    public void The_title_tells_how_many_of_how_many_and_how_they_were_chosen()
    {
        StartState many = Demo with { Cases = [.. Enumerable.Range(0, 10_000).Select(number => Demo.Shown[number % 12] with { Code = CaseCode.Parse($"K-{number:00000}")! })] };

        Assert.Contains("10,000 cases", Title(many), StringComparison.Ordinal);
        Assert.Contains("behind, by due: 1,668 of 10,000 cases", Title(Press(many, "o", "f", "f")), StringComparison.Ordinal);
        Assert.Contains("\"k-00012\": 1 of 10,000 cases", Title(Typed(Press(many, "/"), "k-00012")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_said_of_a_case_stands_under_the_list_and_follows_the_cursor()
    {
        Assert.Contains("LARK-03: reassess since 2026-11-22", Draw(Demo.To(4), 80, 24).Text, StringComparison.Ordinal);
        Assert.Contains("CRANE-12: Red flag: ", Draw(Demo.To(1), 80, 24).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Hints_fit_and_the_list_fits_every_window()
    {
        KeyTableRules.HintsFit(StartActions.Table, Demo);
        KeyTableRules.HintsFit(StartActions.Table, Press(Demo, "/"));
        AnySize.Fits(size => StartScreen.Definition.Draw(Demo, size));
        AnySize.Fits(size => StartScreen.Definition.Draw(Typed(Press(Demo, "/"), "zz"), size));
        AnyKeys.Hold(StartScreen.Definition, Demo);
    }

    private static string Title(StartState state) => Draw(state, 80, 24).Rows[0].Text;

    private static Picture Draw(StartState state, int width, int height) => StartScreen.Definition.Draw(state, new(width, height)).Fit(new(width, height));

    private static StartState Press(StartState state, params ImmutableArray<string> keys) =>
        keys.Aggregate(state, (now, key) => StartScreen.Definition.Press(now, key, key.Length == 1 ? key : null).State);

    private static StartState Typed(StartState state, string text) => text.Aggregate(state, (now, letter) => StartScreen.Definition.Press(now, letter.ToString(), letter.ToString()).State);
}
