using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Progression.App.Commands;

namespace Progression.App.Tests.Commands.Plans;

public sealed class DraftCommandTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Prints_the_grid_the_findings_and_the_caution()
    {
        CommandRun run = _bench.Run("draft", _bench.File(PlanBench.Example));

        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        Assert.StartsWith("UNSIGNED DRAFT.", run.Data, StringComparison.Ordinal);
        Assert.Contains("\nEXAMPLE-07: Total knee replacement, cemented, left knee, 2026-03-02 (day 0). Plan of 6 weeks, first day 2026-03-07.", run.Data, StringComparison.Ordinal);
        Assert.Matches(@"week 1 ▼ now +│week 2 +│week 3 +│week 4 +│week 5 +│week 6", run.Data);
        Assert.Contains("High volume", run.Data, StringComparison.Ordinal);
        Assert.Contains("It suggests; a licensed clinician decides.", run.Data, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.Store));
    }

    // Seen on the first printed plan: "i 2 notes" stood there twice.
    [Fact]
    public void Counts_the_findings_once() =>
        Assert.Single(Regex.Matches(_bench.Run("draft", _bench.File(PlanBench.Example)).Data, @"^i \d+ notes?\r?$", RegexOptions.Multiline));

    // Seen on the first printed plan: skills were cut to "A quadriceps …" and nothing under the grid told the rest.
    [Fact]
    public void Tells_in_full_what_the_grid_has_no_room_for()
    {
        string text = Unwrapped(_bench.Run("draft", _bench.File(PlanBench.Example)).Data);

        Assert.Contains("Skills by the end of week 2: A quadriceps contraction can be seen", text, StringComparison.Ordinal);
        Assert.Contains("* set by hand", text, StringComparison.Ordinal);
        Assert.Contains("[common practice, no source]", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(200)]
    public void No_line_is_wider_than_asked_for(int width) => Assert.All(
        _bench.Run("draft", _bench.File(PlanBench.Example), "--width", $"{width}").Data.Split('\n'), line => Assert.True(line.TrimEnd().Length <= width, line));

    [Theory]
    [InlineData("1", 1)]
    [InlineData("26", 26)]
    public void Drafts_as_many_weeks_as_asked_for(string weeks, int columns)
    {
        JsonNode plan = Json(PlanBench.Example, "--weeks", weeks)["plan"]!;

        Assert.Equal(columns, plan["weeks"]!.GetValue<int>());
        Assert.Equal(columns, plan["cells"]!.AsArray().Max(cell => cell!["week"]!.GetValue<int>()));
    }

    [Fact]
    public void Follows_the_regimen_asked_for_before_the_one_of_the_file()
    {
        Assert.Equal("strong-15-twice-daily", Json(PlanBench.Example)["plan"]!["regimen"]!.GetValue<string>());
        Assert.Equal("strong-45-minutes", Json(PlanBench.Example, "--regimen", "strong-45-minutes")["plan"]!["regimen"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("--weeks", "0", "--weeks: The number is out of range. Allowed: a whole number from 1 to 26. Found: \"0\".")]
    [InlineData("--weeks", "27", "--weeks: The number is out of range. Allowed: a whole number from 1 to 26. Found: \"27\".")]
    [InlineData("--weeks", "-6", "--weeks: The number is out of range. Allowed: a whole number from 1 to 26. Found: \"-6\".")]
    [InlineData("--weeks", "six", "--weeks: This is not a whole number. Allowed: a whole number from 1 to 26. Found: \"six\".")]
    [InlineData("--width", "39", "--width: The grid needs more columns. Allowed: 40 to 400 columns. Found: \"39\".")]
    [InlineData("--width", "401", "--width: The number is out of range. Allowed: a whole number from 1 to 400. Found: \"401\".")]
    [InlineData("--regimen", "strong-15-twice-dayly", "--regimen: The library has no such regimen. Did you mean strong-15-twice-daily? Allowed: one of before-the-operation, ")]
    [InlineData("--regimen", "half-hour-five-days", "regimen: \"half-hour-five-days\" leaves open what a plan needs: contractions a session")]
    public void Refuses_an_option_with_what_is_allowed_and_what_was_found(string option, string value, string message)
    {
        CommandRun run = _bench.Run("draft", _bench.File(PlanBench.Example), option, value, "--save");

        Assert.Equal((ExitCode.Usage, ""), (run.Code, run.Data));
        Assert.StartsWith("progression draft: " + message, Assert.Single(run.Messages.TrimEnd().Split('\n')), StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.Store));
    }

    [Fact]
    public void Refuses_fewer_weeks_than_have_gone_by()
    {
        CommandRun run = _bench.Run("draft", _bench.File(PlanBench.Short.Replace("weeks: 6", "from: 2026-03-20", StringComparison.Ordinal)), "--weeks", "2");

        Assert.Equal((ExitCode.Usage, ""), (run.Code, run.Data));
        Assert.Contains("its first day, 2026-03-20, is in post-op week 3. Allowed: 3 to 26 weeks. Found: \"2 weeks\".", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_screening_it_says_why_there_is_no_stim()
    {
        JsonNode answer = Json(PlanBench.Short);

        Assert.Contains("contraindications are not answered", Assert.Single(answer["plan"]!["stim_barred"]!.AsArray())!.GetValue<string>(), StringComparison.Ordinal);
        Assert.DoesNotContain(answer["plan"]!["lanes"]!.AsArray(), lane => lane!["id"]!.GetValue<string>() is "stim" or "with-stim");
        Assert.Contains("Stim is barred. No stim: ", Unwrapped(_bench.Run("draft", _bench.File(PlanBench.Short)).Data), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_file_gives_the_same_bytes() =>
        Assert.Equal(_bench.Run("draft", _bench.File(PlanBench.Example), "--json").Data, _bench.Run("draft", _bench.File(PlanBench.Example), "--json").Data);

    private static string Unwrapped(string text) => Regex.Replace(text, @"\s+", " ");

    private JsonNode Json(string text, params string[] more)
    {
        CommandRun run = _bench.Run(["draft", _bench.File(text), "--json", .. more]);
        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        return JsonNode.Parse(run.Data)!;
    }
}
