using Progression.App.Pictures;

namespace Progression.App.Tests.Pictures;

/// <summary>Draws a screen in windows of many sizes.</summary>
internal static class AnySize
{
    private static readonly PictureSize[] Sizes = [new(80, 24), new(81, 25), new(100, 30), new(119, 33), new(120, 40), new(143, 24), new(200, 50), new(260, 80)];

    /// <summary>A picture fills its window exactly, has its caret inside, and keeps its columns in seven bits.</summary>
    /// <param name="draw">Draws it.</param>
    /// <param name="only">The windows; none for eight of all kinds.</param>
    public static void Fits(Func<PictureSize, Picture> draw, params PictureSize[] only)
    {
        foreach ((int width, int height) in only.Length > 0 ? only : Sizes)
        {
            Picture picture = draw(new(width, height));
            Assert.Equal(height, picture.Rows.Length);
            Assert.All(picture.Rows.SkipLast(2), row => Assert.True(row.Width <= width, $"{row.Width} columns in a window of {width}: {row.Text}"));
            Assert.All(picture.Rows, row => Assert.Equal(row.Text.Count(letter => letter == '?'), SevenBit.Of(row.Text).Count(letter => letter == '?')));
            if (picture.Caret is { } caret)
            {
                Assert.InRange(caret.Row, 0, height - 1);
                Assert.InRange(caret.Column, 0, width - 1);
            }
        }
    }
}
