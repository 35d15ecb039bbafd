using System.Text.Json.Nodes;
using Progression.App.Commands;

namespace Progression.App.Tests.Commands.Plans;

public sealed class ExampleCommandTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Prints_a_case_file_that_drafts_with_stim_as_it_is()
    {
        CommandRun run = _bench.Run("example");

        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        Assert.Contains("#", run.Data, StringComparison.Ordinal);
        JsonNode answer = JsonNode.Parse(_bench.Run("draft", _bench.File(run.Data), "--json").Data)!;
        Assert.Null(answer["plan"]!["stim_barred"]);
    }

    [Fact]
    public void Prints_the_schema_of_case_files() =>
        Assert.Equal("Case file", JsonNode.Parse(_bench.Run("example", "--schema").Data)!["title"]!.GetValue<string>());

    [Theory]
    [InlineData("assessment", "assessment-file/1", "Assessment file")]
    [InlineData("session", "session-file/1", "Session file")]
    public void Prints_the_files_that_are_entered_into_a_case(string kind, string form, string title)
    {
        Assert.Contains($"schema: {form}", _bench.Run("example", kind).Data, StringComparison.Ordinal);
        Assert.Equal(title, JsonNode.Parse(_bench.Run("example", kind, "--schema").Data)!["title"]!.GetValue<string>());
    }
}
