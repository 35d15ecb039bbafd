using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Grid;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Storage;

namespace Progression.App.Tests.Screens;

/// <summary>Saving and keeping drafts on a real store, as the workbook does it.</summary>
public sealed class StoredPlanTests : IDisposable
{
    private static readonly CaseCode Code = DemoStore.Showcase;
    private readonly TempStore _temp = new();
    private readonly OpenStore _store;

    public StoredPlanTests()
    {
        _store = _temp.Open(_temp.Demo);
        Assert.True(DemoStore.Prepare(_store, fresh: false).Ready);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Saves_and_saves_again_each_over_the_one_before()
    {
        OpenedPlan open = Open();
        Assert.Null(open.Keeper.Save(Without(open, "bend")));
        Assert.Null(open.Keeper.Save(Without(open, "calf")));
        Assert.Equal(4, _store.Book.Open(Code)!.PlanStamp!.Revision);
        Assert.Null(Open().Start.Plan.ContentAt("calf", 4));
    }

    [Fact]
    public void A_save_by_somebody_else_in_between_is_told_and_stays()
    {
        OpenedPlan mine = Open();
        OpenedPlan theirs = OpenedPlan.Of(_temp.Open(_temp.Demo, new Actor("1002", "ben")), Code).Plan!;
        Assert.Null(theirs.Keeper.Save(Without(theirs, "bend")));
        Assert.Contains("Somebody saved first: plan revision 3 by ben", mine.Keeper.Save(Without(mine, "calf")), StringComparison.Ordinal);
        Assert.NotNull(Open().Start.Plan.ContentAt("calf", 4));
        Assert.Null(Open().Start.Plan.ContentAt("bend", 4));
    }

    [Fact]
    public void A_kept_draft_is_offered_recovered_and_saved()
    {
        OpenedPlan first = Open();
        Assert.Null(first.Keeper.KeepDraft(Without(first, "bend")));
        OpenedPlan again = Open();
        Assert.Equal(GridMode.Draft, again.Start.Mode);
        DraftOffer offer = Assert.Single(again.Start.Offers);
        Assert.Equal(("changes to the plan", "Kept today at 09:00, earlier in this session.", ""), (offer.What, offer.Kept, offer.Since));
        Assert.Null(again.Keeper.KeepDraft(offer.Plan!));
        Assert.Null(again.Keeper.Forget(offer.Id));
        Assert.Null(again.Keeper.Save(offer.Plan!));
        Assert.Equal((GridMode.Grid, false), (Open().Start.Mode, _store.Drafts.Has(Code)));
        Assert.Null(Open().Start.Plan.ContentAt("bend", 4));
    }

    [Fact]
    public void A_draft_of_an_ended_session_is_offered_and_one_of_a_running_one_is_left_alone()
    {
        OpenedPlan ended = OpenedPlan.Of(_temp.Open(_temp.Demo, ended: true), Code).Plan!;
        ended.Keeper.KeepDraft(Without(ended, "bend"));
        Assert.Equal("Kept today at 09:00, by anna in a session that has ended.", Assert.Single(Open().Start.Offers).Kept);
        // The process that started the tests runs as long as they do.
        string own = Directory.GetFiles(Path.Combine(_temp.Demo, "drafts")).Single();
        string running = own.Replace("-2000000000-", $"-{Parent()}-", StringComparison.Ordinal);
        string[] parts = Path.GetFileName(running).Split('.')[2].Split('-');
        File.Move(own, running.Replace($"-{Parent()}-{parts[2]}-", $"-{Parent()}-{StartOf(Parent())}-", StringComparison.Ordinal));
        OpenedPlan beside = Open();
        Assert.Equal((0, GridMode.Grid), (beside.Start.Offers.Length, beside.Start.Mode));
        Assert.Contains("Another session of yours has unsaved work on this case", beside.Start.Status, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_sessions_of_one_account_do_not_write_over_each_other()
    {
        OpenedPlan one = OpenedPlan.Of(_temp.Open(_temp.Demo, ended: true), Code).Plan!;
        OpenedPlan other = Open();
        one.Keeper.KeepDraft(Without(one, "bend"));
        other.Keeper.KeepDraft(Without(other, "calf"));
        ImmutableArray<DraftOffer> offers = Open().Start.Offers;
        Assert.Equal(2, offers.Length);
        Assert.Contains(offers, offer => offer.Plan!.ContentAt("bend", 4) is null && offer.Plan.ContentAt("calf", 4) is not null);
        Assert.Contains(offers, offer => offer.Plan!.ContentAt("calf", 4) is null && offer.Plan.ContentAt("bend", 4) is not null);
    }

    [Fact]
    public void A_draft_that_differs_in_nothing_is_dropped_without_a_question()
    {
        OpenedPlan first = Open();
        first.Keeper.KeepDraft(first.Start.Plan);
        Assert.Equal(GridMode.Grid, Open().Start.Mode);
        Assert.False(_store.Drafts.Has(Code));
    }

    [Fact]
    public void A_draft_of_an_older_revision_goes_into_the_newer_one_cell_by_cell()
    {
        OpenedPlan first = Open();
        first.Keeper.KeepDraft(PlanEdit.Set(Without(first, "bend"), new CellAddress("calf", 5), null));
        OpenedPlan theirs = OpenedPlan.Of(_temp.Open(_temp.Demo, new Actor("1002", "ben")), Code).Plan!;
        theirs.Keeper.Save(PlanEdit.Set(Without(theirs, "hip"), new CellAddress("calf", 5), theirs.Start.Plan.ContentAt("calf", 6)));

        OpenedPlan again = Open();
        DraftOffer offer = Assert.Single(again.Start.Offers);
        Assert.Equal("It was made from revision 2; revision 3 by ben has been saved since and stays.", offer.Since);
        Assert.Equal(
            [("bend", MergeStanding.Clean), ("calf", MergeStanding.Conflict)],
            GridDrafts.Cells(again.Start).Select(cell => (cell.Address.Lane, cell.Standing)));
        PlanRevision merged = PlanMerge.Take(again.Start.Plan, GridDrafts.Cells(again.Start).Where(cell => cell.Standing == MergeStanding.Clean));
        Assert.Null(again.Keeper.KeepDraft(merged));
        Assert.Null(again.Keeper.Save(merged));
        PlanRevision saved = Open().Start.Plan;
        Assert.Equal((true, true, true), (saved.ContentAt("bend", 4) is null, saved.ContentAt("hip", 4) is null, saved.ContentAt("calf", 5) is not null));
    }

    [Fact]
    public void A_keep_that_comes_late_does_not_bring_back_what_was_saved_or_taken_back()
    {
        OpenedPlan open = Open();
        PlanRevision edited = Without(open, "bend");
        open.Keeper.KeepDraft(edited);
        open.Keeper.DropDraft();
        Assert.Null(open.Keeper.KeepAgain(edited));
        Assert.False(_store.Drafts.Has(Code));
        open.Keeper.KeepDraft(edited);
        open.Keeper.Save(edited);
        open.Keeper.KeepAgain(edited);
        Assert.False(_store.Drafts.Has(Code));
    }

    [Fact]
    public void A_draft_that_cannot_be_read_is_left_aside_and_told()
    {
        OpenedPlan first = Open();
        first.Keeper.KeepDraft(Without(first, "bend"));
        string draft = Directory.GetFiles(Path.Combine(_temp.Demo, "drafts")).Single();
        File.WriteAllText(draft, "{");
        Assert.Contains("left aside", Open().Start.Status, StringComparison.Ordinal);
        Assert.Equal("{", File.ReadAllText(draft + ".unreadable"));
        Assert.Equal("", Open().Start.Status);
    }

    [Fact]
    public void A_draft_that_cannot_be_kept_is_told()
    {
        File.WriteAllText(Path.Combine(_temp.Demo, "drafts"), "a file where the folder should be");
        OpenedPlan open = Open();
        Assert.NotNull(open.Keeper.KeepDraft(Without(open, "bend")));
    }

    [Fact]
    public void A_case_that_is_not_there_is_told() =>
        Assert.Contains("There is no case NOBODY-1", OpenedPlan.Of(_store, CaseCode.Parse("NOBODY-1")!).Why, StringComparison.Ordinal);

    private static int Parent() => int.Parse(Stat("self")[1], CultureInfo.InvariantCulture);

    private static string StartOf(int process) => Stat($"{process}")[19];

    // Of proc_pid_stat(5), the fields after the name: state, parent, and as the twentieth the start.
    private static string[] Stat(string process)
    {
        string stat = File.ReadAllText($"/proc/{process}/stat");
        return stat[(stat.LastIndexOf(')') + 2)..].Split(' ');
    }

    private OpenedPlan Open() => OpenedPlan.Of(_store, Code).Plan!;

    private static PlanRevision Without(OpenedPlan open, string lane) => PlanEdit.Set(open.Start.Plan, new CellAddress(lane, 4), null);
}
