using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Plans;
using Progression.Records.Storage;
using Progression.Records.Tests.Plans;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Caseload;

public sealed class DraftShelfTests : IDisposable
{
    private static readonly PlanRevision Plan = InventedPlans.One().Plan;
    private static readonly RevisionRef Base = new(3, new string('a', 64));
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_kept_draft_is_found_again_with_what_it_was_made_from()
    {
        Shelf().Keep(new KeptDraft(Plan, Base));

        KeptDraft found = Shelf().Find(Plan.Code)!;

        Assert.Equal(Base, found.BasedOn);
        Assert.Equal(PlanJson.Write(Plan), PlanJson.Write(found.Plan));
    }

    [Fact]
    public void A_later_draft_takes_the_place_of_the_earlier_one()
    {
        Shelf().Keep(new KeptDraft(Plan, Base));
        Shelf().Keep(new KeptDraft(PlanEdit.Set(Plan, new CellAddress("bend", 3), null), null));

        KeptDraft found = Shelf().Find(Plan.Code)!;

        Assert.Null(found.BasedOn);
        Assert.True(found.Plan.At(new CellAddress("bend", 3))!.IsPinned);
        Assert.Single(Directory.GetFiles(_folder.File("drafts")));
    }

    [Fact]
    public void Without_a_draft_there_is_none_and_nothing_to_drop()
    {
        Assert.Null(Shelf().Find(Plan.Code));
        Shelf().Drop(Plan.Code);
        Assert.False(Directory.Exists(_folder.File("drafts")));
    }

    [Fact]
    public void A_dropped_draft_is_gone()
    {
        Shelf().Keep(new KeptDraft(Plan, Base));
        Shelf().Drop(Plan.Code);

        Assert.Null(Shelf().Find(Plan.Code));
    }

    [Fact]
    public void Each_case_and_each_account_has_its_own()
    {
        PlanRevision other = InventedPlans.One("K-015").Plan;
        Shelf("1001").Keep(new KeptDraft(Plan, Base));
        Shelf("1001").Keep(new KeptDraft(other, null));
        Shelf("1002").Keep(new KeptDraft(Plan, null));
        Shelf("1001").Drop(Plan.Code);

        Assert.Null(Shelf("1001").Find(Plan.Code));
        Assert.Equal(other.Code, Shelf("1001").Find(other.Code)!.Plan.Code);
        Assert.NotNull(Shelf("1002").Find(Plan.Code));
    }

    [Fact]
    public void Only_its_owner_may_read_a_draft()
    {
        Shelf().Keep(new KeptDraft(Plan, Base));

        string path = Assert.Single(Directory.GetFiles(_folder.File("drafts")));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(500)]
    public void A_damaged_draft_is_told_and_left_where_it_is(int bytes)
    {
        Shelf().Keep(new KeptDraft(Plan, Base));
        string path = Assert.Single(Directory.GetFiles(_folder.File("drafts")));
        File.WriteAllBytes(path, File.ReadAllBytes(path)[..bytes]);

        Assert.Throws<FormatException>(() => Shelf().Find(Plan.Code));
        Assert.Equal(bytes, new FileInfo(path).Length);
    }

    [Fact]
    public void A_draft_left_half_written_beside_the_whole_one_does_no_harm()
    {
        Shelf().Keep(new KeptDraft(Plan, Base));
        string path = Assert.Single(Directory.GetFiles(_folder.File("drafts")));
        File.WriteAllText(path + ".new", "{\"schema\":");

        Assert.Equal(PlanJson.Write(Plan), PlanJson.Write(Shelf().Find(Plan.Code)!.Plan));
        Shelf().Keep(new KeptDraft(Plan, null));
        Assert.Null(Shelf().Find(Plan.Code)!.BasedOn);
    }

    private DraftShelf Shelf(string account = "1001") => new(_folder.Path, account);
}
