using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Plain;
using Progression.App.Tests.Actions;
using Progression.App.Tests.Grid;

namespace Progression.App.Tests.Plain;

public sealed class PlainTalkTests
{
    private readonly ScreenStack _screens = new(new Frame<GridState>(GridScreen.Definition, Sample.State));
    private readonly PlainTalk _talk;

    public PlainTalkTests() => _talk = new(_screens);

    [Fact]
    public void It_begins_with_where_the_person_is_and_what_is_under_the_cursor()
    {
        IReadOnlyList<string> said = _talk.Begin();
        Assert.StartsWith("Grid. K-014", said[1], StringComparison.Ordinal);
        Assert.StartsWith("Flexion, week 3, the present week: goal 90", said[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Only_what_changed_is_said()
    {
        _talk.Begin();
        IReadOnlyList<string> moved = _talk.Hear("right");
        Assert.StartsWith("Flexion, week 4", Assert.Single(moved), StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_value_says_why_and_asks_again_and_an_empty_answer_keeps_the_old()
    {
        _talk.Begin();
        _talk.Hear("edit");
        IReadOnlyList<string> said = _talk.Hear("999");
        Assert.Contains("out of range", said[0], StringComparison.Ordinal);
        Assert.Contains("from 0 to 160", said[0], StringComparison.Ordinal);
        Assert.Equal(["Flexion, week 3?", "Now: 90 deg."], said.Skip(1));
        _talk.Hear("");
        Assert.False(Grid.IsUnsaved);
        Assert.Equal(GridMode.Grid, Grid.Mode);
    }

    [Fact]
    public void Against_a_safety_rule_it_asks_for_the_reason()
    {
        _talk.Begin();
        IReadOnlyList<string> said = _talk.Hear("go quads strength week 3").Count > 0 ? _talk.Hear("clear") : [];
        Assert.Contains(said, line => line.StartsWith("Why is it right for Quads strength, week 3?", StringComparison.Ordinal) && line.Contains("no voluntary quadriceps work", StringComparison.Ordinal));
        _talk.Hear("");
        Assert.False(Grid.IsUnsaved);
        _talk.Hear("resting for three days");
        Assert.Contains(Grid.Plan.Cells.Values, cell => cell.Pin?.Reason == "resting for three days");
    }

    [Fact]
    public void Where_an_answer_is_asked_for_a_colon_makes_a_command()
    {
        _talk.Begin();
        _talk.Hear("edit");
        Assert.Contains(_talk.Hear(":actions"), line => line.StartsWith("take: ", StringComparison.Ordinal));
        _talk.Hear(":back");
        Assert.Equal(GridMode.Grid, Grid.Mode);
    }

    [Theory]
    [InlineData("go flexion week 5", 5)]
    [InlineData("go week 2", 2)]
    [InlineData("last week", 6)]
    public void Places_are_gone_to_by_name(string line, int week)
    {
        _talk.Begin();
        _talk.Hear(line);
        Assert.Equal((week, "Flexion"), (Grid.Week, Grid.Lane.Title));
    }

    [Fact]
    public void A_name_that_fits_several_places_asks_which()
    {
        _talk.Begin();
        Assert.Contains(_talk.Hear("go quads"), line => line.StartsWith("That could be: ", StringComparison.Ordinal));
        Assert.Equal(0, Grid.LaneIndex);
    }

    [Theory]
    [InlineData("zebra", "Nothing here is called \"zebra\"")]
    [InlineData("go zebra", "Nothing here is called \"go zebra\"")]
    [InlineData("read zebra", "Nothing here is called \"read zebra\"")]
    [InlineData("go flexion week 99", "Nothing here is called")]
    [InlineData("undo", "There is nothing to undo.")]
    [InlineData("lane", "things; say one of these")]
    public void What_cannot_be_done_says_why(string line, string why)
    {
        _talk.Begin();
        Assert.Contains(why, _talk.Hear(line)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void An_action_that_only_sounds_alike_is_asked_about_and_not_done()
    {
        _talk.Begin();
        Assert.Equal(["Is it this?", "try out: what if: try readings and doses out on a scratch copy. Key T."], _talk.Hear("scratc"));
    }

    [Fact]
    public void The_actions_are_those_of_the_table_with_their_keys()
    {
        _talk.Begin();
        IReadOnlyList<string> now = _talk.Hear("actions");
        Assert.Contains("why: the whole answer to why this cell is so. Key w.", now);
        Assert.DoesNotContain(now, line => line.StartsWith("undo", StringComparison.Ordinal));
        Assert.Contains("undo: take the last change back, as often as you like. Key u. Not now: There is nothing to undo.", _talk.Hear("actions all"));
    }

    [Theory]
    [InlineData(":q")]
    [InlineData("q")]
    [InlineData("quit")]
    [InlineData("Ctrl+Q")]
    [InlineData("back")]
    [InlineData("end")]
    public void It_is_left_by_any_of_the_usual_words(string line)
    {
        _talk.Begin();
        _talk.Hear(line);
        Assert.True(_talk.IsOver);
        Assert.Empty(_talk.Hear("anything"));
    }

    [Theory]
    [InlineData("edit", ":end")]
    [InlineData("fill", " : end")]
    [InlineData("where", "end")]
    public void End_leaves_the_program_also_where_an_action_or_a_key_has_that_name(string first, string line)
    {
        _talk.Begin();
        _talk.Hear(first);
        _talk.Hear(line);
        Assert.True(_talk.IsOver);
    }

    [Fact]
    public void Back_goes_by_what_the_table_calls_the_way_back_and_not_by_a_key()
    {
        ActionTable<Lamp> table = new(
            lamp => lamp.On ? "on" : "off",
            [
                .. new[] { ActionRow.Shows<Lamp>("read", ["Esc"], "read on", lamp => lamp with { Name = "read" }) }.In("off", "Reading"),
                .. new[] { ActionRow.Shows<Lamp>("light", ["x"], "to the light", lamp => lamp with { On = true }).AsBack() }.In("off", "Reading"),
                .. new[] { ActionRow.Shows<Lamp>("off", ["o"], "off", lamp => lamp with { On = false }) }.In("on", "Lit"),
            ]);
        ScreenStack screens = new(new Frame<Lamp>(Lamp.Screen with { Actions = table }, new Lamp()));
        PlainTalk talk = new(screens);
        talk.Hear("back");
        Assert.Equal(new Lamp(On: true), Assert.IsType<Frame<Lamp>>(screens.Top).State);
        Assert.Equal(["Nothing here is called \"back\"; actions lists what can be done."], talk.Hear("back"));
    }

    [Fact]
    public void Reading_a_week_and_a_lane_gives_a_sentence_a_cell()
    {
        _talk.Begin();
        Assert.Contains("Flexion: goal 100 deg.", _talk.Hear("read week 4"));
        Assert.Equal(1 + Sample.State.Plan.Weeks, _talk.Hear("read lane flexion").Count);
    }

    private GridState Grid => Assert.IsType<Frame<GridState>>(_screens.Top).State;
}
