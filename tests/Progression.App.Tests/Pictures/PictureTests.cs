using Progression.App.Pictures;

namespace Progression.App.Tests.Pictures;

public sealed class PictureTests
{
    [Fact]
    public void Fits_to_exactly_the_room()
    {
        Picture picture = new Picture([new([new("abc"), new("def", Ink.Stop)]), PictureRow.Of("x")]).Fit(new(5, 3));
        Assert.Equal(["abcd…", "x    ", "     "], picture.Rows.Select(row => row.Text));
        Assert.Equal(Ink.Stop, picture.Rows[0].Spans[1].Ink);
    }

    [Fact]
    public void Its_text_has_no_trailing_spaces() => Assert.Equal("ab\n\nc", new Picture([PictureRow.Of("ab  "), PictureRow.Empty, PictureRow.Of("c")]).Text);

    [Theory]
    [InlineData(80, 24, true)]
    [InlineData(79, 24, false)]
    [InlineData(80, 23, false)]
    public void Eighty_by_twenty_four_is_enough(int width, int height, bool enough) => Assert.Equal(enough, new PictureSize(width, height).IsEnough);

    [Theory]
    [InlineData(79, 23)]
    [InlineData(20, 4)]
    [InlineData(2, 1)]
    [InlineData(1, 1)]
    public void A_window_of_any_size_can_be_told_that_it_is_too_small(int width, int height) =>
        Assert.Equal(height, TooSmall.Picture(new(width, height)).Fit(new(width, height)).Rows.Length);

    [Fact]
    public void Seven_bit_text_keeps_every_column() => Assert.Equal("|-- 95o >= ?~", SevenBit.Of("│── 95° >= é…"));
}
