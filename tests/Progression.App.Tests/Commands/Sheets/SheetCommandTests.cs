using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.App.Tests.Stores;
using Progression.Core.Clinic;
using Progression.Core.People;
using Progression.Core.Reviews;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Sheets;

public sealed class SheetCommandTests : IDisposable
{
    private static readonly CaseCode Code = CaseCode.Parse("EXAMPLE-07")!;
    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_sheet_of_a_file_or_an_unsigned_plan_is_marked_in_large_letters()
    {
        string file = _bench.File(PlanBench.Example);
        string sheet = _bench.Run("sheet", file, "--week", "2").Data;
        Assert.Contains("\nUNSIGNED DRAFT. Do not use it until your therapist says so.\n", sheet, StringComparison.Ordinal);
        Assert.Contains("Week 2 after the operation", sheet, StringComparison.Ordinal);

        _bench.Run("draft", file, "--save");
        string page = _bench.Run("sheet", "EXAMPLE-07", "--format", "html").Data;
        Assert.Contains("<p class=\"mark unsigned\">UNSIGNED DRAFT.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_signature_stands_on_the_sheet_until_the_plan_is_changed_and_each_print_is_written_down()
    {
        string file = _bench.File(PlanBench.Example);
        _bench.Run("draft", file, "--save");
        Sign();

        string signed = _bench.Run("sheet", "EXAMPLE-07").Data;
        Assert.Contains("Signed by sue on 2026-03-07, plan 1. (", signed, StringComparison.Ordinal);
        Assert.DoesNotContain("UNSIGNED", signed, StringComparison.Ordinal);

        _bench.Run("draft", file, "--save", "--weeks", "7");
        string changed = _bench.Run("sheet", "EXAMPLE-07").Data;
        Assert.Contains("UNSIGNED DRAFT: the plan was changed after it was signed.", changed.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal([(AuditAct.Printed, 1), (AuditAct.Printed, 2)], Printed());
    }

    [Fact]
    public void A_week_that_is_not_there_and_words_that_are_none_are_refused()
    {
        string file = _bench.File(PlanBench.Example);

        CommandRun week = _bench.Run("sheet", file, "--week", "9");
        Assert.Equal(ExitCode.Usage, week.Code);
        Assert.Contains("1 to 6", week.Messages, StringComparison.Ordinal);
        CommandRun words = _bench.Run("sheet", file, "--words", _bench.File("schema: home-words/1\n", "home-xx.yaml"));
        Assert.Equal(ExitCode.BadData, words.Code);
        Assert.Contains("This field is missing.", words.Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.NoInput, _bench.Run("sheet", file, "--words", "nowhere.yaml").Code);
    }

    [Fact]
    public void A_file_is_written_as_its_ending_says_and_never_over_another_one()
    {
        string file = _bench.File(PlanBench.Example);
        string page = Path.Combine(Path.GetDirectoryName(file)!, "week.html");

        Assert.Contains("written to", _bench.Run("sheet", file, "--out", page).Messages, StringComparison.Ordinal);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(page), StringComparison.Ordinal);
        CommandRun again = _bench.Run("sheet", file, "--out", page, "--week", "3");
        Assert.Equal(ExitCode.CannotCreate, again.Code);
        Assert.Contains("is there already", again.Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, _bench.Run("sheet", file, "--out", page, "--week", "3", "--force").Code);
        Assert.Contains("Week 3", File.ReadAllText(page), StringComparison.Ordinal);
    }

    private void Sign()
    {
        PlanRisk risk = new(0, 0, 0, 0, null);
        ReviewBook reviews = _bench.Book.Reviews;
        Assert.IsType<SaveResult.Saved>(reviews.Do(reviews.Open(Code)!, ReviewStep.Requested, new ReviewSaid { Risk = risk }));
        CaseBook sue = new(
            new LiteDbPlanStore(new StoreOptions(_bench.Store, CaseSummary.Of)), new ClinicPerson("1003", "sue", [ClinicRole.Supervisor]), new FixedClock(new DateTimeOffset(2026, 3, 7, 9, 0, 0, TimeSpan.Zero)));
        Assert.IsType<SaveResult.Saved>(sue.Reviews.Do(sue.Reviews.Open(Code)!, ReviewStep.Signed, new ReviewSaid { Risk = risk, Meaning = SignatureMeaning.Agreed }));
    }

    private IEnumerable<(AuditAct, int)> Printed()
    {
        LiteDbPlanStore store = new(new StoreOptions(_bench.Store, CaseSummary.Of));
        return [.. store.History(AuditChain.Code, RecordKind.Audit).Select(stamp => AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, stamp.Revision)!.Body))
            .Where(note => note.Act == AuditAct.Printed).Select(note => (note.Act, note.Revision!.Revision))];
    }
}
