using Progression.App.Browse;
using Progression.App.Pictures;
using Progression.App.Tests.Actions;
using Progression.App.Tests.Grid;
using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.App.Tests.Browse;

public sealed class BrowseScreenTests
{
    private static readonly ClinicalLibrary Library = LibraryReader.Default();
    private static readonly BrowseState Start = BrowseState.Open(Library);

    [Fact]
    public void Every_entry_of_every_kind_is_there_with_figures_source_and_standing()
    {
        string[] kinds = ["limit", "rung", "regimen", "exercise", "milestone", "screening question", "measure", "red flag", "prior"];
        Assert.Equal(kinds, Start.All.Select(card => card.Kind).Distinct().Take(kinds.Length));
        Assert.All(Enumerable.Range(0, Start.All.Length), at =>
        {
            string text = BrowseScreen.Definition.Draw(Start.To(at) with { Mode = BrowseMode.Entry }, new(100, 120)).Text;
            Assert.Contains("\nSource: ", text, StringComparison.Ordinal);
            Assert.Contains("\nStanding: ", text, StringComparison.Ordinal);
        });
        string limit = BrowseScreen.Definition.Draw(At("ladder.lag-closed") with { Mode = BrowseMode.Entry }, new(100, 30)).Text;
        Assert.Contains("5 deg", limit, StringComparison.Ordinal);
    }

    [Fact]
    public void The_list_follows_what_is_typed_and_Esc_shows_all_again()
    {
        BrowseState found = Type(Press(Start, "/"), "quadriceps index");
        Assert.NotEmpty(found.Shown);
        Assert.True(found.Shown.Length < found.All.Length);
        Assert.All(found.Shown, card => Assert.Contains(card.Fields, field => field.Text.Contains("index", StringComparison.OrdinalIgnoreCase)));
        Assert.Equal(BrowseMode.List, Press(found, "Enter").Mode);
        Assert.Equal(found.Shown.Length, Press(found, "Enter").Shown.Length);
        Assert.Equal(Start.All.Length, Press(found, "Esc").Shown.Length);
        Assert.Equal(Start.All.Length, Press(Press(found, "Enter"), "x").Shown.Length);
    }

    [Fact]
    public void Words_of_no_entry_say_so()
    {
        BrowseState none = Type(Press(Start, "/"), "zebra");
        Assert.Contains("No entry has these words.", Text(none), StringComparison.Ordinal);
        Assert.Equal("No entry has these words: x shows all.", Press(Press(none, "Enter"), "Enter").Status);
    }

    [Fact]
    public void Kinds_are_walked_one_by_one()
    {
        BrowseState rung = Press(Start, "Tab");
        Assert.Equal("rung", rung.Chosen?.Kind);
        Assert.Equal("limit", Press(rung, "Shift+Tab").Chosen?.Kind);
        Assert.Equal("prior", Press(Start, "Tab", "Tab", "Tab", "Tab", "Tab", "Tab", "Tab", "Tab").Chosen?.Kind);
    }

    [Fact]
    public void It_opens_at_a_named_entry_and_at_the_first_where_there_is_none()
    {
        Assert.Equal("strong-15-twice-daily", At("strong-15-twice-daily").Chosen?.Id);
        Assert.Equal(0, At("no-such").Index);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void It_is_drawn(int width, int height)
    {
        PictureSize size = new(width, height);
        BrowseState small = BrowseState.Open(SampleLibrary.Library);
        Faces.Match(BrowseScreen.Definition.Draw(Press(small, "Tab", "Down"), size), $"library-{width}x{height}");
        Faces.Match(BrowseScreen.Definition.Draw(Type(Press(small, "/"), "reduced"), size), $"library-find-{width}x{height}");
        Faces.Match(BrowseScreen.Definition.Draw(Press(small, "Tab", "Tab", "Enter"), size), $"library-entry-{width}x{height}");
    }

    [Fact]
    public void Its_keys_are_shown_and_told()
    {
        KeyTableRules.Hold(BrowseActions.Table);
        Assert.All([Start, Press(Start, "/"), Press(Start, "Enter"), Press(Start, "?")], state => KeyTableRules.HintsFit(BrowseActions.Table, state));
    }

    [Fact]
    public void Any_keys_in_any_order_leave_it_whole() => AnyKeys.Hold(BrowseScreen.Definition, Start);

    private static BrowseState At(string id) => BrowseState.Open(Library, id);

    private static BrowseState Press(BrowseState state, params string[] keys) =>
        keys.Aggregate(state, (now, key) => BrowseScreen.Definition.Press(now, key, key.Length == 1 ? key : null).State);

    private static BrowseState Type(BrowseState state, string text) => BrowseScreen.Definition.Paste(state, text);

    private static string Text(BrowseState state) => BrowseScreen.Definition.Draw(state, PictureSize.Smallest).Text;
}
