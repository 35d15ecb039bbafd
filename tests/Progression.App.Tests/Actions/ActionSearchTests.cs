using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Tests.Grid;

namespace Progression.App.Tests.Actions;

public sealed class ActionSearchTests
{
    private static readonly IReadOnlyList<ActionChoice> Grid = GridActions.Table.Choices(Sample.State);

    [Theory]
    [InlineData("save", "save")]
    [InlineData("Ctrl+S", "save")]
    [InlineData("ctrl+s", "save")]
    [InlineData("w", "why")]
    [InlineData("T", "try-out")]
    [InlineData("t", "present-week")]
    [InlineData("next finding", "finding-on")]
    [InlineData("what if", "try-out")]
    [InlineData("log a session", "log")]
    [InlineData("red flags", "flags")]
    [InlineData("UNDO", "undo")]
    [InlineData("first week", "first-week")]
    public void Words_a_name_or_a_key_find_the_action_that_is_meant(string typed, string name) =>
        Assert.Equal(name, ActionSearch.Meant(ActionSearch.Best(Grid, typed))?.Name);

    [Fact]
    public void Words_that_could_be_several_mean_none_and_list_them()
    {
        IReadOnlyList<ActionMatch> best = ActionSearch.Best(Grid, "lane");
        Assert.Null(ActionSearch.Meant(best));
        string[] found = [.. best.Select(match => match.Choice.Name)];
        Assert.All(["first-lane", "last-lane", "up", "down"], name => Assert.Contains(name, found));
    }

    [Fact]
    public void Words_of_no_action_find_none() => Assert.Empty(ActionSearch.Best(Grid, "save zebra"));

    [Fact]
    public void Nothing_typed_lists_all_in_the_order_of_the_table() =>
        Assert.Equal(Grid.Select(choice => choice.Id), ActionSearch.Best(Grid, " ").Select(match => match.Choice.Id));

    [Theory]
    [InlineData("q", "quit")]
    [InlineData("w", "save")]
    [InlineData("x", null)]
    public void A_letter_leaves_or_saves_by_custom(string typed, string? name) => Assert.Equal(name, ActionSearch.Short(Grid, typed)?.Name);
}
