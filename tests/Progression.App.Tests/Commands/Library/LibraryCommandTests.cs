using System.Text.Json.Nodes;
using Progression.App.Commands;

namespace Progression.App.Tests.Commands.Library;

public sealed class LibraryCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("progression-clinic-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private void Write(string text) => File.WriteAllText(Path.Combine(_folder, "limits.yaml"), "schema: limits/1\nlimits:\n" + text);

    [Fact]
    public void Lists_every_kind_with_its_count()
    {
        CommandRun run = CommandRun.Of("library", "list");

        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        Assert.All(
            ["Limits (", "Rungs (5)", "Regimens (", "Exercises (", "Milestones (", "Screening questions (", "Measures ("],
            heading => Assert.Contains(heading, run.Data, StringComparison.Ordinal));
        Assert.Matches(@"ladder\.lag-closed +Extension lag that counts as closed, at most: 5 deg \[derived\]", run.Data);
    }

    [Fact]
    public void Lists_as_json_what_it_lists_as_text()
    {
        JsonNode list = JsonNode.Parse(CommandRun.Of("library", "list", "--json").Data)!;

        Assert.Matches("^[0-9a-f]{12}$", (string)list["version"]!);
        Assert.Equal("strong-15-twice-daily", (string)list["default_regimen"]!);
        JsonNode exercises = list["kinds"]!.AsArray().Single(kind => (string)kind!["kind"]! == "exercise")!;
        Assert.Equal(exercises["entries"]!.AsArray().Count, (int)exercises["count"]!);
        Assert.True((int)exercises["count"]! >= 26);
    }

    [Fact]
    public void Shows_every_field_with_source_and_standing()
    {
        CommandRun run = CommandRun.Of("library", "show", "strong-15-twice-daily");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.StartsWith("Regimen: strong-15-twice-daily", run.Data, StringComparison.Ordinal);
        Assert.Matches("days_a_week +7 \\(from memory\\)", run.Data);
        Assert.Matches("rate +50 pps", run.Data);
        Assert.Matches("ramp_down +open", run.Data);
        Assert.Matches("source +Stevens-Lapsley 2012", run.Data);
        Assert.Matches("standing +seen", run.Data);
    }

    [Fact]
    public void Shows_both_entries_of_an_id_that_two_kinds_share()
    {
        JsonArray entries = JsonNode.Parse(CommandRun.Of("library", "show", "straight-leg-raise", "--json").Data)!["entries"]!.AsArray();

        Assert.Equal(["exercise", "milestone"], entries.Select(entry => (string)entry!["entry"]!));
        Assert.Equal("15 deg", (string)entries[0]!["needs"]!["lag_at_most"]!);
    }

    [Fact]
    public void Offers_the_nearest_id_for_an_unknown_one()
    {
        CommandRun run = CommandRun.Of("library", "show", "quadset");

        Assert.Equal((ExitCode.NoInput, ""), (run.Code, run.Data));
        Assert.Contains("Did you mean \"quad-set\"?", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Finds_a_clinic_s_good_files_good_and_shows_them_laid_over()
    {
        Write("  ladder.lag-closed: { title: Ours, value: 4 deg, source: Our clinic, standing: common practice }\n");

        CommandRun check = CommandRun.Of("library", "check", _folder);
        CommandRun show = CommandRun.Of("library", "show", "ladder.lag-closed", "--library", _folder);

        Assert.Equal((ExitCode.Good, ""), (check.Code, check.Messages));
        Assert.Contains("are good", check.Data, StringComparison.Ordinal);
        Assert.Matches("value +4 deg", show.Data);
    }

    [Fact]
    public void Tells_every_problem_of_bad_files_on_the_message_stream()
    {
        Write("  ladder.lag-closed: { title: Ours, value: 4, source: Our clinic, standing: sure }\n");

        CommandRun run = CommandRun.Of("library", "check", _folder);

        Assert.Equal((ExitCode.BadConfiguration, ""), (run.Code, run.Data));
        string[] lines = run.Messages.TrimEnd().Split('\n');
        Assert.Equal(2, lines.Length);
        Assert.Contains("limits.yaml:3: limits.ladder.lag-closed.value: The limit has no unit.", lines[0], StringComparison.Ordinal);
        Assert.Contains("limits.ladder.lag-closed.standing", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Tells_problems_as_json_with_the_place()
    {
        Write("  ladder.lag-closed: { title: Ours, value: 4, source: Our clinic, standing: seen }\n");

        CommandRun run = CommandRun.Of("library", "check", _folder, "--json");
        JsonNode answer = JsonNode.Parse(run.Data)!;

        Assert.Equal(ExitCode.BadConfiguration, run.Code);
        Assert.False((bool)answer["good"]!);
        JsonNode problem = Assert.Single(answer["problems"]!.AsArray())!;
        Assert.Equal((3, "4"), ((int)problem["line"]!, (string)problem["found"]!));
    }

    [Theory]
    [InlineData("check", "no-such-folder")]
    [InlineData("list", "--library", "no-such-folder")]
    public void Says_when_there_is_no_such_folder(params string[] words)
    {
        CommandRun run = CommandRun.Of(["library", .. words]);

        Assert.Equal((ExitCode.NoInput, ""), (run.Code, run.Data));
        Assert.Contains("There is no such folder.", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Does_not_answer_from_bad_files()
    {
        Write("  ladder.lag-closed: { title: Ours, value: 4, source: Our clinic, standing: seen }\n");

        Assert.Equal((ExitCode.BadConfiguration, ""), (CommandRun.Of("library", "list", "--library", _folder) is var run ? (run.Code, run.Data) : default));
    }
}
