using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Grid;
using Progression.App.Propose;
using Progression.App.Screens;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.App.Trying;

namespace Progression.App.Tests.Screens;

/// <summary>What is on its way between two keys when a session is killed: a line of the grid, choices on a proposal, what was tried, a form opened from the list.</summary>
public sealed class KeptTypingTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly OpenStore _killed;

    public KeptTypingTests()
    {
        _killed = _temp.Open(_temp.Demo, ended: true);
        Assert.True(DemoStore.Prepare(_killed, fresh: false).Ready);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_cell_half_typed_is_offered_and_goes_on_in_its_cell()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "g", "End", "Enter", "Ctrl+U");
        before.Paste("7");
        before.Keep();

        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        DraftOffer offer = Assert.Single(Grid(after).Offers);
        Assert.Equal("a half-typed line", offer.What);
        Assert.Equal(("Flexion, week 6", "7"), (Assert.Single(offer.Lines).Place, offer.Lines[0].Draft));
        Keys(after, "r");
        Assert.Equal((GridMode.Edit, "7", "Flexion", 6), (Grid(after).Mode, Grid(after).Entry!.Line.Text, Grid(after).Lane.Title, Grid(after).Week));
        Assert.Single(Files());
        after.Paste("9");
        Keys(after, "Enter");
        Assert.Equal("79 deg", Text(Grid(after)));
        after.Keep();
        Assert.DoesNotContain(Files(), file => file.EndsWith(".cell.json", StringComparison.Ordinal));
    }

    [Fact]
    public void A_reason_half_typed_goes_on_with_the_edit_that_waits_for_it()
    {
        ScreenStack asked = Asked(Screens(_killed));
        ProposedEdit edit = Grid(asked).Entry!.Proposed!;
        asked.Paste("the surgeon wants");
        asked.Keep();

        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        // First the plan as it was changed before, then the line over it.
        Keys(after, "r");
        Assert.Contains(Grid(after).Offers[0].Lines, line => line.Draft == "reason: the surgeon wants");
        Keys(after, "r");
        Assert.Equal((GridMode.Reason, "the surgeon wants"), (Grid(after).Mode, Grid(after).Entry!.Line.Text));
        Assert.Equal(edit.Changes, Grid(after).Entry!.Proposed!.Changes);
        Keys(after, "Enter");
        Assert.All(edit.Changes, change => Assert.Equal("the surgeon wants", Grid(after).Plan.At(change.Address)!.Pin!.Reason));
    }

    [Fact]
    public void A_line_that_was_left_or_only_opened_keeps_nothing()
    {
        ScreenStack screens = Screens(_temp.Open(_temp.Demo));
        Keys(screens, "Enter");
        screens.Keep();
        Assert.Empty(Files());
        screens.Paste("1");
        screens.Keep();
        Assert.Single(Files());
        Keys(screens, "Esc");
        screens.Keep();
        Assert.Empty(Files());
    }

    [Fact]
    public void A_line_typed_and_taken_within_the_second_leaves_nothing_behind()
    {
        ScreenStack screens = Screens(_temp.Open(_temp.Demo));
        Keys(screens, "g", "End", "Enter", "Ctrl+U");
        screens.Paste("79");
        screens.Keep();
        Frame typing = screens.Top!;
        Keys(screens, "Enter", "Ctrl+S", "q");
        Assert.Null(typing.Keep());
        Assert.Empty(Files());
    }

    [Fact]
    public void Choices_on_a_proposal_come_back_with_their_assessment()
    {
        ScreenStack before = Screens(_killed);
        ToTheProposal(before);
        Keys(before, "a", "Down", "Down");
        int taken = Proposal(before).Taken.Count;
        Assert.InRange(taken, 1, 1000);
        before.Keep();

        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        Assert.Equal("an assessment", Assert.Single(Grid(after).Offers).What);
        Keys(after, "r");
        ToTheProposalFromHere(after);
        Assert.Equal(taken, Proposal(after).Taken.Count);
        Assert.StartsWith("Your choices are as they were left.", Proposal(after).Status, StringComparison.Ordinal);
        Keys(after, "Ctrl+S");
        Assert.Contains("Saved: the assessment", Grid(after).Status, StringComparison.Ordinal);
        Assert.Empty(Files());
    }

    [Fact]
    public void A_reason_for_taking_nothing_comes_back_and_choices_stay_when_the_proposal_is_only_left()
    {
        ScreenStack before = Screens(_killed);
        ToTheProposal(before);
        Keys(before, "Ctrl+S");
        before.Paste("wait for");
        before.Keep();
        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        Keys(after, "r");
        ToTheProposalFromHere(after);
        Assert.Equal((ProposeMode.Reason, "wait for"), (Proposal(after).Mode, Proposal(after).Reason!.Text));
        Keys(after, "Esc", "a");
        int taken = Proposal(after).Taken.Count;
        Keys(after, "Esc");
        ToTheProposalFromHere(after);
        Assert.Equal(taken, Proposal(after).Taken.Count);
    }

    [Fact]
    public void Choices_whose_assessment_is_gone_are_dropped_without_a_question()
    {
        _killed.Drafts.Opened().Keep(new Records.Caseload.KeptForm(DemoStore.Showcase, ProposeDraft.FormName));
        Assert.Empty(Grid(Screens(_temp.Open(_temp.Demo))).Offers);
        Assert.Empty(Files());
    }

    [Fact]
    public void What_was_tried_comes_back_with_readings_and_doses()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "T", "Ctrl+U");
        before.Paste("60");
        Keys(before, "F2", "g", "End", "Enter", "Ctrl+U");
        before.Paste("77");
        Keys(before, "Enter");
        before.Keep();

        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        DraftOffer offer = Assert.Single(Grid(after).Offers);
        Assert.Equal("what was tried in a what-if", offer.What);
        Assert.Contains(offer.Lines, line => line is { Place: "Flexion, week 6", Draft: "77 deg" });
        Keys(after, "r");
        TryState tried = Assert.IsType<Frame<TryState>>(after.Top).State;
        Assert.Equal("60", tried.Form.Lines.First(line => line.IsTouched).Text);
        Assert.Equal("77 deg", Text(tried.Grid with { LaneIndex = 0, Week = 6 }));
        Assert.Single(Files());
        // Left in order, nothing of it is kept.
        Keys(after, "Esc");
        Assert.Empty(Files());
        Assert.False(Grid(after).IsUnsaved);
    }

    [Theory]
    [InlineData("i")]
    [InlineData("S")]
    public void A_form_of_a_case_killed_half_typed_goes_on_when_it_is_opened_from_the_list(string key)
    {
        ScreenStack before = List(_killed);
        Keys(before, key);
        if (key == "i")
        {
            Keys(before, "End");
            before.Paste("zz");
        }
        else
        {
            Keys(before, "y");
        }

        before.Keep();
        Assert.Single(Files());

        ScreenStack after = List(_temp.Open(_temp.Demo));
        Keys(after, key);
        Assert.Contains("As it was left", after.Top!.Told, StringComparison.Ordinal);
        Assert.True(after.Top.Where.IsUnsaved);
        Assert.Single(Files());
        Keys(after, "Esc");
        Assert.Contains("Not finished, and kept", ((Frame<StartState>)after.Top!).State.Status, StringComparison.Ordinal);
    }

    private static ScreenStack Asked(ScreenStack screens)
    {
        // Cell by cell of a week with stim, until nothing voluntary would be left beside it.
        for (int lane = 0; lane < Grid(screens).Plan.Lanes.Length; lane++)
        {
            if (screens.Top!.Go($"{Grid(screens).Plan.Lanes[lane].Title} week 5") is { } there && Grid(screens).Plan.Lanes[lane].Band == Core.Plans.Band.Active)
            {
                screens.Replace(there);
                Keys(screens, "x");
                if (Grid(screens).Mode == GridMode.Reason)
                {
                    return screens;
                }
            }
        }

        throw new InvalidOperationException("No cell of the demo needs a reason.");
    }

    private static void ToTheProposal(ScreenStack screens)
    {
        Keys(screens, "a");
        foreach (string text in new[] { "105", "110", "4", "3" })
        {
            Keys(screens, "Ctrl+U");
            screens.Paste(text);
            Keys(screens, "Enter");
        }

        ToTheProposalFromHere(screens);
    }

    private static void ToTheProposalFromHere(ScreenStack screens)
    {
        Keys(screens, "Ctrl+S");
        for (int turn = 0; turn < 10 && screens.Top is Frame<AssessState> { State.Mode: AssessMode.Query }; turn++)
        {
            Keys(screens, "y");
        }
    }

    private static string Text(GridState grid) => Core.Plans.CellNotation.Text(grid.Lane, grid.Plan.At(grid.Cursor)?.Content, grid.Desk.Library);

    private string[] Files() => Directory.Exists(Path.Combine(_temp.Demo, "drafts")) ? Directory.GetFiles(Path.Combine(_temp.Demo, "drafts")) : [];

    private static ScreenStack Screens(OpenStore store) => new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Plan(DemoStore.Showcase).Frame!);

    private static ScreenStack List(OpenStore store) => new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Open("", DemoStore.Showcase));

    private static GridState Grid(ScreenStack screens) => Assert.IsType<Frame<GridState>>(screens.Top).State;

    private static ProposeState Proposal(ScreenStack screens) => Assert.IsType<Frame<ProposeState>>(screens.Top).State;

    private static void Keys(ScreenStack screens, params string[] keys)
    {
        foreach (string key in keys)
        {
            screens.Press(key, key.Length == 1 ? key : null);
        }
    }
}
