using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.App.Screens;
using Progression.App.Shell;
using Progression.App.Stores;
using Progression.App.Tests.Stores;

namespace Progression.App.Tests.Screens;

/// <summary>Every screen of the workbook on the demo's cases, reached by its keys, in both sizes, in colour and without.</summary>
public sealed class FacesOfScreensTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly OpenStore _store;

    public FacesOfScreensTests()
    {
        _store = _temp.Open(_temp.Demo);
        Assert.True(DemoStore.Prepare(_store, fresh: false).Ready);
    }

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData("list", "q")]
    [InlineData("grid", "")]
    [InlineData("grid-why", "w")]
    [InlineData("grid-findings", "f")]
    [InlineData("grid-days", "d")]
    [InlineData("grid-help", "?")]
    [InlineData("grid-changed", "x")]
    [InlineData("assess", "a 9 5 Enter")]
    [InlineData("assess-refused", "a 9 9 9 Enter")]
    [InlineData("correct", "A")]
    [InlineData("correct-detail", "A F2")]
    [InlineData("log", "s 6 2 Enter")]
    [InlineData("compare", "m Down")]
    [InlineData("compare-why", "m Enter")]
    [InlineData("chart", "e")]
    [InlineData("chart-numbers", "e t")]
    [InlineData("flags", "r n y u")]
    [InlineData("flags-note", "r y c")]
    [InlineData("data", "i")]
    [InlineData("screening", "S y")]
    [InlineData("what-if", "T 0")]
    [InlineData("propose", "a 1 0 5 Enter 1 1 0 Enter 4 Enter 3 Enter Ctrl+S Space")]
    [InlineData("propose-why", "a 1 0 5 Enter 1 1 0 Enter 4 Enter 3 Enter Ctrl+S Enter")]
    public void Looks_as_reviewed(string name, string keys)
    {
        ScreenStack screens = Screens(keys);
        foreach (PictureSize size in new PictureSize[] { new(80, 24), new(200, 60) })
        {
            Faces.Match(screens.Draw(size).Fit(size), $"face-{name}-{size.Width}x{size.Height}");
        }
    }

    // Two states that mean different things: their pictures differ without colour, by letters or by what a terminal without colour has (bold, reverse), in Unicode and in seven bits.
    [Theory]
    [InlineData("G", "G k")]
    [InlineData("", "P")]
    [InlineData("", "x")]
    [InlineData("x", "x u")]
    [InlineData("x", "x Ctrl+S")]
    [InlineData("r", "r y")]
    [InlineData("r y Up", "r n Up")]
    [InlineData("r y Up", "r u Up")]
    [InlineData("r n Up", "r u Up")]
    [InlineData("S y Up", "S n Up")]
    [InlineData("S y Up", "S u Up")]
    [InlineData("S n Up", "S u Up")]
    [InlineData("S y Up", "S Down Up")]
    [InlineData("q", "q Up")]
    [InlineData("m", "m Down")]
    [InlineData("a 9 5 Enter", "a 9 9 9 Enter")]
    [InlineData("s", "s Down")]
    [InlineData("T", "T Down")]
    [InlineData("i", "i Down")]
    [InlineData("b", "b Down")]
    [InlineData("f", "f Down")]
    [InlineData("d", "d Right")]
    [InlineData("a 1 0 5 Enter Ctrl+S", "a 1 0 5 Enter Ctrl+S Space")]
    [InlineData("a 1 0 5 Enter Ctrl+S", "a 1 0 5 Enter Ctrl+S Down")]
    public void Two_states_differ_without_colour(string one, string other)
    {
        PictureSize size = PictureSize.Smallest;
        string[] pictures = [.. new[] { one, other }.Select(keys => string.Join('\n', Body(Screens(keys).Draw(size).Fit(size))))];
        Assert.NotEqual(pictures[0], pictures[1]);
        Assert.NotEqual(SevenBit.Of(pictures[0].Replace('\n', ' ')), SevenBit.Of(pictures[1].Replace('\n', ' ')));
    }

    // Without the status line, which is gone with the next key.
    private static IEnumerable<string> Body(Picture picture) => picture.Rows.SkipLast(2).SelectMany(row => row.Spans).Select(span => $"{InkColours.Of(span.Ink, TerminalColours.None).Style}:{span.Text}");

    private ScreenStack Screens(string keys)
    {
        ListFrame list = new(new WorkbookOrder(_store, () => _store), new Farewells());
        ScreenStack screens = new(list.Open(), list.Plan(DemoStore.Showcase).Frame!);
        foreach (string key in keys.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            screens.Press(key, key.Length == 1 ? key : key == "Space" ? " " : null);
        }

        return screens;
    }
}
