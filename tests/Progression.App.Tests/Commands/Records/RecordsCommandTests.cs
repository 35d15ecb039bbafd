using System.Text.Json.Nodes;
using Progression.App.Tests.Stores;
using Progression.Core.Clinic;
using Progression.Core.Reviews;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Reviews;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Records;

/// <summary><c>progression records</c> on a copy of the demo's store.</summary>
public sealed class RecordsCommandTests : IDisposable
{
    private readonly TempStore _temp = new();

    public RecordsCommandTests() => Assert.Equal(0, _temp.Run("demo").Code);

    private string Journal => Path.Combine(_temp.Demo, "plans.journal");

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Status_and_verify_tell_the_same_of_sound_records()
    {
        JsonNode status = Json("status");
        JsonNode verified = Json("verify");

        Assert.Equal(12, (int)status["cases"]!);
        foreach (string same in new[] { "cases", "entries", "last", "bytes", "head" })
        {
            Assert.Equal(status[same]!.ToJsonString(), verified[same]!.ToJsonString());
        }

        Assert.Contains("Every entry is whole", Run("verify").Data, StringComparison.Ordinal);
        Assert.Contains("  Cases: 12\n", Run("status").Data.ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_backup_is_restored_and_both_are_written_down()
    {
        string copy = Path.Combine(_temp.DataHome, "copy");
        JsonNode backup = Json("backup", copy);
        string whole = (string)Json("verify")["head"]!;
        Spoil(500);
        Assert.Equal(65, Run("verify").Code);
        Assert.Equal(65, Run("status").Code);

        CommandRun restored = Run("restore", copy);

        Assert.Equal((0, 12), (restored.Code, (int)Json("verify")["cases"]!));
        Assert.Equal(copy, (string)backup["file"]!);
        Assert.NotEqual(whole, (string)backup["head"]!);
        Assert.Equal(["backed up", "restored"], Audited());
        Assert.Contains("Files as they were: ", restored.Data, StringComparison.Ordinal);
    }

    [Fact]
    public void A_repair_lets_work_go_on_and_is_written_down()
    {
        Spoil(500);

        CommandRun repaired = Run("repair");

        Assert.Equal(0, repaired.Code);
        Assert.Contains("1 damaged lines were moved aside", repaired.Data, StringComparison.Ordinal);
        Assert.Equal(0, Run("verify").Code);
        Assert.Contains("Known gap: journal, byte 0", Run("verify").Data, StringComparison.Ordinal);
        Assert.Equal(["repaired"], Audited());
        Assert.Contains("Nothing is damaged", Run("repair").Data, StringComparison.Ordinal);
    }

    [Fact]
    public void A_signature_that_breaks_the_rules_is_named_although_its_chain_is_whole()
    {
        LiteDbPlanStore store = new(new StoreOptions(_temp.Demo, CaseSummary.Of));
        RevisionStamp plan = store.Load("WREN-07")!.Head(RecordKind.Plan)!.Stamp;
        ReviewAct signed = new()
        {
            Step = ReviewStep.Signed,
            By = new ReviewPerson(plan.By.UserId, plan.By.Name, ClinicRole.Supervisor),
            At = plan.At.AddMinutes(1),
            Plan = new ReviewedPlan(plan.Revision, plan.Hash),
            Meaning = Enum.GetValues<SignatureMeaning>()[0],
        };
        Draft forged = new(RecordKind.Review, null, ReviewJson.Write(ReviewRecord.Empty.With(signed)));
        Assert.IsType<AppendResult.Saved>(store.Append(new Submission("WREN-07", [forged], plan.By, signed.At)));

        CommandRun run = Run("verify");

        Assert.Equal(65, run.Code);
        Assert.Contains("a review breaks the rules: another program wrote it", run.Data, StringComparison.Ordinal);
        Assert.Contains("Case WREN-07, review revision 1", run.Data, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_written_out_are_taken_in_elsewhere()
    {
        string lines = Path.Combine(_temp.DataHome, "lines");
        string other = Path.Combine(_temp.DataHome, "other");
        Assert.Equal(0, Run("export", lines).Code);

        CommandRun taken = _temp.Run("records", "import", lines, "--store", other);

        Assert.Equal(0, taken.Code);
        Assert.Contains("Cases: 12", taken.Data, StringComparison.Ordinal);
        Assert.Contains("0 entries taken in", _temp.Run("records", "import", lines, "--store", other).Data, StringComparison.Ordinal);
        Assert.Equal(["written out"], Audited());
    }

    [Fact]
    public void A_rebuild_is_written_down_and_changes_no_record()
    {
        string head = (string)Json("status")["head"]!;
        File.Delete(Path.Combine(_temp.Demo, "plans.db"));

        Assert.Equal(0, Run("rebuild").Code);

        List<string> before = [];
        new LiteDbPlanStore(new StoreOptions(_temp.Demo, (_, _) => new Dictionary<string, string>())).Walk(entry => { before.Add(entry.LineHash); return true; });
        Assert.Equal(head, before[^2]);
        Assert.Equal(["rebuilt"], Audited());
    }

    [Theory]
    [InlineData(66, "no records", "status", "--store", "/nowhere/at-all")]
    [InlineData(66, "no file", "restore", "/nowhere/at-all")]
    [InlineData(66, "no file", "import", "/nowhere/at-all")]
    [InlineData(64, "Required argument missing", "backup")]
    [InlineData(64, "Cannot parse", "restore", "x", "--drop-newer", "all")]
    public void Says_what_is_missing(int code, string why, params string[] words)
    {
        CommandRun run = Run(words);

        Assert.Equal(code, run.Code);
        Assert.Contains(why, run.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("backup")]
    [InlineData("export")]
    public void Never_writes_over_a_file(string word)
    {
        string there = Path.Combine(_temp.DataHome, "there");
        File.WriteAllText(there, "mine");

        Assert.Equal(77, Run(word, there).Code);
        Assert.Equal("mine", File.ReadAllText(there));
        Assert.Empty(Audited());
    }

    private string[] Audited()
    {
        LiteDbPlanStore store = new(new StoreOptions(_temp.Demo, (_, _) => new Dictionary<string, string>()));
        return [.. store.History(AuditChain.Code, RecordKind.Audit)
            .Select(stamp => AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, stamp.Revision)!.Body).Act)
            .Where(act => act > AuditAct.Exported)
            .Select(act => string.Concat(act.ToString().Select(letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{letter}")).Trim())];
    }

    private void Spoil(long at)
    {
        byte[] bytes = File.ReadAllBytes(Journal);
        bytes[at] ^= 1;
        File.WriteAllBytes(Journal, bytes);
        _temp.Run("records", "rebuild", "--store", _temp.Demo);
    }

    private CommandRun Run(params string[] words) => _temp.Run(words.Contains("--store") ? ["records", .. words] : ["records", .. words, "--store", _temp.Demo]);

    private JsonNode Json(params string[] words) => JsonNode.Parse(Run([.. words, "--json"]).Data)!;
}
