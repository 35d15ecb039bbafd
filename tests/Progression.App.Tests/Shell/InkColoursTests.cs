using Progression.App.Pictures;
using Progression.App.Shell;
using Progression.Records.Settings;
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
            double luminance = Luminance(colour);
            Assert.InRange((luminance + 0.05) / 0.05, 4.5, 21);
            Assert.InRange(1.05 / (luminance + 0.05), 4.5, 21);
        }
    }

    // WCAG 2, success criterion 1.4.6: 7 to 1, on the one background that was set.
    [Theory]
    [MemberData(nameof(Inks))]
    public void A_background_that_was_set_gets_more_contrast(Ink ink)
    {
        if (InkColours.Of(ink, TerminalColours.Full, BackgroundChoice.Dark).Foreground is var onDark && onDark != Color.None)
        {
            Assert.InRange((Luminance(onDark) + 0.05) / 0.05, 7, 21);
            Assert.InRange(1.05 / (Luminance(InkColours.Of(ink, TerminalColours.Full, BackgroundChoice.Light).Foreground) + 0.05), 7, 21);
        }
    }

    [Theory]
    [MemberData(nameof(Inks))]
    public void What_is_coloured_on_one_background_is_coloured_on_every_other(Ink ink) => Assert.Single(
        from look in new[] { TerminalColours.Sixteen, TerminalColours.Full }
        from background in Enum.GetValues<BackgroundChoice>()
        select InkColours.Of(ink, look, background).Foreground == Color.None into isPlain
        group isPlain by isPlain);

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

    private static double Luminance(Color colour) => (0.2126 * Linear(colour.R)) + (0.7152 * Linear(colour.G)) + (0.0722 * Linear(colour.B));

    private static double Linear(byte channel)
    {
        double part = channel / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);
    }
}
