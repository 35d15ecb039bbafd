using System.Text.Json.Nodes;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;

namespace Progression.App.Tests.Commands.Reassess;

public sealed class CompareCommandTests : IDisposable
{
    /// <summary>Two visits before the bench's day; everyone in it is invented.</summary>
    private const string TwoVisits = """
        schema: case-file/1
        code: K-100
        operation:
          date: 2026-02-02
          side: left
          procedure: Knee replacement
        pre_op:
          date: 2026-01-20
          readings:
            flexion_active: 112 deg
        assessments:
          - date: 2026-02-09
            rater: KL
            readings:
              flexion_active: 62 deg
              extension_active: 18 deg
              extension_passive: 8 deg
              effusion: trace
          - date: 2026-03-02
            rater: KL
            readings:
              flexion_active: 95 deg
              extension_active: 14 deg
              extension_passive: 6 deg
              effusion: 1+

        """;

    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Tells_values_marks_and_what_can_be_said()
    {
        CommandRun run = _bench.Run("compare", _bench.File(TwoVisits));
        string[] lines = run.Data.Split('\n');

        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        Assert.Contains("Measure                                   pre-op   02-09   03-02", lines);
        Assert.Contains("Active flexion, deg                          112      62      95 +", lines);
        Assert.Contains("Extension lag, deg                             .      10       8 ~", lines);
        Assert.Contains(lines, line => line.EndsWith("   trace      1+ !", StringComparison.Ordinal));
        Assert.Contains("+ Active flexion: improved. 62 deg (2026-02-09) to 95 deg (2026-03-02), +33; detectable from 9.3", run.Data, StringComparison.Ordinal); // 4 x 2.326
        Assert.Contains("3 measures tested at 90 %: about 27 in 100 that at least one differs by chance alone.", run.Data, StringComparison.Ordinal); // 1 - 0.9^3
        Assert.All(lines, line => Assert.InRange(line.TrimEnd('\r').Length, 0, 100));
    }

    [Fact]
    public void Never_says_unchanged() =>
        Assert.DoesNotContain("unchanged", _bench.Run("compare", _bench.File(TwoVisits), "--json").Data + _bench.Run("compare", _bench.File(TwoVisits)).Data, StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void Answers_as_json_with_inputs_and_source()
    {
        JsonNode answer = JsonNode.Parse(_bench.Run("compare", _bench.File(TwoVisits), "--json").Data)!;
        JsonNode flexion = answer["measures"]!.AsArray().First(measure => measure!["id"]!.GetValue<string>() == "flexion_active")!;

        Assert.Equal("compare/1", answer["schema"]!.GetValue<string>());
        Assert.Equal("improved", flexion["last"]!["class"]!.GetValue<string>());
        Assert.Equal("from memory", flexion["last"]!["source"]!["standing"]!.GetValue<string>());
        Assert.NotEmpty(flexion["last"]!["inputs"]!.AsArray());
    }

    [Fact]
    public void A_saved_case_is_found_by_its_code()
    {
        string file = _bench.File(PlanBench.Example);
        _bench.Run("draft", file, "--save");

        Assert.Equal(_bench.Run("compare", file), _bench.Run("compare", "EXAMPLE-07"));
    }

    [Theory]
    [InlineData("NOBODY-01", "there is no case NOBODY-01")]
    [InlineData("none/case.yaml", "is not there")]
    public void What_is_not_there_is_told(string name, string message)
    {
        CommandRun run = _bench.Run("compare", name);

        Assert.Equal((ExitCode.NoInput, ""), (run.Code, run.Data));
        Assert.Contains(message, Assert.Single(run.Messages.TrimEnd().Split('\n')), StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_without_any_reading_is_an_empty_table()
    {
        CommandRun run = _bench.Run("compare", _bench.File(TwoVisits[..TwoVisits.IndexOf("pre_op", StringComparison.Ordinal)]));

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.StartsWith("K-100: 0 measures over 0 visits", run.Data, StringComparison.Ordinal);
    }
}
