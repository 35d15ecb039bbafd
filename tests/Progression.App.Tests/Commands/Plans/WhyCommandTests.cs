using System.Text.Json.Nodes;
using Progression.App.Commands;

namespace Progression.App.Tests.Commands.Plans;

public sealed class WhyCommandTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Tells_inputs_rule_source_and_what_would_change_the_answer()
    {
        CommandRun run = _bench.Run("why", _bench.File(PlanBench.Example), "--week", "3", "--lane", "stim");

        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        string[] starts = [.. run.Data.Split('\n').Select(line => line.Split(':')[0]).Distinct()];
        Assert.Equal("Stim, week 3", starts[0]);
        Assert.All(["Because", "Input", "Rule", "Source", "Would change"], label => Assert.Contains(label, starts));
        Assert.Contains("Contractions this week: 210", run.Data, StringComparison.Ordinal); // 15 x 2 x 7, worked example 6
    }

    [Theory]
    [InlineData("flexion")]
    [InlineData("skills")]
    [InlineData("quads-strength")]
    [InlineData("pairing")]
    [InlineData("load")]
    [InlineData("time")]
    public void Answers_for_every_kind_of_lane(string lane)
    {
        JsonNode why = JsonNode.Parse(_bench.Run("why", _bench.File(PlanBench.Example), "--week", "2", "--lane", lane, "--json").Data)!;

        Assert.Equal("why/1", why["schema"]!.GetValue<string>());
        Assert.NotEmpty(why["inputs"]!.AsArray());
    }

    // Seen: the answer for a barred lane named the rule EMPTY and "an edit of the cell" as its way out.
    [Fact]
    public void A_barred_stim_lane_is_answered_with_what_bars_it()
    {
        JsonNode why = JsonNode.Parse(_bench.Run("why", _bench.File(PlanBench.Short), "--week", "2", "--lane", "stim", "--json").Data)!;

        Assert.Equal("STIM-BARRED", why["rule"]!.GetValue<string>());
        Assert.Equal("SCREEN-OPEN", Assert.Single(why["findings"]!.AsArray())!["rule"]!.GetValue<string>());
        Assert.Contains(why["inputs"]!.AsArray(), input => input!["value"]!.GetValue<string>() == "not asked");
        Assert.StartsWith("An answer, a clearance or a reading that lifts the bar", why["would_change"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0", "stim", "--week: The number is out of range. Allowed: a whole number from 1 to 6. Found: \"0\".")]
    [InlineData("7", "stim", "--week: The number is out of range. Allowed: a whole number from 1 to 6. Found: \"7\".")]
    [InlineData("2", "stin", "--lane: The plan has no such lane. Allowed: flexion, extension, lag, ")]
    public void Refuses_a_cell_that_is_not_on_the_plan(string week, string lane, string message)
    {
        CommandRun run = _bench.Run("why", _bench.File(PlanBench.Example), "--week", week, "--lane", lane);

        Assert.Equal((ExitCode.Usage, ""), (run.Code, run.Data));
        Assert.StartsWith("progression why: " + message, Assert.Single(run.Messages.TrimEnd().Split('\n')), StringComparison.Ordinal);
    }

    [Fact]
    public void Asks_for_week_and_lane()
    {
        CommandRun run = _bench.Run("why", _bench.File(PlanBench.Example));

        Assert.Equal((ExitCode.Usage, ""), (run.Code, run.Data));
        Assert.Contains("--week", run.Messages, StringComparison.Ordinal);
        Assert.Contains("--lane", run.Messages, StringComparison.Ordinal);
    }
}
