using Progression.App.Actions;
using Progression.App.Intake;
using Progression.Core.People;
using static Progression.App.Tests.Intake.SampleIntake;

namespace Progression.App.Tests.Intake;

public sealed class ScreeningTests
{
    [Fact]
    public void Questions_that_bar_stim_come_first_and_an_answer_goes_on()
    {
        ScreeningState one = Press(Screening(), "n");
        Assert.Equal((1, Answer.No), (one.Index, one.Answers["active-implant"].Answer));
        Assert.True(one.Items.Select(item => item.Kind).SequenceEqual(one.Items.Select(item => item.Kind).Order()));
        Assert.Equal(1, Press(Screening(), "u").Index);
    }

    [Fact]
    public void A_yes_that_can_be_cleared_stays_and_takes_a_clearance()
    {
        ScreeningState yes = Press(Screening(), "y");
        Assert.Equal(0, yes.Index);
        ScreeningState form = Press(yes, "c");
        Assert.NotNull(Press(form, "Enter").Aside!.Problem);
        form = Press(ScreeningScreen.Definition.Paste(form, "Dr K"), "Enter", "Ctrl+U");
        form = Press(ScreeningScreen.Definition.Paste(form, "yesterday"), "Enter");
        ScreeningState cleared = Press(ScreeningScreen.Definition.Paste(form, "thigh only"), "Enter");
        Assert.Equal(new Clearance("Dr K", new(2026, 11, 24), "thigh only"), cleared.Answers["active-implant"].Clearance);
        Assert.Contains("yes, clear", Text(cleared), StringComparison.Ordinal);
        Assert.Null(Press(cleared, "n").Answers["active-implant"].Clearance);
    }

    [Fact]
    public void A_clearance_is_refused_where_none_lifts_or_nothing_is_to_be_lifted()
    {
        Assert.Contains("not one", Press(Screening(), "c").Status, StringComparison.Ordinal);
        Assert.Equal("No clearance lifts this item.", Press(At(Screening(), "infection"), "c").Status);
    }

    [Fact]
    public void What_follows_for_stim_is_told_while_it_is_answered()
    {
        Assert.Contains("STIM STAYS BARRED", Text(Screening()), StringComparison.Ordinal);
        ScreeningState all = Press(Screening(), "a", "y");
        Assert.False(all.Gate.Barred);
        Assert.Contains("Stim is not barred by these answers.", Text(all), StringComparison.Ordinal);
        ScreeningState infected = Press(At(all, "infection"), "y");
        Assert.True(infected.Gate.Barred);
        Assert.Contains("No stim: Infected", Text(infected, 80, 40), StringComparison.Ordinal);
    }

    [Fact]
    public void The_rest_is_answered_with_no_only_after_a_second_yes_and_never_what_is_for_the_record()
    {
        ScreeningState begun = Press(At(Screening(), "clot"), "u");
        ScreeningState asked = Press(begun, "a");
        Assert.Equal((ScreeningMode.Rest, 1), (asked.Mode, asked.Answers.Count));
        Assert.Contains("21 questions", Text(asked), StringComparison.Ordinal);
        Assert.Single(Press(asked, "n").Answers);
        ScreeningState all = Press(asked, "y");
        Assert.Equal((22, Answer.Unknown, 21), (all.Answers.Count, all.Answers["clot"].Answer, all.Answers.Values.Count(answer => answer.Answer == Answer.No)));
        Assert.False(all.Answers.ContainsKey("metal-implant"));
        Assert.Equal("Every question that bears on stim has its answer.", Press(all, "a").Status);
    }

    [Fact]
    public void Saving_gives_the_case_with_the_answers_and_the_day()
    {
        ScreeningAnswered answered = Assert.IsType<ScreeningAnswered>(Assert.Single(Step(Press(Screening(), "a", "y"), "Ctrl+S").Effects));
        Assert.Equal((Today, 22), (answered.Patient.Screening.Date!.Value, answered.Patient.Screening.Answers.Count));
        Assert.Equal(Knee, answered.Patient with { Screening = Knee.Screening });
    }

    [Fact]
    public void It_can_have_been_asked_on_another_day()
    {
        ScreeningState day = Press(Screening(), "n", "d", "Ctrl+U");
        Assert.Equal(new DateOnly(2026, 11, 23), Press(ScreeningScreen.Definition.Paste(day, "mon"), "Enter").Patient.Screening.Date);
        Assert.NotNull(Press(ScreeningScreen.Definition.Paste(day, "+1"), "Enter").Aside!.Problem);
    }

    [Fact]
    public void Enter_keeps_an_answer_and_an_answer_can_be_taken_back()
    {
        ScreeningState kept = Press(Screening(Press(Screening(), "n").Patient).To(0), "Enter");
        Assert.Equal((1, 1), (kept.Index, kept.Answers.Count));
        Assert.Empty(Press(kept, "Up", "Backspace").Answers);
        Assert.Null(Press(kept, "Up", "Backspace").Patient.Screening.Date);
    }

    [Fact]
    public void Nothing_answered_is_not_saved_again_but_on_the_way_to_a_plan_it_goes_on()
    {
        Assert.Equal("Nothing has been answered anew.", Press(Screening(), "Ctrl+S").Status);
        Assert.IsType<ScreeningAnswered>(Assert.Single(Step(Screening() with { IsStep = true }, "Ctrl+S").Effects));
    }

    [Fact]
    public void Skipping_on_the_way_to_a_plan_saves_what_was_answered()
    {
        Assert.IsType<ScreeningAnswered>(Assert.Single(Step(Press(Screening() with { IsStep = true }, "n"), "Esc").Effects));
        Assert.Equal(new LeaveScreen(new ScreeningLeft(null)), Assert.Single(Step(Screening() with { IsStep = true }, "Esc").Effects));
    }

    [Fact]
    public void What_was_answered_can_be_kept_as_texts_and_put_back_on_the_case_as_it_is_then()
    {
        ScreeningState typed = Press(At(Screening(), "clot"), "y", "Down", "n");
        typed = typed.With(typed.Answers.SetItem("clot", typed.Answers["clot"] with { Clearance = new("KL", Today, "seen") }));
        Case since = Knee with { Therapist = "CD" };
        ScreeningState again = Screening(since).With(typed.Texts);
        Assert.Equal(typed.Answers, again.Answers);
        Assert.Equal((typed.Index, "CD"), (again.Index, again.Patient.Therapist));
        Assert.Empty(Screening().Texts.ById);
    }

    [Fact]
    public void A_library_without_questions_says_so()
    {
        ScreeningState none = ScreeningState.Open(Knee, Library with { Screening = [] }, Today);
        Assert.Equal("The library has no questions.", Press(none, "y").Status);
        Assert.Contains("The library has no questions.", Text(none), StringComparison.Ordinal);
    }
}
