using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Cases;
using Progression.Records.Plans;
using Progression.Records.Storage;
using Progression.Records.Tests.Plans;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Caseload;

/// <summary>Cases and plans on a real store.</summary>
public sealed class CaseBookTests : IDisposable
{
    private static readonly (Case Case, PlanRevision Plan) Made = InventedPlans.One();
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_is_saved_is_opened_again_as_the_same_case_and_plan()
    {
        SaveResult.Saved saved = Saved(Book().Save(Made.Case, Made.Plan, null));

        OpenedCase opened = Book().Open(Made.Case.Code)!;

        Assert.Equal(CaseJson.Write(Made.Case), CaseJson.Write(opened.Case));
        Assert.Equal(PlanJson.Write(Made.Plan), PlanJson.Write(opened.Plan!));
        Assert.Equal(saved.Plan, opened.PlanStamp);
        Assert.Equal((1, "Robin Example", Sample.Monday), (saved.Plan.Revision, saved.Plan.By.Name, saved.Plan.At));
        Assert.Empty(opened.Damage);
    }

    [Fact]
    public void Every_invented_plan_survives_the_store()
    {
        foreach ((Case patient, PlanRevision plan) in InventedPlans.Some(seed: 9, count: 25).DistinctBy(made => made.Case.Code))
        {
            Saved(Book().Save(patient, plan, null));
            Assert.Equal(PlanJson.Write(plan), PlanJson.Write(Book().Open(patient.Code)!.Plan!));
        }
    }

    [Fact]
    public void A_case_that_was_never_saved_is_not_there()
    {
        Saved(Book().Save(Made.Case, Made.Plan, null));

        Assert.Null(Book().Open(CaseCode.Parse("OTHER-1")!));
    }

    [Fact]
    public void Saving_again_makes_the_next_revision_of_the_plan_alone_or_of_both()
    {
        CaseBook book = Book();
        SaveResult.Saved first = Saved(book.Save(Made.Case, Made.Plan, null));
        PlanRevision emptied = Emptied();
        SaveResult.Saved second = Saved(book.Save(emptied, first.Plan.Reference));
        SaveResult.Saved third = Saved(book.Save(Made.Case, Made.Plan, book.Open(Made.Case.Code)));

        Assert.Equal([1, 2, 3], new[] { first, second, third }.Select(saved => saved.Plan.Revision));
        Assert.Equal(PlanJson.Write(Made.Plan), PlanJson.Write(book.Open(Made.Case.Code)!.Plan!));
    }

    [Fact]
    public void Who_saves_second_is_told_who_was_first_and_overwrites_nothing()
    {
        Saved(Book().Save(Made.Case, Made.Plan, null));
        OpenedCase mine = Book().Open(Made.Case.Code)!;
        OpenedCase theirs = Book(Sample.Supervisor).Open(Made.Case.Code)!;
        Saved(Book(Sample.Supervisor).Save(theirs.Case, Emptied(), theirs));

        SaveResult.NotSaved refused = Assert.IsType<SaveResult.NotSaved>(Book().Save(mine.Case, mine.Plan!, mine));

        Assert.Equal(Refusal.TryLater, refused.Kind);
        Assert.Equal(
            "Somebody saved first: case revision 2 by Kim Sample at 2026-03-02 08:30 UTC; plan revision 2 by Kim Sample at 2026-03-02 08:30 UTC. "
                + "Nothing was overwritten; open the case again and make the change there.",
            refused.Why);
        OpenedCase stands = Book().Open(Made.Case.Code)!;
        Assert.Equal((2, "Kim Sample"), (stands.PlanStamp!.Revision, stands.PlanStamp.By.Name));
        Assert.Equal(PlanJson.Write(Emptied()), PlanJson.Write(stands.Plan!));
    }

    [Fact]
    public void A_new_case_under_a_code_that_is_taken_is_refused()
    {
        Saved(Book().Save(Made.Case, Made.Plan, null));

        SaveResult.NotSaved refused = Assert.IsType<SaveResult.NotSaved>(Book(Sample.Supervisor).Save(Made.Case, Emptied(), null));

        Assert.Contains("by Robin Example", refused.Why, StringComparison.Ordinal);
        Assert.Equal(PlanJson.Write(Made.Plan), PlanJson.Write(Book().Open(Made.Case.Code)!.Plan!));
    }

    [Fact]
    public void The_list_shows_operation_side_and_plan()
    {
        Saved(Book().Save(Made.Case, Made.Plan, null));

        CaseRow row = Assert.Single(Book().List(new CaseQuery()).Rows);

        Assert.Equal(("2026-02-02", "6"), (row.Fields[CaseSummary.Operation], row.Fields[CaseSummary.Weeks]));
        Assert.Equal((Made.Plan.Regimen, Made.Case.Operation.Side.ToString().ToLowerInvariant()), (row.Fields[CaseSummary.Regimen], row.Fields[CaseSummary.Side]));
        Assert.False(row.Fields.ContainsKey(CaseSummary.LastAssessed));
    }

    private static PlanRevision Emptied() => PlanEdit.Set(Made.Plan, new CellAddress("bend", 3), null);

    private static SaveResult.Saved Saved(SaveResult result) => Assert.IsType<SaveResult.Saved>(result);

    private CaseBook Book(Actor? by = null) => new(
        new LiteDbPlanStore(new StoreOptions(_folder.Path, CaseSummary.Of)), Sample.Alone(by), new FixedClock(Sample.Monday));
}
