using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Plain;
using Progression.App.Reviews;
using Progression.App.Screens;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.Clinic;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Tests.Screens;

/// <summary>Therapists and a supervisor at one real store, each with screens of their own.</summary>
public sealed class ReviewOnScreensTests : IDisposable
{
    private static readonly ClinicPerson Anna = new("1001", "anna", [ClinicRole.Therapist]);
    private static readonly ClinicPerson Ben = new("1002", "ben", [ClinicRole.Therapist]);
    private static readonly ClinicPerson Sue = new("1003", "sue", [ClinicRole.Supervisor]);
    private readonly TempStore _temp = new();

    public ReviewOnScreensTests() => Assert.True(DemoStore.Prepare(_temp.Open(_temp.Demo), fresh: false).Ready);

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_review_is_asked_for_signed_seen_by_both_and_voided_by_the_next_save()
    {
        (ScreenStack anna, ScreenStack sue) = (Plan(Anna), Queue(Sue));
        Assert.Null(News(sue));
        Keys(anna, "o a Enter");
        Assert.Equal("Review of revision 2 is asked for.", anna.Top!.Told);

        Assert.NotNull(News(sue));
        Assert.Equal("LARK-03", Assert.Single(((Frame<QueueState>)sue.Top!).State.Waiting).Code.Text);
        Keys(sue, "Enter s Enter y");
        Assert.StartsWith("Signed by sue, 25 Nov 2026, revision 2, hash ", sue.Top!.Told, StringComparison.Ordinal);

        Assert.NotNull(News(anna));
        Assert.Equal(("Signed by sue, revision 2.", "saved, signed"), (anna.Top!.Told, anna.Top.Where.Kept));
        Assert.Null(News(anna));
        Keys(anna, "Esc x Ctrl+S");
        Assert.Equal("saved, changed since signed", anna.Top.Where.Kept);

        Assert.NotNull(News(sue));
        Assert.Equal("anna saved revision 3: U shows it.", sue.Top!.Told);
        Keys(sue, "Esc U M .");
        Assert.StartsWith("Changed cell 1 of 1: was ", sue.Top.Told, StringComparison.Ordinal);
    }

    [Fact]
    public void What_comes_from_others_never_changes_what_is_being_typed()
    {
        (ScreenStack anna, ScreenStack sue) = (Plan(Anna), Queue(Sue));
        Keys(anna, "o a Enter Esc Enter Ctrl+U 7 7");
        Keys(sue, "Ctrl+R Enter r n o Enter");
        Assert.Equal("The plan is returned, with your comment.", sue.Top!.Told);

        Assert.NotNull(News(anna));
        GridState typing = Grid(anna);
        Assert.Equal((GridMode.Edit, "77", "Returned by sue with 1 comment: o shows it."), (typing.Mode, typing.Entry!.Line.Text, typing.Status));
        Assert.Equal("returned", Core.Reviews.SignatureWords.Brief(typing.Review!.Standing));
    }

    [Fact]
    public void Nobody_signs_their_own_plan_and_the_try_is_in_the_audit()
    {
        ClinicPerson both = new("1001", "anna", [ClinicRole.Therapist, ClinicRole.Supervisor]);
        ScreenStack anna = Plan(both);
        Keys(anna, "o a Enter s");

        Assert.Equal("You saved revision 2 of this plan: nobody signs what they made. Somebody else must sign.", anna.Top!.Told);
        LiteDbPlanStore store = new(new StoreOptions(_temp.Demo, CaseSummary.Of));
        Assert.Contains(store.History(AuditChain.Code, RecordKind.Audit), entry =>
            AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, entry.Revision)!.Body) is { Act: AuditAct.Refused, CaseCode: "LARK-03", What: "sign a plan" });
    }

    [Fact]
    public void Two_who_change_one_plan_see_both_sides_and_lose_nothing()
    {
        (ScreenStack anna, ScreenStack ben) = (Plan(Anna), Plan(Ben));
        Keys(ben, "x Right x Ctrl+S");
        Keys(anna, "x Down x Ctrl+S");

        GridState met = Grid(anna);
        Assert.Equal(GridMode.Conflict, met.Mode);
        Assert.StartsWith("ben saved revision 3 at 2026-11-25 09:00 UTC", met.Conflict!.Saved, StringComparison.Ordinal);
        Assert.Equal([ForkSide.Theirs, ForkSide.Mine], GridConflicts.Cells(met).Select(cell => cell.Side));
        Keys(anna, "Ctrl+S");

        OpenedCase saved = _temp.Open(_temp.Demo).Book.Open(DemoStore.Showcase)!;
        Assert.Equal(("Saved, both put together.", false, 4, "anna"), (anna.Top!.Told, Grid(anna).IsUnsaved, saved.PlanStamp!.Revision, saved.PlanStamp.By.Name));
        Assert.Equal(3, new[] { ("flexion", 4), ("flexion", 5), ("extension", 4) }.Count(cell => saved.Plan!.ContentAt(cell.Item1, cell.Item2) is null));
        Assert.False(_temp.Open(_temp.Demo, person: Anna).Drafts.Codes().Contains("LARK-03"));
    }

    [Fact]
    public void A_conflict_that_is_left_keeps_the_changes_as_a_draft()
    {
        (ScreenStack anna, ScreenStack ben) = (Plan(Anna), Plan(Ben));
        Keys(ben, "x Ctrl+S");
        Keys(anna, "Down x Ctrl+S Esc q");

        Assert.Contains("LARK-03", _temp.Open(_temp.Demo, person: Anna).Drafts.Codes());
        Assert.Equal("ben", _temp.Open(_temp.Demo).Book.Open(DemoStore.Showcase)!.PlanStamp!.By.Name);
    }

    [Fact]
    public void A_case_that_two_change_in_different_places_holds_both()
    {
        (StoredPlan anna, StoredPlan ben) = (Room(Anna), Room(Ben));
        Assert.Null(ben.SaveCase(ben.Case with { Therapist = "BB" }));
        Assert.Null(anna.SaveCase(anna.Case with { Stimulator = "two channels" }));

        Case saved = _temp.Open(_temp.Demo).Book.Open(DemoStore.Showcase)!.Case;
        Assert.Equal(("BB", "two channels"), (saved.Therapist, saved.Stimulator));
        Assert.Equal(" ben saved the case at 2026-11-25 09:00 UTC in between; both are kept.", anna.Joined);
    }

    [Fact]
    public void A_case_that_two_change_in_the_same_place_is_asked_about_first()
    {
        (StoredPlan anna, StoredPlan ben) = (Room(Anna), Room(Ben));
        Assert.Null(ben.SaveCase(ben.Case with { Therapist = "BB" }));

        Assert.Equal(
            "ben saved the case at 2026-11-25 09:00 UTC and changed the same: therapist. Saving once more puts yours in its place; Esc leaves it and keeps what you typed.",
            anna.SaveCase(anna.Case with { Therapist = "AA" }));
        Assert.Equal("BB", _temp.Open(_temp.Demo).Book.Open(DemoStore.Showcase)!.Case.Therapist);
        Assert.Null(anna.SaveCase(anna.Case with { Therapist = "AA" }));
        Assert.Equal("AA", _temp.Open(_temp.Demo).Book.Open(DemoStore.Showcase)!.Case.Therapist);
    }

    [Fact]
    public void The_list_follows_what_others_save_and_the_cursor_stays()
    {
        OpenStore store = _temp.Open(_temp.Demo, person: Anna);
        ScreenStack anna = new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Open("", CaseCode.Parse("OWL-01")));
        Assert.Null(News(anna));
        ScreenStack ben = Plan(Ben);
        Keys(ben, "x Ctrl+S o a Enter");

        Assert.NotNull(News(anna));
        StartState list = ((Frame<StartState>)anna.Top!).State;
        Assert.Equal(("OWL-01", true), (list.Chosen!.Code.Text, list.Cases.Single(line => line.Code.Text == "LARK-03").IsAsked));
        Assert.Null(News(anna));
    }

    [Fact]
    public void All_of_it_can_be_said_in_line_mode()
    {
        PlainTalk anna = new(Plan(Anna)), sue = new(Queue(Sue));
        anna.Begin();
        anna.Hear("review");
        anna.Hear("ask for a review");
        Assert.Contains(anna.Hear("Week 3, please"), line => line.Contains("Review of revision 2 is asked for.", StringComparison.Ordinal));

        Assert.Contains(sue.Begin(), line => line.Contains("No plan waits", StringComparison.Ordinal));
        Assert.Contains(sue.Hear("read again"), line => line.StartsWith("1 of 1: LARK-03, week 4: revision 2, asked for by anna", StringComparison.Ordinal));
        Assert.Contains(sue.Hear("review"), line => line.Contains("Week 3, please", StringComparison.Ordinal));
        sue.Hear("sign");
        sue.Hear("");
        Assert.Contains(sue.Hear("key y"), line => line.StartsWith("Signed by sue", StringComparison.Ordinal));
    }

    private ScreenStack Plan(ClinicPerson person)
    {
        OpenStore store = _temp.Open(_temp.Demo, person: person);
        return new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Plan(DemoStore.Showcase).Frame!);
    }

    private ScreenStack Queue(ClinicPerson person)
    {
        OpenStore store = _temp.Open(_temp.Demo, person: person);
        return new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Queue());
    }

    private StoredPlan Room(ClinicPerson person)
    {
        OpenStore store = _temp.Open(_temp.Demo, person: person);
        return new StoredPlan(store, store.Book.Open(DemoStore.Showcase)!);
    }

    private static ScreenNews? News(ScreenStack screens)
    {
        ScreenNews? news = screens.Look();
        if (news is not null)
        {
            screens.Take(news);
        }

        return news;
    }

    private static GridState Grid(ScreenStack screens) => ((Frame<GridState>)screens.Top!).State;

    private static void Keys(ScreenStack screens, string keys)
    {
        foreach (string key in keys.Split(' '))
        {
            screens.Press(key, key.Length == 1 ? key : key == "Space" ? " " : null);
        }
    }
}
