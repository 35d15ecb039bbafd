using Progression.App.Commands;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Commands.Plans;

/// <summary><c>draft --save</c> on a real store.</summary>
public sealed class DraftSaveTests : IDisposable
{
    private const string Code = "EXAMPLE-07";
    private static readonly CellAddress Bend = new("bend", 3);

    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_saved_draft_can_be_checked_and_asked_about_by_its_code()
    {
        string file = _bench.File(PlanBench.Example);
        CommandRun saved = _bench.Run("draft", file, "--save");

        Assert.Equal((ExitCode.Good, "Saved EXAMPLE-07, plan revision 1. Open it with: progression open EXAMPLE-07"), (saved.Code, saved.Messages.TrimEnd()));
        Assert.Equal(_bench.Run("draft", file).Data, saved.Data);
        Assert.Equal(_bench.Run("check", file, "--json"), _bench.Run("check", Code, "--json"));
        Assert.Equal(_bench.Run("check", file, "--json"), _bench.Run("check", "example-07", "--json"));
        Assert.Equal(_bench.Run("why", file, "--week", "3", "--lane", "stim"), _bench.Run("why", Code, "--week", "3", "--lane", "stim"));
    }

    [Fact]
    public void Without_the_option_nothing_is_saved()
    {
        _bench.Run("draft", _bench.File(PlanBench.Example));
        _bench.Run("check", _bench.File(PlanBench.Example));

        Assert.False(Directory.Exists(_bench.Store));
    }

    [Fact]
    public void The_store_can_be_named_on_the_line()
    {
        string other = Path.Combine(_bench.Folder("elsewhere"), "store");

        Assert.Equal(ExitCode.Good, _bench.Run("draft", _bench.File(PlanBench.Example), "--save", "--store", other).Code);
        Assert.True(Directory.Exists(other));
        Assert.False(Directory.Exists(_bench.Store));
        Assert.Equal(ExitCode.NoInput, _bench.Run("check", Code).Code);
        Assert.Equal(ExitCode.Good, _bench.Run("check", Code, "--store", other).Code);
    }

    [Fact]
    public void Saving_over_a_plan_that_was_edited_keeps_what_was_set_by_hand()
    {
        string file = _bench.File(PlanBench.Example);
        _bench.Run("draft", file, "--save");
        OpenedCase first = _bench.Saved(Code)!;
        Assert.IsType<SaveResult.Saved>(_bench.Book.Save(PlanEdit.Set(first.Plan!, Bend, null, "wound"), first.PlanStamp!.Reference));

        CommandRun again = _bench.Run("draft", file, "--save", "--weeks", "8", "--regimen", "strong-45-minutes");

        OpenedCase now = _bench.Saved(Code)!;
        Assert.Equal((ExitCode.Good, "Saved EXAMPLE-07, plan revision 3. Open it with: progression open EXAMPLE-07"), (again.Code, again.Messages.TrimEnd()));
        Assert.Equal((3, 8, "strong-45-minutes"), (now.PlanStamp!.Revision, now.Plan!.Weeks, now.Plan.Regimen));
        PlanCell bend = now.Plan.At(Bend)!;
        Assert.Equal((null, "wound"), (bend.Content, bend.Pin?.Reason));
        Assert.NotNull(bend.Pin!.Suggested);
        Assert.Contains("PIN-DIFFERS", again.Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("date: 2026-03-02", "date: 2026-03-01", "operation.date: K-100 is saved with another operation day", "Allowed: 2026-03-02. Found: \"2026-03-01\".")]
    [InlineData("side: left", "side: right", "operation.side: K-100 is saved as the other knee.", "Allowed: left. Found: \"right\".")]
    public void Another_operation_under_the_same_code_is_refused(string piece, string by, string wrong, string allowed)
    {
        _bench.Run("draft", _bench.File(PlanBench.Short), "--save");

        CommandRun run = _bench.Run("draft", _bench.File(PlanBench.Short.Replace(piece, by, StringComparison.Ordinal)), "--save");

        string message = Assert.Single(run.Messages.TrimEnd().Split('\n'));
        Assert.Equal((ExitCode.BadData, ""), (run.Code, run.Data));
        Assert.StartsWith("progression draft: " + wrong, message, StringComparison.Ordinal);
        Assert.Contains("Nothing was saved.", message, StringComparison.Ordinal);
        Assert.EndsWith(allowed, message, StringComparison.Ordinal);
        OpenedCase stands = _bench.Saved("K-100")!;
        Assert.Equal((1, 1), (stands.PlanStamp!.Revision, stands.CaseStamp.Revision));
    }

    [Fact]
    public void Another_operation_day_may_be_looked_at_without_saving()
    {
        _bench.Run("draft", _bench.File(PlanBench.Short), "--save");

        Assert.Equal(ExitCode.Good, _bench.Run("draft", _bench.File(PlanBench.Short.Replace("date: 2026-03-02", "date: 2026-03-01", StringComparison.Ordinal))).Code);
    }

    [Fact]
    public void A_folder_that_is_no_store_is_told_and_left_alone()
    {
        File.WriteAllText(_bench.Store, "not a folder");

        CommandRun run = _bench.Run("draft", _bench.File(PlanBench.Example), "--save");

        Assert.InRange(run.Code, ExitCode.Usage, ExitCode.BadConfiguration);
        Assert.NotEqual(ExitCode.Internal, run.Code);
        Assert.Empty(run.Data);
        Assert.Single(run.Messages.TrimEnd().Split('\n'));
        Assert.Equal("not a folder", File.ReadAllText(_bench.Store));
    }
}
