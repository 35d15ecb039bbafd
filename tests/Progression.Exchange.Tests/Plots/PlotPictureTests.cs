using System.Buffers.Binary;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Progression.Core.Plots;
using Progression.Exchange.Plots;

namespace Progression.Exchange.Tests.Plots;

public sealed partial class PlotPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<PlotContent> Plots => new(SamplePlots.Lag, SamplePlots.Flexion, SamplePlots.Dose);

    [Theory]
    [MemberData(nameof(Plots), DisableDiscoveryEnumeration = true)]
    public void An_svg_tells_a_reader_of_screens_its_title_and_everything_it_shows(PlotContent content)
    {
        XElement root = XDocument.Parse(PlotPicture.Svg(content)).Root!;

        Assert.Equal((content.Title, content.Words), (root.Element(Svg + "title")!.Value, root.Element(Svg + "desc")!.Value));
        Assert.Equal(("img", "title words", "0 0 800 500"), (root.Attribute("role")!.Value, root.Attribute("aria-labelledby")!.Value, root.Attribute("viewBox")!.Value));
    }

    [Theory]
    [MemberData(nameof(Plots), DisableDiscoveryEnumeration = true)]
    public void Letters_of_an_svg_are_letters_and_everything_written_is_there(PlotContent content)
    {
        string[] texts = [.. XDocument.Parse(PlotPicture.Svg(content)).Descendants(Svg + "text").Select(text => text.Value)];
        IEnumerable<string> marks = content.Parts.OfType<PlotPart.Marks>().SelectMany(part => part.Points).Select(mark => mark.Label).OfType<string>();

        Assert.Empty(marks.Concat(content.Parts.Select(part => part.Legend).OfType<string>()).Concat([content.Title, content.Across.Label, content.Up.Label]).Except(texts));
        Assert.Equal(content.Note, string.Join(' ', texts.Where(text => content.Note!.Contains(text, StringComparison.Ordinal) && text.Contains(' ', StringComparison.Ordinal))));
    }

    [Theory] // A pattern or a picture inside would be lost in programs that know only lines.
    [MemberData(nameof(Plots), DisableDiscoveryEnumeration = true)]
    public void An_svg_is_of_lines_and_fillings_in_black_white_and_grey(PlotContent content)
    {
        XDocument drawn = XDocument.Parse(PlotPicture.Svg(content));

        Assert.DoesNotContain(drawn.Descendants(), one => one.Name.LocalName is "image" or "pattern");
        Assert.All(
            drawn.Descendants().Attributes().Where(one => one.Name.LocalName is "fill" or "stroke").Select(one => one.Value).Distinct(),
            colour => Assert.Matches(Grey(), colour));
    }

    [Theory] // A list of places that ends with a comma is none by the grammar of SVG 1.1, 4.2.
    [MemberData(nameof(Plots), DisableDiscoveryEnumeration = true)]
    public void Lists_of_an_svg_end_without_a_comma(PlotContent content) =>
        Assert.DoesNotContain(XDocument.Parse(PlotPicture.Svg(content)).Descendants(Svg + "text").Attributes(), one => one.Value.TrimEnd().EndsWith(','));

    [Fact] // Hatched bars have their slanted lines one by one: more than a hundred of them.
    public void Hatching_is_there_in_an_svg() =>
        Assert.InRange(XDocument.Parse(PlotPicture.Svg(SamplePlots.Dose)).Descendants(Svg + "line").Count() + Regex.Count(PlotPicture.Svg(SamplePlots.Dose), "<path fill=\"none\""), 100, 10_000);

    [Theory] // The head of a PNG: ISO/IEC 15948, 5.2 and 11.2.2.
    [InlineData(800, 500, 1)]
    [InlineData(400, 300, 2)]
    public void A_png_has_the_size_asked_for(int width, int height, int scale)
    {
        byte[] png = PlotPicture.Png(SamplePlots.Lag, new PlotSize(width, height, scale));

        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10], png[..8]);
        Assert.Equal((width * scale, height * scale), (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))));
    }

    [Fact]
    public void The_same_content_gives_the_same_files()
    {
        Assert.Equal(PlotPicture.Svg(SamplePlots.Lag), PlotPicture.Svg(SamplePlots.Lag));
        Assert.Equal(PlotPicture.Png(SamplePlots.Lag), PlotPicture.Png(SamplePlots.Lag));
    }

    [Fact]
    public void Words_of_a_clinics_own_library_cannot_break_out_of_an_svg()
    {
        PlotContent bad = SamplePlots.Lag with { Title = "</title><script>x</script>\u001b[31m\u0000", Note = "a & b < c \u202e" };

        XDocument drawn = XDocument.Parse(PlotPicture.Svg(bad));
        Assert.Empty(drawn.Descendants(Svg + "script"));
        Assert.DoesNotContain("\u001b", drawn.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("\u202e", drawn.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_plot_with_nothing_in_it_is_drawn_all_the_same()
    {
        PlotContent empty = SamplePlots.Lag with { Parts = [], Note = null };

        Assert.NotEmpty(PlotPicture.Png(empty));
        Assert.NotEmpty(PlotPicture.Svg(empty));
    }

    [GeneratedRegex("^(none|white|black|#([0-9A-F]{2})\\2\\2)$")]
    private static partial Regex Grey();
}
