using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Plain;
using Progression.App.Screens;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.App.Trying;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Plain;

/// <summary>The therapist's ways of working, each by a script of answers over a real store; what counts is what was saved.</summary>
public sealed class PlainJobsTests
{
    [Fact]
    public void A_new_case_is_typed_screened_measured_planned_changed_and_saved()
    {
        using TalkOnAStore talk = TalkOnAStore.Empty();
        talk.Say("new", "NEW-01", "10 nov", "left", "as tolerated", ":finish");
        Assert.Equal("Screening before stim", talk.Screens.Top!.Where.Screen);
        Assert.Contains(talk.Say("rest", "yes"), line => line.StartsWith("Stim is not barred", StringComparison.Ordinal));
        talk.Say("finish", "85", "90", ":finish");
        Assert.Equal("Grid", talk.Screens.Top!.Where.Screen);
        talk.Say("go flexion week 4", "set 93", "read findings", "save");

        OpenedCase saved = talk.Saved(CaseCode.Parse("NEW-01"));
        Assert.Equal((Side.Left, new DateOnly(2026, 11, 10), 1), (saved.Case.Operation.Side, saved.Case.Operation.Date, saved.Case.Assessments.Length));
        Assert.Equal(new TargetCell(93), Flexion(saved.Plan!, 4));
        Assert.IsType<StimCell>(saved.Plan!.ContentAt(Lanes.Stim, 4));
    }

    [Fact]
    public void A_reassessment_is_typed_and_the_proposal_taken_change_by_change()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        talk.Say("assess", "105", "110", "4", "3", ":finish");
        Assert.Equal("Proposal", talk.Screens.Top!.Where.Screen);
        int changes = talk.Say("read").Count(line => line.StartsWith("Change ", StringComparison.Ordinal));
        Assert.InRange(changes, 2, 20);
        talk.Say("take or leave");
        IReadOnlyList<string> told = talk.Say("accept");

        Assert.Contains(told, line => line.StartsWith("Saved: the assessment, and ", StringComparison.Ordinal));
        OpenedCase saved = talk.Saved();
        Assert.Equal((4, 105), (saved.Case.Assessments.Length, saved.Case.Assessments[^1].Value(MeasureIds.FlexionActive)));
        Assert.InRange(saved.Plan!.Decision!.Taken, 1, changes - 1);
    }

    [Fact]
    public void A_proposal_is_refused_only_with_a_reason_which_is_kept()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        talk.Say("assess", "105", "110", "4", "3", ":finish", "accept", "", "wait for the surgeon");
        Assert.Equal((0, "wait for the surgeon"), (talk.Saved().Plan!.Decision!.Taken, talk.Saved().Plan!.Decision!.Reason));
    }

    [Fact]
    public void Why_is_answered_for_a_cell_with_inputs_rule_source_and_what_would_change_it()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        IReadOnlyList<string> answer = talk.Say("go stim week 4", "why");
        Assert.All(["Because: ", "Input: ", "Rule: ", "Source: ", "Would change: "], label => Assert.Contains(answer, line => line.StartsWith(label, StringComparison.Ordinal)));
        Assert.StartsWith("Stim, week 4", talk.Say("back")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void What_if_tells_what_moves_and_keeps_nothing()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        long before = talk.Store.Book.Generation();
        talk.Say("what if");
        Assert.Contains(talk.Say("60"), line => line.Contains("becomes", StringComparison.Ordinal));
        talk.Say(":back");
        Assert.Equal("Grid", talk.Screens.Top!.Where.Screen);
        Assert.Equal((before, 92), (talk.Store.Book.Generation(), talk.Saved().Case.Assessments[^1].Value(MeasureIds.FlexionActive)));
    }

    [Fact]
    public void From_the_scratch_grid_back_leads_to_what_was_tried_and_from_there_to_the_plan()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        talk.Say("what if", ":change doses");
        Assert.True(Assert.IsType<Frame<GridState>>(talk.Screens.Top).State.IsScratch);
        talk.Say("back");
        Assert.IsType<Frame<TryState>>(talk.Screens.Top);
        talk.Say(":back");
        Assert.False(Assert.IsType<Frame<GridState>>(talk.Screens.Top).State.IsScratch);
    }

    [Fact]
    public void Finding_opens_the_one_case_found_and_shows_the_list_where_there_are_several()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        ScreenStack screens = new(new ListFrame(new WorkbookOrder(talk.Store, () => talk.Store), new Farewells()).Open());
        PlainTalk list = new(screens);
        list.Begin();
        list.Hear("find");
        Assert.Contains(list.Hear("left"), line => line.StartsWith("1 of ", StringComparison.Ordinal));
        Assert.Equal(StartMode.List, Assert.IsType<Frame<StartState>>(screens.Top).State.Mode);
        list.Hear("find");
        list.Hear("owl");
        Assert.IsType<Frame<GridState>>(screens.Top);
    }

    [Fact]
    public void A_session_is_logged_as_planned_with_a_few_answers()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        int logged = talk.Saved().Case.Sessions.Length;
        talk.Say("log", "62", "7", ":finish");
        SessionLog session = talk.Saved().Case.Sessions[^1];
        Assert.Equal((logged + 1, talk.Store.Today, 7), (talk.Saved().Case.Sessions.Length, session.Date, session.Comfort));
        Assert.NotEmpty(session.Exercises);
    }

    [Fact]
    public void A_red_flag_is_answered_and_closed_with_a_note_by_name()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        IReadOnlyList<string> raised = talk.Say("red flags", "yes");
        Assert.Contains(raised, line => line.StartsWith("OPEN since", StringComparison.Ordinal));
        talk.Say("close flag", "Dr N", "seen, tendon whole", "back");
        Assert.Equal("Dr N", talk.Saved().Case.FlagNotes[^1].By);
    }

    [Fact]
    public void The_days_of_a_week_are_told_work_by_work()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        IReadOnlyList<string> days = talk.Say("days");
        Assert.Equal("The days of week 4 of 6.", days[0]);
        Assert.Contains(days, line => line.StartsWith("High volume, 15 contractions: Sunday 22 Nov ", StringComparison.Ordinal));
        Assert.StartsWith("Flexion, week 4", talk.Say("back")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_is_filled_on_by_answering_for_how_many_weeks()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        Assert.Contains(talk.Say("fill"), line => line.StartsWith("Flexion, week 4, filled on for how many weeks? 1 to 2", StringComparison.Ordinal));
        talk.Say("2", "save");
        Assert.Equal(Flexion(talk.Saved().Plan!, 4), Flexion(talk.Saved().Plan!, 6));
    }

    [Fact]
    public void Going_from_finding_to_finding_says_each_once()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        IReadOnlyList<string> said = talk.Say("next finding");
        Assert.Equal(said.Distinct(), said);
        Assert.Single(said, line => line.Contains("not enough information", StringComparison.Ordinal));
    }

    [Fact]
    public void Comparison_and_course_are_read_and_left()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        Assert.Contains(talk.Say("compare", "go active flexion"), line => line.StartsWith("Active flexion, more is better: 22 Oct 115 deg", StringComparison.Ordinal));
        Assert.Contains(talk.Say("back", "course", "read"), line => line.StartsWith("End of week 6: about ", StringComparison.Ordinal));
        Assert.StartsWith("Grid.", talk.Say("back")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Unsaved_work_is_kept_when_the_talk_ends_and_offered_again()
    {
        using TalkOnAStore talk = TalkOnAStore.Demo();
        talk.Say("go flexion week 5", "set 91");
        Assert.True(talk.End());
        KeptDraft kept = Assert.Single(talk.Store.Drafts.Find(DemoStore.Showcase).Drafts).Plan!;
        Assert.Equal(new TargetCell(91), Flexion(kept.Plan, 5));
        Assert.NotEqual(new TargetCell(91), Flexion(talk.Saved().Plan!, 5));
    }

    private static CellContent? Flexion(PlanRevision plan, int week) => plan.ContentAt(plan.Lanes.First(lane => lane.Measure == MeasureIds.FlexionActive).Id, week);
}
