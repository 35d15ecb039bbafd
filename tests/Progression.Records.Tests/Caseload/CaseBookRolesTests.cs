using Progression.Core.Clinic;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;
using Progression.Records.Tests.Plans;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Caseload;

/// <summary>What each role may do with cases, on a real store, and what is written down of it.</summary>
public sealed class CaseBookRolesTests : IDisposable
{
    private static readonly (Case Case, PlanRevision Plan) Made = InventedPlans.One();
    private static readonly CaseCode Code = Made.Case.Code;
    private readonly TempFolder _folder = new();

    public CaseBookRolesTests() => Assert.IsType<SaveResult.Saved>(Book(ClinicRole.Therapist).Save(Made.Case, Made.Plan, null));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Opening_is_written_down_once_with_the_revision_that_was_seen_and_reading_again_is_not()
    {
        CaseBook book = Book(ClinicRole.Supervisor);

        RevisionRef seen = book.Open(Code)!.PlanStamp!.Reference;
        Assert.Equal(seen, book.Again(Code)!.PlanStamp!.Reference);
        book.List(new CaseQuery());
        book.Generation();

        Assert.Equal([new AuditNote(AuditAct.Viewed, Code.Text, RecordKind.Plan, seen)], Notes());
        Assert.Equal("2001", Store().Read(AuditChain.Code, RecordKind.Audit, 1)!.Stamp.By.UserId);
    }

    [Theory]
    [InlineData(ClinicRole.Supervisor)]
    [InlineData(ClinicRole.Lead)]
    [InlineData(ClinicRole.Keeper)]
    public void Only_a_therapist_changes_a_case_and_every_other_try_is_refused_and_written_down(ClinicRole role)
    {
        CaseBook book = Book(role);
        OpenedCase from = Book(ClinicRole.Therapist).Again(Code)!;
        long before = Store().Load(Code.Text)!.Heads.Length;

        SaveResult[] tries = [book.Save(Made.Case, Made.Plan, from), book.Save(Made.Case, from), book.Save(Made.Plan, from.PlanStamp!.Reference), book.SaveReassessment(Made.Case, Made.Plan, [], from)];

        Assert.All(tries, result => Assert.Contains("takes a therapist", Assert.IsType<SaveResult.NotSaved>(result).Why, StringComparison.Ordinal));
        Assert.Equal(Enumerable.Repeat(new AuditNote(AuditAct.Refused, Code.Text, What: "change a case or a plan"), 4), Notes());
        Assert.Equal(1, Store().Load(Code.Text)!.Head(RecordKind.Plan)!.Stamp.Revision);
        Assert.Equal(before, Store().Load(Code.Text)!.Heads.Length);
    }

    [Fact]
    public void Who_looks_after_the_machine_and_who_has_no_role_see_no_case()
    {
        foreach (CaseBook book in new[] { Book(ClinicRole.Keeper), Book() })
        {
            Action[] looks = [() => book.Open(Code), () => book.Again(Code), () => book.List(new CaseQuery()), () => book.List(row => row.CaseCode), () => book.Plan(Code, new RevisionRef(1, new string('0', 64)))];
            Assert.All(looks, look => Assert.Equal(StoreFault.Refused, Assert.Throws<StoreException>(look).Fault));
        }

        Assert.Equal(10, Notes().Count(note => note is { Act: AuditAct.Refused, What: "open cases" }));
    }

    [Fact]
    public void A_case_is_shown_when_the_disk_is_too_full_to_write_down_that_it_was()
    {
        CaseBook book = new(new LiteDbPlanStore(new StoreOptions(_folder.Path, CaseSummary.Of) { MinimumFreeBytes = long.MaxValue }), Person(ClinicRole.Therapist), new FixedClock(Sample.Monday));

        OpenedCase opened = book.Open(Code)!;

        Assert.Equal(Code, opened.Case.Code);
        Assert.Equal("This could not be written to the audit: there is too little room on the disk.", opened.Unnoted);
    }

    private static ClinicPerson Person(params ReadOnlySpan<ClinicRole> roles) => new("2001", "somebody", [.. roles]);

    private LiteDbPlanStore Store() => new(new StoreOptions(_folder.Path, CaseSummary.Of));

    private CaseBook Book(params ReadOnlySpan<ClinicRole> roles) => new(Store(), Person(roles), new FixedClock(Sample.Monday));

    private List<AuditNote> Notes()
    {
        LiteDbPlanStore store = Store();
        int last = store.Load(AuditChain.Code)?.Head(RecordKind.Audit)?.Stamp.Revision ?? 0;
        return [.. Enumerable.Range(1, last).Select(number => AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, number)!.Body))];
    }
}
