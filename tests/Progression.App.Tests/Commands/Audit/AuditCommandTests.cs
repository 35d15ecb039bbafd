using System.Text.Json.Nodes;
using NJsonSchema;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.Core.Clinic;
using Progression.Core.People;
using Progression.Core.Reviews;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Audit;

public sealed class AuditCommandTests : IDisposable
{
    private const string Case = "K-100";
    private readonly PlanBench _bench = new();

    public AuditCommandTests()
    {
        Assert.Equal(0, _bench.Run("draft", _bench.File(PlanBench.Short), "--save").Code);
        _bench.Run("check", Case);
        OpenedReview review = _bench.Book.Reviews.Open(CaseCode.Parse(Case)!)!;
        Assert.IsType<SaveResult.Saved>(_bench.Book.Reviews.Do(review, ReviewStep.Commented, new ReviewSaid { Comments = [new ReviewComment(null, "seen")] }));
        new AuditTrail(Store, new ClinicPerson("1003", "sam", [ClinicRole.Keeper]), TimeProvider.System).Refusal(ClinicAct.ViewCase, Case);
    }

    public void Dispose() => _bench.Dispose();

    private LiteDbPlanStore Store => new(new StoreOptions(_bench.Store, CaseSummary.Of));

    [Fact]
    public void Says_who_did_what_with_which_revision_oldest_first()
    {
        CommandRun run = _bench.Run("audit");

        Assert.Equal(ExitCode.Good, run.Code);
        string[] lines = run.Data.TrimEnd().Split('\n');
        Assert.Contains("created K-100 case revision 1", lines[0], StringComparison.Ordinal);
        Assert.Contains("created K-100 plan revision 1", lines[1], StringComparison.Ordinal);
        Assert.Contains("viewed K-100 plan revision 1", lines[2], StringComparison.Ordinal);
        Assert.EndsWith("Kim Sample [1002]  commented K-100 plan revision 1 (as therapist)", lines[3], StringComparison.Ordinal);
        Assert.EndsWith("sam [1003]  refused K-100 (open cases)", lines[4], StringComparison.Ordinal);
        Assert.Equal(["5 of 5 entries.", $"Head: entry 5, {Store.Status().HeadHash}", "The chain is whole: no entry in it was changed."], lines[5..]);
    }

    [Theory]
    [InlineData("--act viewed", 1)]
    [InlineData("--act refused", 1)]
    [InlineData("--act signed", 0)]
    [InlineData("--case K-100", 5)]
    [InlineData("--case K-1", 0)]
    [InlineData("--person SAM", 1)]
    [InlineData("--person 1002", 1)]
    [InlineData("--person 1002 --act viewed", 0)]
    [InlineData("--until 2026-03-06", 0)]
    [InlineData("--since 2026-03-07 --until 2026-03-07", 4)]
    public void Can_be_asked_for_a_part(string options, int found)
    {
        CommandRun run = _bench.Run(["audit", "--format", "json", .. options.Split(' ')]);

        Assert.Equal(found, JsonNode.Parse(run.Data)!["events"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("--case", "K 1", "not the code of a case")]
    [InlineData("--act", "sighed", "The word is not known")]
    [InlineData("--since", "yesteryear", "not a day")]
    [InlineData("--head", "abc", "64 hexadecimal digits")]
    [InlineData("--format", "xml", "csv")]
    public void Nonsense_is_refused_with_what_is_allowed(string option, string text, string told)
    {
        CommandRun run = _bench.Run("audit", option, text);

        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(told, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_answer_keeps_to_its_schema()
    {
        JsonSchema schema = await JsonSchema.FromJsonAsync(
            (await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "audit.schema.json"), TestContext.Current.CancellationToken)).Replace("$defs", "definitions", StringComparison.Ordinal),
            TestContext.Current.CancellationToken);
        string answer = _bench.Run("audit", "--format", "json").Data;

        Assert.Empty(schema.Validate(answer));
        Assert.NotEmpty(schema.Validate(answer.Replace("\"whole\": true", "\"whole\": 1", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_table_for_a_spreadsheet_reckons_nothing()
    {
        new AuditTrail(Store, ClinicPerson.Alone("1004", "=1+1"), TimeProvider.System).Note(new AuditNote(AuditAct.Exported, Case, What: "to, \"there\""));

        CommandRun run = _bench.Run("audit", "--format", "csv", "--act", "exported");

        Assert.StartsWith("number,at,account,name,act,case,record,revision,hash,what\n6,2", run.Data, StringComparison.Ordinal);
        Assert.Contains(",1004,'=1+1,exported,K-100,,,,\"to, \"\"there\"\"\"", run.Data, StringComparison.Ordinal);
        Assert.Contains("The chain is whole", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void An_entry_that_was_changed_is_named_and_a_head_kept_elsewhere_is_looked_for()
    {
        string head = Store.Status().HeadHash!;
        Assert.Contains("that of entry 5.", _bench.Run("audit", "--head", head).Data, StringComparison.Ordinal);
        CommandRun other = _bench.Run("audit", "--head", new string('a', 64));
        Assert.Equal(ExitCode.BadData, other.Code);
        Assert.Contains("NOT IN THIS CHAIN", other.Data, StringComparison.Ordinal);

        string journal = Path.Combine(_bench.Store, "plans.journal");
        File.WriteAllText(journal, File.ReadAllText(journal).Replace("\"act\":\"refused\"", "\"act\":\"printed\"", StringComparison.Ordinal));
        CommandRun changed = _bench.Run("audit");

        Assert.Equal(ExitCode.BadData, changed.Code);
        Assert.Contains("THE CHAIN IS NOT WHOLE", changed.Data, StringComparison.Ordinal);
        Assert.Contains("4 of 4 entries.", changed.Data, StringComparison.Ordinal);
    }
}
