using System.Xml.Linq;
using Progression.App.Commands;
using Progression.App.Tests.Stores;

namespace Progression.App.Tests.Commands.Sheets;

/// <summary><c>progression plot</c> on the demo's store, on 25 November 2026.</summary>
public sealed class PlotCommandTests : IDisposable
{
    private readonly TempStore _temp = new();

    public PlotCommandTests() => Assert.Equal(0, _temp.Run("demo").Code);

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Draws_the_lag_when_nothing_else_is_asked_for()
    {
        XElement drawn = XDocument.Parse(Plot().Data).Root!;

        Assert.Equal("Extension lag, LARK-03", drawn.Elements().First().Value);
    }

    [Theory]
    [InlineData("knee-flexion", "Active flexion, LARK-03")]
    [InlineData("quadriceps-index", "Quadriceps index, operated to other leg, LARK-03")]
    public void A_measure_is_named_by_a_word_or_its_id(string measure, string title) =>
        Assert.StartsWith(title, Plot("--measure", measure, "--format", "text").Data, StringComparison.Ordinal);

    [Fact]
    public void The_dose_says_whether_its_plan_is_signed()
    {
        string drawn = Plot("--what", "dose").Data;

        Assert.Contains("UNSIGNED DRAFT.", drawn, StringComparison.Ordinal);
        Assert.Contains("Stimulated and voluntary quadriceps contractions by week, LARK-03", drawn, StringComparison.Ordinal);
    }

    [Fact]
    public void Writes_the_format_that_the_ending_tells_and_writes_it_down()
    {
        string file = Path.Combine(_temp.DataHome, "dose.png");

        CommandRun run = Plot("--what", "dose", "--out", file);

        Assert.Equal((0, ""), (run.Code, run.Data));
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(file)[..4]);
        Assert.Equal(ExitCode.CannotCreate, Plot("--what", "dose", "--out", file).Code);
        Assert.Contains("printed LARK-03 plan revision 2 (dose plot)", _temp.Run("audit", "--act", "printed", "--store", _temp.Demo).Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--measure hair", "knee-flexion, knee-extension, lag, strength")]
    [InlineData("--what pain", "course, dose")]
    [InlineData("--format pdf", "svg, png, text")]
    [InlineData("--format png", "--out names a file")]
    public void Refuses_what_it_does_not_know_and_says_what_it_does(string words, string allowed)
    {
        CommandRun run = Plot(words.Split(' '));

        Assert.Equal((ExitCode.Usage, ""), (run.Code, run.Data));
        Assert.Contains(allowed, run.Messages, StringComparison.Ordinal);
    }

    private CommandRun Plot(params string[] words) => _temp.Run(["plot", "LARK-03", "--store", _temp.Demo, .. words]);
}
