using System.Text.Json.Nodes;
using Progression.App.Commands;
using Progression.App.Commands.Plans;
using Progression.App.Grid;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Library;

namespace Progression.App.Tests.Commands.Plans;

public sealed class CheckCommandTests : IDisposable
{
    private const string Code = "EXAMPLE-07";

    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Notes_alone_end_well() => Check(ExitCode.Good, "note", _bench.File(PlanBench.Example));

    // A precaution that caps stim is a warning (common practice, no source).
    [Fact]
    public void A_warning_is_told_by_the_exit_code() =>
        Check(ExitCode.Warning, "warning", _bench.File(PlanBench.Example.Replace("impaired-sensation: no", "impaired-sensation: yes", StringComparison.Ordinal)));

    [Fact]
    public void A_plan_that_damage_hides_is_not_said_to_be_missing()
    {
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save");
        string journal = Path.Combine(_bench.Store, "plans.journal");
        byte[] bytes = File.ReadAllBytes(journal);
        bytes[bytes.Length - 200] ^= 1; // in the plan, the second of the two entries
        File.WriteAllBytes(journal, bytes);

        CommandRun run = _bench.Run("check", Code);

        Assert.Equal(ExitCode.BadData, run.Code);
        Assert.Contains("the records are damaged", run.Messages, StringComparison.Ordinal);
        Assert.Contains("no plan of EXAMPLE-07 can be read", run.Messages, StringComparison.Ordinal);
    }

    // Stim in a week with no voluntary quadriceps work is severe (product design, warnings on pairing).
    [Fact]
    public void A_severe_finding_is_told_by_the_exit_code()
    {
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save");
        OpenedCase saved = _bench.Saved(Code)!;
        PlanRevision bare = saved.Plan!.Lanes.Where(lane => lane.Band == Band.Active)
            .Aggregate(saved.Plan, (plan, lane) => PlanEdit.Set(plan, new CellAddress(lane.Id, 3), null, "trial"));
        Assert.IsType<SaveResult.Saved>(_bench.Book.Save(bare, saved.PlanStamp!.Reference));

        Check(ExitCode.Severe, "severe", Code);
    }

    // A contraindication that is present and not cleared stops stim (product design, screening).
    [Fact]
    public void A_safety_stop_is_told_by_the_exit_code()
    {
        Check(ExitCode.SafetyStop, "stop", _bench.File(PlanBench.Example.Replace("active-implant: no", "active-implant: yes", StringComparison.Ordinal)));
        Check(ExitCode.SafetyStop, "stop", _bench.File(PlanBench.Short));
    }

    // With an assessment there is always the ladder's note, and without one its questions: no case file gives no finding at all.
    [Fact]
    public void A_plan_without_findings_says_so()
    {
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save");
        OpenedCase saved = _bench.Saved(Code)!;

        Assert.Equal("no findings", PlanText.Of([], 80));
        Assert.Null(PlanAnswers.Findings(new PlanAtHand(saved.Case, saved.Plan!, LibraryReader.Default()), [])["worst"]);
    }

    [Theory]
    [InlineData("missing.yaml", "\"missing.yaml\" is not there: neither a file nor the code of a saved case.")]
    [InlineData("NOBODY-1", "there is no case NOBODY-1 in the store")]
    [InlineData("some/where", "\"some/where\" is not there")]
    public void What_is_not_there_is_told(string name, string message)
    {
        CommandRun run = _bench.Run("check", name);

        Assert.Equal((ExitCode.NoInput, ""), (run.Code, run.Data));
        Assert.StartsWith("progression check: " + message, Assert.Single(run.Messages.TrimEnd().Split('\n')), StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.Store));
    }

    [Theory]
    [InlineData("check")]
    [InlineData("draft")]
    public void A_folder_is_no_case_file(string command)
    {
        CommandRun run = _bench.Run(command, _bench.Folder("a-folder"));

        Assert.Equal((ExitCode.NoInput, ""), (run.Code, run.Data));
        Assert.EndsWith("is a folder, not a case file.", run.Messages.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bad_clinic_library_is_told_before_anything_else()
    {
        string clinic = _bench.Folder("clinic");
        File.WriteAllText(Path.Combine(clinic, "limits.yaml"), "schema: limits/1\nlimits:\n  ladder.lag-closed:\n    value: 5 kg\n");

        CommandRun run = _bench.Run("check", _bench.File(PlanBench.Example), "--library", clinic);

        Assert.Equal((ExitCode.BadConfiguration, ""), (run.Code, run.Data));
        Assert.Contains("limits.yaml", run.Messages, StringComparison.Ordinal);
    }

    private void Check(int code, string worst, string what)
    {
        CommandRun text = _bench.Run("check", what);
        CommandRun json = _bench.Run("check", what, "--json");

        Assert.Equal((code, code, ""), (text.Code, json.Code, text.Messages));
        Assert.Equal(worst, JsonNode.Parse(json.Data)!["worst"]!.GetValue<string>());
        Assert.Contains($" {worst}: ", text.Data, StringComparison.Ordinal);
        Assert.Contains("    Rule ", text.Data, StringComparison.Ordinal);
    }
}
