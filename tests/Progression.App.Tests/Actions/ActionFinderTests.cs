using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Tests.Grid;

namespace Progression.App.Tests.Actions;

public sealed class ActionFinderTests
{
    private readonly ScreenStack _screens = new(new Frame<GridState>(GridScreen.Definition, Sample.State));

    [Theory]
    [InlineData(":")]
    [InlineData("Ctrl+P")]
    public void Words_find_an_action_and_Enter_does_it_on_the_screen_below(string key)
    {
        Type(key, "last week", "Enter");
        Assert.Equal(Grid.Plan.Weeks, Grid.Week);
    }

    [Fact]
    public void Esc_leaves_and_nothing_is_done()
    {
        Type(":", "last week", "Esc");
        Assert.Equal(Sample.State.Week, Grid.Week);
    }

    [Fact]
    public void An_action_that_cannot_act_now_is_listed_with_its_reason_and_not_done()
    {
        Type(":", "undo");
        Assert.Contains("not now: There is nothing to undo.", _screens.Draw(new(80, 24)).Text, StringComparison.Ordinal);
        Type("Enter");
        Assert.Equal("There is nothing to undo.", Find.Status);
    }

    [Fact]
    public void A_colon_and_q_leaves_the_screen()
    {
        Type(":", "q", "Enter");
        Assert.Null(_screens.Top);
    }

    [Fact]
    public void A_colon_and_w_saves_where_there_is_something_to_save()
    {
        Type(":", "w");
        Assert.Equal("save", Find.Chosen?.Name);
        Type("Enter");
        Assert.Equal("Everything is saved.", Find.Status);
    }

    [Fact]
    public void The_arrows_choose_among_the_actions_found()
    {
        Type(":", "week");
        string first = Find.Chosen!.Name;
        Type("Down");
        Assert.NotEqual(first, Find.Chosen!.Name);
        Type("Up", "Up");
        Assert.Equal(first, Find.Chosen!.Name);
    }

    [Fact]
    public void Where_text_is_typed_a_colon_is_text()
    {
        Type("Enter");
        Assert.Equal(GridMode.Edit, Grid.Mode);
        Type(":");
        Assert.Contains(":", Grid.Entry!.Line.Text, StringComparison.Ordinal);
        Type("Ctrl+P", "as it was", "Enter");
        Assert.Equal(GridMode.Grid, Grid.Mode);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void It_lies_over_the_foot_of_the_screen(int width, int height)
    {
        Type(":", "week");
        Faces.Match(_screens.Draw(new(width, height)), $"find-{width}x{height}");
        Type("Ctrl+U", "zebra");
        Faces.Match(_screens.Draw(new(width, height)), $"find-none-{width}x{height}");
    }

    [Fact]
    public void Any_keys_in_any_order_leave_it_whole() => AnyKeys.Hold(ActionFinder.Definition, new FindState(_screens.Top!));

    [Fact]
    public void Its_own_keys_are_shown_and_told()
    {
        KeyTableRules.Hold(ActionFinder.Table);
        KeyTableRules.HintsFit(ActionFinder.Table, new FindState(_screens.Top!));
    }

    private GridState Grid => Assert.IsType<Frame<GridState>>(_screens.Top).State;

    private FindState Find => Assert.IsType<Frame<FindState>>(_screens.Top).State;

    private void Type(params string[] steps)
    {
        foreach (string step in steps)
        {
            if (step.Length > 1 && (char.IsLower(step[0]) || step.Contains(' ')))
            {
                _screens.Paste(step);
            }
            else
            {
                _screens.Press(step, step.Length == 1 ? step : null);
            }
        }
    }
}
