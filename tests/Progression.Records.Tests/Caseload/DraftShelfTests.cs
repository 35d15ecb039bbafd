using System.Collections.Immutable;
using System.Runtime.Versioning;
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
    private const int Gone = 2_000_000_000; // No process has such a number.
    private static readonly Actor Anna = new("1001", "anna");
    private static readonly DraftSession Session = DraftSession.Current(Anna);
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_kept_draft_is_found_at_the_next_opening_with_what_it_was_made_from_by_whom_and_when()
    {
        Shelf(process: Gone).Keep(new KeptDraft(Plan, Base));

        FoundDraft found = Assert.Single(Found());

        Assert.Equal(Base, found.Plan!.BasedOn);
        Assert.Equal(PlanJson.Write(Plan), PlanJson.Write(found.Plan.Plan));
        Assert.Equal(("anna", "1001", Gone), (found.Session.Name, found.Session.Account, found.Session.Process));
        Assert.Equal(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero), found.At);
    }

    [Fact]
    public void A_form_is_found_with_every_text_whatever_was_typed()
    {
        KeptForm form = new(Plan.Code, "assessment")
        {
            At = "flexion",
            Fields = ImmutableSortedDictionary<string, string>.Empty.Add("flexion", "95").Add("note", "\u00e9\"\\ \u202e\ud83e\uddd1").Add("rater", ""),
            Further = ImmutableSortedDictionary<string, string>.Empty.Add("visit", "2026-11-18"),
        };
        Shelf().Keep(form);
        Assert.True(form.IsSame(Assert.Single(Found()).Form));
    }

    [Fact]
    public void A_form_without_a_case_has_its_own_place()
    {
        Shelf().Keep(new KeptForm(null, "intake"));
        Assert.Equal("intake", Assert.Single(Shelf().Find(null).Drafts).Form!.Form);
        Assert.Empty(Found());
        Assert.Empty(Shelf().Codes());
        Assert.True(Shelf().Any);
    }

    [Fact]
    public void A_later_draft_takes_the_place_of_the_earlier_one_of_the_same_opening()
    {
        DraftShelf shelf = Shelf();
        shelf.Keep(new KeptDraft(Plan, Base));
        shelf.Keep(new KeptDraft(PlanEdit.Set(Plan, new CellAddress("bend", 3), null), null));

        FoundDraft found = Assert.Single(Found());

        Assert.Null(found.Plan!.BasedOn);
        Assert.True(found.Plan.Plan.At(new CellAddress("bend", 3))!.IsPinned);
        Assert.Empty(shelf.Find(Plan.Code).Drafts);
    }

    [Fact]
    public void Openings_and_processes_do_not_write_over_each_other()
    {
        Shelf().Keep(new KeptDraft(Plan, Base));
        Shelf().Keep(new KeptDraft(Plan, Base));
        Shelf(process: Gone).Keep(new KeptDraft(Plan, Base));
        Assert.Equal(3, Found().Length);
    }

    [Fact]
    public void The_newest_is_found_first()
    {
        Shelf(hour: 9).Keep(new KeptDraft(Plan, null));
        Shelf(hour: 11).Keep(new KeptDraft(Plan, Base));
        Shelf(hour: 10).Keep(new KeptForm(Plan.Code, "session"));
        Assert.Equal([11, 10, 9], Found().Select(draft => draft.At.Hour));
    }

    [Fact]
    public void What_another_process_still_works_on_is_counted_and_left()
    {
        DraftSession other = DraftSession.Current(Anna) with { Process = Session.Process - 1, Started = Session.Started };
        DraftShelf beside = new(_folder.Path, other, new Clock(9));
        DraftSession here = Session with { Process = Gone };
        new DraftShelf(_folder.Path, Session, new Clock(9)).Keep(new KeptDraft(Plan, Base));
        FoundDrafts found = new DraftShelf(_folder.Path, here, new Clock(9)).Opened().Find(Plan.Code);
        Assert.Equal((0, 1), (found.Drafts.Length, found.InUse));
        beside.Keep(new KeptDraft(Plan, null));
        Assert.Single(new DraftShelf(_folder.Path, here, new Clock(9)).Opened().Find(Plan.Code).Drafts);
    }

    [Fact]
    public void After_a_restart_of_the_machine_a_process_of_the_same_number_is_another_one()
    {
        new DraftShelf(_folder.Path, Session with { Boot = "0123456789ab" }, new Clock(9)).Keep(new KeptDraft(Plan, Base));
        Assert.Single(Found());
    }

    [Fact]
    public void Without_a_draft_there_is_none_and_nothing_to_drop()
    {
        Assert.Empty(Found());
        Shelf().Drop(Plan.Code);
        Shelf().Drop(Plan.Code, "session");
        Assert.False(Directory.Exists(_folder.File("drafts")));
    }

    [Fact]
    public void A_dropped_draft_is_gone_and_so_is_one_that_was_found_and_discarded()
    {
        DraftShelf shelf = Shelf();
        shelf.Keep(new KeptDraft(Plan, Base));
        shelf.Keep(new KeptForm(Plan.Code, "session"));
        shelf.Drop(Plan.Code);
        FoundDraft form = Assert.Single(Found());
        Assert.NotNull(form.Form);
        Shelf().Discard(form);
        Assert.Empty(Found());
        Assert.False(Shelf().Any);
    }

    [Fact]
    public void Each_case_and_each_account_has_its_own()
    {
        PlanRevision other = InventedPlans.One("K-015").Plan;
        DraftShelf anna = Shelf();
        anna.Keep(new KeptDraft(Plan, Base));
        anna.Keep(new KeptDraft(other, null));
        Shelf("1002").Keep(new KeptDraft(Plan, null));
        anna.Drop(Plan.Code);

        Assert.Empty(Found());
        Assert.Equal(["K-015"], Shelf().Codes());
        Assert.False(Shelf().Has(Plan.Code));
        Assert.True(Shelf("1002").Has(Plan.Code));
        Assert.Equal(other.Code, Assert.Single(Shelf().Find(other.Code).Drafts).Plan!.Plan.Code);
    }

    [Fact]
    [SupportedOSPlatform("linux")]
    public void In_a_shared_folder_each_account_keeps_its_own_drafts_and_can_take_away_nobody_elses()
    {
        File.SetUnixFileMode(_folder.Path, (UnixFileMode)0x5F8); // 2770

        Shelf().Keep(new KeptDraft(Plan, Base));

        Assert.Equal((UnixFileMode)0x7F8, File.GetUnixFileMode(_folder.File("drafts"))); // 3770
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Assert.Single(Directory.GetFiles(_folder.File("drafts")))));
    }

    [Fact]
    public void Only_its_owner_may_read_a_draft()
    {
        Shelf().Keep(new KeptDraft(Plan, Base));

        string path = Assert.Single(Directory.GetFiles(_folder.File("drafts")));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
            Assert.Equal((UnixFileMode)0x1C0, File.GetUnixFileMode(_folder.File("drafts")));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(500)]
    public void A_damaged_draft_is_told_and_set_aside_on_disk(int bytes)
    {
        Shelf().Keep(new KeptDraft(Plan, Base));
        string path = Assert.Single(Directory.GetFiles(_folder.File("drafts")));
        File.WriteAllBytes(path, File.ReadAllBytes(path)[..bytes]);

        FoundDrafts found = Shelf().Find(Plan.Code);
        Assert.Empty(found.Drafts);
        Assert.Contains("left aside", Assert.Single(found.Unreadable), StringComparison.Ordinal);
        Assert.Equal(bytes, new FileInfo(path + ".unreadable").Length);
        Assert.Empty(Shelf().Find(Plan.Code).Unreadable);
    }

    [Fact]
    public void A_draft_left_half_written_beside_the_whole_one_does_no_harm()
    {
        DraftShelf shelf = Shelf();
        shelf.Keep(new KeptDraft(Plan, Base));
        string path = Assert.Single(Directory.GetFiles(_folder.File("drafts")));
        File.WriteAllText(path + ".new", "{\"schema\":");

        Assert.Equal(PlanJson.Write(Plan), PlanJson.Write(Assert.Single(Found()).Plan!.Plan));
        shelf.Keep(new KeptDraft(Plan, null));
        Assert.Null(Assert.Single(Found()).Plan!.BasedOn);
    }

    private ImmutableArray<FoundDraft> Found() => Shelf().Find(Plan.Code).Drafts;

    private DraftShelf Shelf(string account = "1001", int? process = null, int hour = 9) =>
        new DraftShelf(_folder.Path, Session with { Account = account, Process = process ?? Session.Process }, new Clock(hour)).Opened();

    private sealed class Clock(int hour) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 11, 25, hour, 0, 0, TimeSpan.Zero);
    }
}
