using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.Entry;

namespace Progression.App.Tests.Forms;

public sealed class FormTests
{
    private static readonly Problem Bad = new("First", "Wrong.", "right", "wrong");

    private static Form Sample => Form.Of(
        new FormLine("sum", "A", "Sum") { IsShownOnly = true }, new FormLine("first", "A", "First") { Given = "one" },
        new FormLine("middle", "A", "Middle") { IsShownOnly = true }, new FormLine("second", "A", "Second"), new FormLine("third", "B", "Third"));

    [Fact]
    public void The_caret_passes_by_lines_that_are_only_shown()
    {
        Assert.Equal("first", Sample.Current.Id);
        Assert.Equal("second", Sample.By(1).Current.Id);
        Assert.Equal("first", Sample.By(1).By(-1).Current.Id);
        Assert.Equal("first", Sample.By(-1).Current.Id);
        Assert.Equal("first", Sample.To("sum").Current.Id);
    }

    [Fact]
    public void Parts_are_gone_through_and_end_at_both_ends()
    {
        Assert.Equal("third", Sample.ByGroup(1).Current.Id);
        Assert.Equal("third", Sample.ByGroup(1).ByGroup(1).Current.Id);
        Assert.Equal("first", Sample.ByGroup(-1).Current.Id);
        Assert.True(Sample.ByGroup(1).IsLast);
    }

    [Fact]
    public void A_refused_line_keeps_the_caret_and_its_text()
    {
        Form refused = Sample.HandIn(_ => Bad);
        Assert.Equal(("first", "one", Bad), (refused.Current.Id, refused.Current.Text, refused.Problem));
        Assert.Equal(("second", null), (refused.HandIn(_ => null).Current.Id, refused.HandIn(_ => null).Problem));
    }

    [Fact]
    public void Given_text_counts_as_typed_only_once_it_is_changed()
    {
        Assert.False(Sample.IsTouched);
        Assert.True(Sample.With(line => line.Put("!")).IsTouched);
        Assert.False(Sample.With(line => line.Put(" ")).IsTouched);
    }

    [Fact]
    public void What_was_typed_can_be_kept_and_put_back()
    {
        FormTexts kept = Sample.To("third").With(line => line.Put("three")).Texts;
        Assert.Equal(("three", "third", 1), (kept.ById["third"], kept.At, kept.ById.Count));
        Form again = Sample.With(kept);
        Assert.Equal(("three", "one", "third"), (again.TextOf("third"), again.TextOf("first"), again.Current.Id));
        Assert.Equal(Sample.TextOf("first"), Sample.With(new FormTexts(kept.ById.Add("gone", "x").Add("sum", "9"), "gone")).TextOf("first"));
        Assert.Equal("", Sample.With(kept with { ById = kept.ById.Add("sum", "9") }).TextOf("sum"));
    }

    [Fact]
    public void A_line_that_was_emptied_is_kept_as_empty() =>
        Assert.Equal("", Sample.With(Sample.With((LineEntry _) => LineEntry.Empty).Texts).TextOf("first"));

    [Fact]
    public void A_form_can_be_put_back_to_how_it_was_opened_and_forth_again()
    {
        Form typed = Sample.With(line => line.Put("!"));
        Assert.Equal(("one", "one!"), (typed.Turned().TextOf("first"), typed.Turned().Turned().TextOf("first")));
        Assert.False(Sample.CanTurn);
    }

    [Fact]
    public void A_good_text_is_written_out_when_it_is_taken_and_a_given_one_stays()
    {
        Assert.Equal("ONE!", Sample.With(line => line.Put("!")).HandIn(_ => null, line => line.Text.ToUpperInvariant()).TextOf("first"));
        Assert.Equal("one", Sample.HandIn(_ => null, line => line.Text.ToUpperInvariant()).TextOf("first"));
    }

    [Fact]
    public void The_first_wrong_line_is_found_wherever_the_caret_is()
    {
        Form found = Sample.To("third").FirstWrong(line => line.Id == "second" ? Bad : null)!;
        Assert.Equal(("second", Bad), (found.Current.Id, found.Problem));
        Assert.Null(Sample.FirstWrong(_ => null));
    }

    [Fact]
    public void A_form_of_shown_lines_alone_is_none() => Assert.Throws<ArgumentException>(() => Form.Of(new FormLine("sum", "A", "Sum") { IsShownOnly = true }));
}
