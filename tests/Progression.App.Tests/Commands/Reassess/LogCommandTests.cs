using System.Text.Json.Nodes;
using NJsonSchema;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.Records.Plans;

namespace Progression.App.Tests.Commands.Reassess;

public sealed class LogCommandTests : IDisposable
{
    private const string Session = """
        schema: session-file/1
        sessions:
          - {date: 2026-03-07, contractions: 15, peak: 42 mA, pain_before: 3, pain_after: 4, skin: clear}
        complete:
          - {date: 2026-03-06, pain_next_morning: 3}

        """;

    private readonly PlanBench _bench = new();

    public LogCommandTests() => _bench.Run("draft", _bench.File(PlanBench.Example), "--save");

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Logs_a_session_completes_another_and_tells_planned_and_done()
    {
        CommandRun run = Log(Session);

        Assert.Equal((ExitCode.Good, "Saved EXAMPLE-07, case revision 2.\n"), (run.Code, run.Messages));
        Assert.Contains("2026-03-07  15 stimulated contractions, peak 42 mA, pain 3 before, 4 after, skin clear", run.Data, StringComparison.Ordinal);
        // The plan begins on 7 March with 15 contractions once a day; two days of week 1 are left. The session before it was not on the plan.
        Assert.EndsWith("Week 1: 1 of 2 planned stim sessions done, 15 of 30 contractions.\n", run.Data, StringComparison.Ordinal);
        Assert.Equal([3, 3, null], _bench.Saved("EXAMPLE-07")!.Case.Sessions.Select(session => session.PainNextMorning));
    }

    [Fact]
    public void The_plan_stays_as_it_is()
    {
        string before = PlanJson.Write(_bench.Saved("EXAMPLE-07")!.Plan!);
        Log(Session);

        Assert.Equal((before, 1), (PlanJson.Write(_bench.Saved("EXAMPLE-07")!.Plan!), _bench.Saved("EXAMPLE-07")!.PlanStamp!.Revision));
    }

    [Fact]
    public void The_very_same_session_is_asked_back_and_entered_only_when_confirmed()
    {
        const string once = "schema: session-file/1\nsessions: [{date: 2026-03-07, contractions: 15}]\n";
        Log(once);

        CommandRun again = Log(once);
        Assert.Equal((ExitCode.BadData, ""), (again.Code, again.Data));
        Assert.Contains("logged for this day already", again.Messages, StringComparison.Ordinal);
        Assert.Contains("nothing was entered", again.Messages, StringComparison.Ordinal);
        Assert.Equal(3, _bench.Saved("EXAMPLE-07")!.Case.Sessions.Length);

        Assert.Equal(ExitCode.Good, Log(once, "--confirmed").Code);
        Assert.Equal(4, _bench.Saved("EXAMPLE-07")!.Case.Sessions.Length);
    }

    [Theory]
    [InlineData("EXAMPLE-07", "sessions: [{date: 2026-03-08, contractions: 15}]", ExitCode.BadData, "in the future")]
    [InlineData("EXAMPLE-07", "side: right\nsessions: [{date: 2026-03-07, contractions: 15}]", ExitCode.BadData, "sides were swapped")]
    [InlineData("K-999", "sessions: []", ExitCode.NoInput, "there is no case K-999")]
    [InlineData("Mary Poppins", "sessions: []", ExitCode.Usage, "not the code of a case")]
    public void What_cannot_be_logged_is_told_and_changes_nothing(string code, string text, int exit, string told)
    {
        CommandRun run = _bench.Run("log", code, "--from", _bench.File("schema: session-file/1\n" + text, "session.yaml"));

        Assert.Equal((exit, ""), (run.Code, run.Data));
        Assert.Contains(told, run.Messages, StringComparison.Ordinal);
        Assert.Equal(1, _bench.Saved("EXAMPLE-07")!.CaseStamp.Revision);
    }

    [Fact]
    public void A_file_that_is_not_there_is_named()
    {
        CommandRun run = _bench.Run("log", "EXAMPLE-07", "--from", "no/session.yaml");

        Assert.Equal((ExitCode.NoInput, "progression log: \"no/session.yaml\" is not there.\n"), (run.Code, run.Messages));
    }

    [Fact]
    public void Standard_input_is_read_when_it_is_asked_for()
    {
        CommandRun run = _bench.RunWith(new StringReader(Session), "log", "EXAMPLE-07", "--from", "-");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Equal(3, _bench.Saved("EXAMPLE-07")!.Case.Sessions.Length);
    }

    [Fact]
    public async Task The_answer_keeps_to_its_schema_and_the_documented_example_is_logged()
    {
        string text = await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "log.schema.json"), TestContext.Current.CancellationToken);
        JsonSchema schema = await JsonSchema.FromJsonAsync(text.Replace("$defs", "definitions", StringComparison.Ordinal), TestContext.Current.CancellationToken);

        string answer = Log(_bench.Run("example", "session").Data, "--json").Data;

        Assert.Empty(schema.Validate(answer));
        Assert.NotEmpty(schema.Validate(answer.Replace("\"week\":", "\"weak\":", StringComparison.Ordinal)));
        Assert.Equal(2, JsonNode.Parse(answer)!["logged"]!.AsArray().Count);
    }

    private CommandRun Log(string text, params string[] more) => _bench.Run(["log", "EXAMPLE-07", "--from", _bench.File(text, "session.yaml"), .. more]);
}
