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
    public void A_kept_draft_is_offered_taken_up_and_saved()
    {
        OpenedPlan first = Open();
        Assert.Null(first.Keeper.KeepDraft(Without(first, "bend")));
        OpenedPlan again = Open();
        Assert.Equal(GridMode.Draft, again.Start.Mode);
        Assert.Null(again.Keeper.KeepDraft(again.Start.Draft!));
        Assert.Null(again.Keeper.Save(again.Start.Draft!));
        Assert.Equal((GridMode.Grid, false), (Open().Start.Mode, _store.Drafts.Has(Code)));
        Assert.Null(Open().Start.Plan.ContentAt("bend", 4));
    }

    [Fact]
    public void A_dropped_draft_is_gone_and_saving_goes_on()
    {
        OpenedPlan first = Open();
        first.Keeper.KeepDraft(Without(first, "bend"));
        OpenedPlan again = Open();
        Assert.Null(again.Keeper.DropDraft());
        Assert.Null(again.Keeper.Save(Without(again, "calf")));
        Assert.NotNull(Open().Start.Plan.ContentAt("bend", 4));
    }

    [Fact]
    public void A_draft_of_an_older_revision_says_so_and_cannot_overwrite_the_newer_one()
    {
        OpenedPlan first = Open();
        first.Keeper.KeepDraft(Without(first, "bend"));
        OpenedPlan theirs = OpenedPlan.Of(_temp.Open(_temp.Demo, new Actor("1002", "ben")), Code).Plan!;
        theirs.Keeper.Save(Without(theirs, "calf"));

        OpenedPlan again = Open();
        Assert.Contains("revision 3 by ben has been saved since", again.Start.Status, StringComparison.Ordinal);
        again.Keeper.KeepDraft(again.Start.Draft!);
        Assert.Contains("Nothing was overwritten", again.Keeper.Save(again.Start.Draft!), StringComparison.Ordinal);
        // Taken back, the draft can still come again by redo.
        again.Keeper.DropDraft();
        Assert.NotNull(again.Keeper.Save(again.Start.Draft!));
    }

    [Fact]
    public void An_older_draft_that_is_dropped_at_once_leaves_the_newer_plan_to_be_saved_over()
    {
        OpenedPlan first = Open();
        first.Keeper.KeepDraft(Without(first, "bend"));
        OpenedPlan theirs = OpenedPlan.Of(_temp.Open(_temp.Demo, new Actor("1002", "ben")), Code).Plan!;
        theirs.Keeper.Save(Without(theirs, "calf"));

        OpenedPlan again = Open();
        again.Keeper.DropDraft();
        Assert.Null(again.Keeper.Save(Without(again, "hip")));
        Assert.Null(Open().Start.Plan.ContentAt("calf", 4));
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

    private OpenedPlan Open() => OpenedPlan.Of(_store, Code).Plan!;

    private static PlanRevision Without(OpenedPlan open, string lane) => PlanEdit.Set(open.Start.Plan, new CellAddress(lane, 4), null);
}
