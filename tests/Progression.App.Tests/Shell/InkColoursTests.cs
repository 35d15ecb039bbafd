using Progression.App.Pictures;
using Progression.App.Shell;
using Terminal.Gui.Drawing;

namespace Progression.App.Tests.Shell;

public sealed class InkColoursTests
{
    public static TheoryData<Ink> Inks => [.. Enum.GetValues<Ink>()];

    // WCAG 2, success criterion 1.4.3: text needs 4.5 to 1; relative luminance as its glossary defines it.
    [Theory]
    [MemberData(nameof(Inks))]
    public void Every_exact_colour_is_readable_on_black_and_on_white(Ink ink)
    {
        Color colour = InkColours.Of(ink, TerminalColours.Full).Foreground;
        if (colour != Color.None)
        {
            double luminance = (0.2126 * Linear(colour.R)) + (0.7152 * Linear(colour.G)) + (0.0722 * Linear(colour.B));
            Assert.InRange((luminance + 0.05) / 0.05, 4.5, 21);
            Assert.InRange(1.05 / (luminance + 0.05), 4.5, 21);
        }
    }

    [Theory]
    [MemberData(nameof(Inks))]
    public void Without_colour_nothing_is_coloured(Ink ink)
    {
        Assert.Equal(Color.None, InkColours.Of(ink, TerminalColours.None).Foreground);
        Assert.Equal(Color.None, InkColours.Of(ink, TerminalColours.None).Background);
    }

    [Fact]
    public void The_chosen_cell_is_reversed_in_every_look() =>
        Assert.All(Enum.GetValues<TerminalColours>(), look => Assert.Equal(TextStyle.Reverse, InkColours.Of(Ink.Chosen, look).Style));

    private static double Linear(byte channel)
    {
        double part = channel / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);
    }
}
