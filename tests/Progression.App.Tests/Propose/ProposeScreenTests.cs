using Progression.App.Actions;
using Progression.App.Propose;
using Progression.App.Tests.Actions;
using Progression.App.Tests.Pictures;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.App.Tests.Propose;

public sealed class ProposeScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void The_proposal_looks_as_reviewed(int width, int height) => Snapshot.Match(Text(Press(State, "Space"), width, height), $"propose-{width}x{height}");

    [Fact]
    public void Its_pages_look_as_reviewed()
    {
        Snapshot.Match(Text(Press(State, "Enter")), "propose-why-80x24");
        Snapshot.Match(Text(Press(State, "v"), 80, 60), "propose-verdict-80x60");
        Snapshot.Match(Text(Press(State, "f")), "propose-outlook-80x24");
        Snapshot.Match(Text(Press(State, "Ctrl+S")), "propose-reason-80x24");
        Snapshot.Match(Text(SampleProposal.Impossible), "propose-impossible-80x24");
    }

    [Fact]
    public void Nothing_is_taken_before_somebody_takes_it() => Assert.Empty(State.Taken);

    [Fact]
    public void Stim_and_the_work_along_with_it_are_taken_and_left_together()
    {
        ProposeState taken = Press(State, "Space");
        Assert.Equal([SampleProposal.Stim, SampleProposal.Along], taken.Taken.OrderByDescending(cell => cell.Lane == Lanes.Stim));
        Assert.Contains("together", taken.Status, StringComparison.Ordinal);
        Assert.Empty(Press(taken, "Down", "Space").Taken);
    }

    [Fact]
    public void A_pinned_cell_is_shown_and_cannot_be_taken()
    {
        ProposeState refused = Press(State, "End", "Space");
        Assert.Empty(refused.Taken);
        Assert.Contains("pinned", refused.Status, StringComparison.Ordinal);
        Assert.Contains("[*] wk 5   Bend           pinned: heel-slide 3x10 2/day; the draft: heel-slide 3x13", Text(State, 100), StringComparison.Ordinal);
        Assert.Contains("The draft disagrees", Text(Press(State, "End")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_goes_with_a_pinned_cell_cannot_be_taken_either()
    {
        ProposeDesk desk = SampleProposal.Desk;
        ProposeState state = ProposeState.Open(desk with { Changes = desk.Changes.SetItem(0, desk.Changes[0] with { IsPinned = true }) });
        Assert.Contains("only makes sense together with", Press(state, "Down", "Space").Status, StringComparison.Ordinal);
        Assert.Equal([SampleProposal.Walk], Press(state, "a").Taken);
    }

    [Fact]
    public void All_takes_what_can_be_taken_and_none_leaves_it()
    {
        ProposeState all = Press(State, "a");
        Assert.Equal(3, all.Taken.Count);
        Assert.Contains("3 are taken; 1 cannot be", all.Status, StringComparison.Ordinal);
        Assert.Empty(Press(all, "n").Taken);
    }

    [Fact]
    public void Accepting_asks_for_the_taken_cells_to_be_saved_and_stays_until_they_are()
    {
        Step<ProposeState> step = ProposeScreen.Definition.Press(Press(State, "Down", "Down", "Space"), "Ctrl+S");
        AcceptProposal accept = Assert.IsType<AcceptProposal>(Assert.Single(step.Effects));
        Assert.Equal([SampleProposal.Walk], accept.Taken);
        Assert.Null(accept.Reason);
    }

    [Fact]
    public void Taking_nothing_needs_a_reason()
    {
        ProposeState asked = Press(State, "Ctrl+S");
        Assert.Equal(ProposeMode.Reason, asked.Mode);
        Step<ProposeState> empty = ProposeScreen.Definition.Press(asked, "Enter");
        Assert.Empty(empty.Effects);
        Assert.Contains("A reason is needed", empty.State.Status, StringComparison.Ordinal);
        Step<ProposeState> told = ProposeScreen.Definition.Press(ProposeScreen.Definition.Paste(asked, "Fell on Sunday, see how the week goes"), "Enter");
        AcceptProposal accept = Assert.IsType<AcceptProposal>(Assert.Single(told.Effects));
        Assert.Empty(accept.Taken);
        Assert.Equal("Fell on Sunday, see how the week goes", accept.Reason);
    }

    [Fact]
    public void A_typed_letter_is_a_letter_while_the_reason_is_typed() => Assert.Equal("an", Press(State, "Ctrl+S", "a", "n").Reason!.Text);

    [Fact]
    public void Leaving_decides_nothing()
    {
        Step<ProposeState> step = ProposeScreen.Definition.Press(Press(State, "a"), "Esc");
        Assert.Equal([new LeaveScreen()], step.Effects);
        Assert.Equal(ProposeMode.List, Press(State, "Ctrl+S", "Esc").Mode);
    }

    [Fact]
    public void When_nothing_is_proposed_there_is_nothing_to_take_and_no_reason_to_give()
    {
        Assert.Contains("asks for no change", Text(SampleProposal.None), StringComparison.Ordinal);
        Assert.Equal("Nothing is proposed.", Press(SampleProposal.None, "Space").Status);
        Assert.IsType<AcceptProposal>(Assert.Single(ProposeScreen.Definition.Press(SampleProposal.None, "Ctrl+S").Effects));
    }

    [Fact]
    public void When_only_a_pinned_cell_differs_no_reason_is_asked()
    {
        ProposeState pinned = ProposeState.Open(SampleProposal.Desk with { Changes = [SampleProposal.Desk.Changes[3]] });
        Assert.IsType<AcceptProposal>(Assert.Single(ProposeScreen.Definition.Press(pinned, "Ctrl+S").Effects));
    }

    [Fact]
    public void Without_a_proposal_nothing_can_be_accepted()
    {
        Step<ProposeState> step = ProposeScreen.Definition.Press(SampleProposal.Impossible, "Ctrl+S");
        Assert.Empty(step.Effects);
        Assert.Contains("No proposal could be made", step.State.Status, StringComparison.Ordinal);
    }

    [Fact]
    public void The_verdict_names_what_is_missing_and_what_would_change_it()
    {
        string text = string.Join(' ', Text(Press(State, "v"), 200, 50).Split('\n'));
        Assert.Contains("Stim: step down, High volume → Reduced.", text, StringComparison.Ordinal);
        Assert.Contains("Missing: measure the evoked torque", text, StringComparison.Ordinal);
        Assert.Contains("STIM-LADDER-04 (applies, decides)", text, StringComparison.Ordinal);
        string held = Text(Press(ProposeState.Open(SampleProposal.Desk with { Verdict = SampleProposal.Held }), "v"), 200, 50);
        Assert.Contains("Stim: hold, on High volume.", held, StringComparison.Ordinal);
        Assert.Contains("Would change: not yet: index at least 40 % (4 % under the limit)", held, StringComparison.Ordinal);
    }

    /// <summary>Half a standard error on the good side: 30.85 in 100 by the table of the normal distribution.</summary>
    [Fact]
    public void A_step_says_how_unsure_its_weakest_criterion_is()
    {
        string text = string.Join(' ', Text(Press(State, "v"), 200, 50).Split('\n'));
        Assert.Contains("about 31 in 100 that the weakest criterion is not truly met (extension lag).", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_for_an_answer_stands_at_the_top()
    {
        ProposeState open = ProposeState.Open(SampleProposal.Desk with { Verdict = SampleProposal.Held with { Outcome = LadderOutcome.NotEnoughInformation } });
        Assert.StartsWith("Missing: measure the evoked torque", Text(open).Split('\n')[2], StringComparison.Ordinal);
    }

    [Fact]
    public void An_open_red_flag_stands_over_everything()
    {
        ProposeState flagged = ProposeState.Open(SampleProposal.Desk with { Flags = [Raised(SampleProposal.CalfSigns)] });
        Assert.Contains("X Red flag open: Signs of a clot in the calf. Follow the clinic's protocol.", Text(flagged), StringComparison.Ordinal);
        Assert.Contains("- Calf tender, swollen or warm on one side?", Text(Press(flagged, "v")), StringComparison.Ordinal);
    }

    [Fact]
    public void Before_the_first_stim_there_is_no_verdict() =>
        Assert.Contains("no verdict before the first session", Text(ProposeState.Open(SampleProposal.Desk with { Verdict = null })), StringComparison.Ordinal);

    [Fact]
    public void Its_keys_keep_the_rules_of_all_screens()
    {
        KeyTableRules.Hold(ProposeActions.Table);
        Assert.All(ProposePicture.PageLines(Press(State, "?"), 80), line => Assert.InRange(line.Width, 1, 80));
        Assert.All(Faces().Where(state => state.Desk.Assessment is not null), state => KeyTableRules.HintsFit(ProposeActions.Table, state));
    }

    [Fact]
    public void No_order_of_keys_breaks_it()
    {
        AnyKeys.Hold(ProposeScreen.Definition, State);
        AnyKeys.Hold(ProposeScreen.Definition, SampleProposal.None);
        AnyKeys.Hold(ProposeScreen.Definition, SampleProposal.Impossible);
    }

    [Fact]
    public void It_fits_every_window() => Assert.All(Faces(), state => AnySize.Fits(size => ProposePicture.Draw(state, size)));

    private static ProposeState[] Faces() =>
    [
        State, Press(State, "a"), Press(State, "End"), Press(State, "Enter"), Press(State, "v"), Press(State, "f"), Press(State, "?"),
        Press(State, "Ctrl+S"), SampleProposal.None, SampleProposal.Impossible,
    ];

    private static FlagState Raised(RedFlag flag) => new()
    {
        Flag = flag,
        Raised = Truth.Holds,
        Since = new DateOnly(2026, 11, 23),
        Inputs = [new("Calf signs", "yes")],
        ClosedBy = null,
    };

    private static ProposeState State => SampleProposal.State;

    private static string Text(ProposeState state, int width = 80, int height = 24) => ProposePicture.Draw(state, new(width, height)).Fit(new(width, height)).Text;

    private static ProposeState Press(ProposeState state, params string[] keys) =>
        keys.Aggregate(state, (now, key) => ProposeScreen.Definition.Press(now, key, key.Length == 1 ? key : key == "Space" ? " " : null).State);
}
