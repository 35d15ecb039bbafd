using Progression.App.Actions;

namespace Progression.App.Tests.Actions;

public sealed class LineEntryTests
{
    [Fact]
    public void Starts_with_the_caret_behind_the_text() => Assert.Equal(4, LineEntry.Of("3x10").Caret);

    [Fact]
    public void Puts_text_at_the_caret() => Assert.Equal("3x12", LineEntry.Of("3x2").Left().Put("1").Text);

    [Fact]
    public void Rubs_out_before_and_deletes_behind_the_caret()
    {
        LineEntry line = LineEntry.Of("abc").Left();
        Assert.Equal("ac", line.RubOut().Text);
        Assert.Equal("ab", line.Delete().Text);
    }

    [Fact]
    public void Both_ends_hold()
    {
        LineEntry line = LineEntry.Of("a");
        Assert.Equal(line, line.Right());
        Assert.Equal(line, line.Delete());
        Assert.Equal(0, line.Start().Left().RubOut().Caret);
        Assert.Equal(1, line.Start().End().Caret);
    }

    [Fact]
    public void A_letter_of_two_units_moves_and_goes_as_one()
    {
        LineEntry line = LineEntry.Of("a\U0001F9B5");
        Assert.Equal(1, line.Left().Caret);
        Assert.Equal("a", line.RubOut().Text);
        Assert.Equal("a", line.Left().Delete().Text);
        Assert.Equal(3, line.CaretColumn);
    }

    [Fact]
    public void Pasted_lines_become_one_and_controls_lose_their_power() =>
        Assert.Equal("a b \uFFFD[2Jc", LineEntry.Empty.Put("a\nb\t\u001b[2Jc\n").Text.TrimEnd());

    [Fact]
    public void A_line_has_a_greatest_length()
    {
        LineEntry full = LineEntry.Empty.Put(new string('x', LineEntry.Longest));
        Assert.Equal(LineEntry.Longest, full.Text.Length);
        Assert.Equal(full, full.Put("y"));
    }
}
