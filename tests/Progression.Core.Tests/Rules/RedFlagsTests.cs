using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>When a red flag shows, how it is closed, and what it locks.</summary>
public sealed class RedFlagsTests
{
    /// <summary>Every question of the shipped flags that raises one, asked at week 4, when each counts.</summary>
    public static TheoryData<string, string> Raising =>
        [.. Knee.Library.RedFlags.SelectMany(flag => flag.Raising.Select(question => (flag.Id, question.Id)))];

    public static TheoryData<string, string> Background =>
        [.. Knee.Library.RedFlags.SelectMany(flag => flag.Questions.Where(one => !one.Raises).Select(question => (flag.Id, question.Id)))];

    [Theory]
    [MemberData(nameof(Raising))]
    public void A_yes_to_any_question_raises_its_flag_even_when_the_rest_is_answered_no(string flag, string question)
    {
        Knee knee = Knee.Well.Seen(21, Look.Well.Says(question, Answer.Yes));

        Assert.Equal((Truth.Holds, true, Knee.Day(21)), knee.Flag(flag, 21) is var state ? (state.Raised, state.IsOpen, state.Since!.Value) : default);
        Assert.True(RedFlags.AnyOpen(knee.Case, Knee.Library, Knee.Day(21)));
        Assert.Equal(LadderOutcome.ReferAndLock, knee.Judge(Rung.Reduced, 7).Outcome);
        Assert.True(knee.Gate(21).Barred);
    }

    [Theory]
    [MemberData(nameof(Background))]
    public void What_only_counts_for_a_score_raises_nothing(string flag, string question) =>
        Assert.Equal(Truth.DoesNotHold, Knee.Well.Seen(21, Look.Well.Says(question, Answer.Yes)).Flag(flag, 21).Raised);

    [Fact]
    public void A_well_knee_shows_no_flag_and_an_unseen_one_is_not_known()
    {
        Assert.All(Knee.Well.Seen(21, Look.Well).Flags(21), state => Assert.Equal(Truth.DoesNotHold, state.Raised));
        Assert.All(Knee.Well.Flags(21), state => Assert.Equal((Truth.NotKnown, false), (state.Raised, state.IsOpen)));
        Assert.False(RedFlags.AnyOpen(Knee.Well.Case, Knee.Library, Knee.Day(21)));
    }

    [Fact]
    public void A_flag_is_absent_when_all_its_questions_are_answered_no_and_not_known_when_one_is_left()
    {
        Look detailed = Knee.Library.RedFlags.Single(flag => flag.Id == FlagIds.ClotLeg).Raising.Where(one => !one.CoversAll)
            .Aggregate(Look.Well.Without(Signs.ClotSigns), (look, one) => look.Says(one.Id, Answer.No));

        Assert.Equal(Truth.DoesNotHold, Knee.Well.Seen(21, detailed).Flag(FlagIds.ClotLeg, 21).Raised);
        Assert.Equal(Truth.NotKnown, Knee.Well.Seen(21, detailed.Without("calf_larger")).Flag(FlagIds.ClotLeg, 21).Raised);
        Assert.Equal(Truth.NotKnown, Knee.Well.Seen(21, detailed.Says("calf_larger", Answer.Unknown)).Flag(FlagIds.ClotLeg, 21).Raised);
    }

    [Theory] // Drainage after day 7: Scheper 2023, minor drainage is usual in week 1. Fever after day 5: our day limit.
    [InlineData("drainage", 7, Truth.DoesNotHold)]
    [InlineData("drainage", 8, Truth.Holds)]
    [InlineData("fever", 5, Truth.DoesNotHold)]
    [InlineData("fever", 6, Truth.Holds)]
    public void What_is_usual_at_first_counts_from_its_day_on(string question, int day, Truth expected) =>
        Assert.Equal(expected, Knee.Well.Seen(day, Look.Well.Says(question, Answer.Yes)).Flag(FlagIds.Infection, day).Raised);

    [Fact]
    public void A_flag_goes_on_from_the_visit_that_first_showed_it_until_one_answers_no()
    {
        Knee twice = Knee.Well.Seen(14, Look.Well.Says(Signs.InfectionSigns, Answer.Yes)).Seen(18, Look.Well.Says(Signs.InfectionSigns, Answer.Yes));

        Assert.Equal(Knee.Day(14), twice.Flag(FlagIds.Infection, 18).Since);
        Assert.True(twice.Seen(21, Look.Well.Without(Signs.InfectionSigns)).Flag(FlagIds.Infection, 21).IsOpen);
        Assert.Equal((Truth.DoesNotHold, false, null), twice.Seen(21, Look.Well).Flag(FlagIds.Infection, 21) is var ended ? (ended.Raised, ended.IsOpen, ended.Since) : default);
    }

    [Theory]
    [InlineData(20, true)]
    [InlineData(21, false)]
    [InlineData(25, false)]
    public void A_note_closes_what_was_seen_up_to_its_day(int noted, bool open)
    {
        FlagState state = Knee.Well.Seen(21, Look.Well.Says(Signs.InfectionSigns, Answer.Yes)).Noted(FlagIds.Infection, noted).Flag(FlagIds.Infection, 21);

        Assert.Equal((Truth.Holds, open), (state.Raised, state.IsOpen));
        Assert.Equal(open ? null : "Physician MN", state.ClosedBy?.By);
    }

    [Fact]
    public void A_closed_flag_opens_again_when_a_later_visit_shows_it_again()
    {
        Knee closed = Knee.Well.Seen(21, Look.Well.Says(Signs.InfectionSigns, Answer.Yes)).Noted(FlagIds.Infection, 22);

        Assert.False(closed.Seen(28, Look.Well.Without(Signs.InfectionSigns)).Flag(FlagIds.Infection, 28).IsOpen);
        FlagState again = closed.Seen(28, Look.Well.Says(Signs.InfectionSigns, Answer.Yes)).Flag(FlagIds.Infection, 28);
        Assert.Equal((true, Knee.Day(28)), (again.IsOpen, again.Since!.Value));
    }

    [Fact]
    public void A_note_on_one_clot_does_not_close_the_other()
    {
        Knee knee = Knee.Well.Seen(21, Look.Well.Says(Signs.ClotSigns, Answer.Yes)).Noted(FlagIds.ClotLeg, 22);

        Assert.False(knee.Flag(FlagIds.ClotLeg, 21).IsOpen);
        Assert.True(knee.Flag(FlagIds.ClotLung, 21).IsOpen);
    }

    [Fact]
    public void A_closed_flag_no_longer_locks_but_a_later_visit_must_ask_again()
    {
        Knee closed = Knee.Well.Seen(21, Look.Well).Seen(28, Look.Well.Says(Signs.InfectionSigns, Answer.Yes)).Noted(FlagIds.Infection, 29);

        Assert.Equal(LadderOutcome.StepDown, closed.Judge(Rung.Reduced, 14).Outcome);
        Assert.Empty(closed.Gate(28).Findings);
        LadderVerdict later = closed.Seen(35, Look.Well.Without(Signs.InfectionSigns).With(MeasureIds.QuadricepsTorque, 64)).Judge(Rung.Reduced, 14);
        Assert.Equal(LadderOutcome.NotEnoughInformation, later.Outcome);
    }

    [Fact]
    public void A_closed_rise_of_lag_is_the_new_yardstick()
    {
        Knee closed = Knee.Well.Seen(14, Look.Well.Lag(3)).Seen(21, Look.Well.Lag(14)).Noted(FlagIds.LagRise, 22);

        Assert.False(closed.Seen(28, Look.Well.Lag(14)).Flag(FlagIds.LagRise, 28).IsOpen);
        Assert.True(closed.Seen(28, Look.Well.Lag(24)).Flag(FlagIds.LagRise, 28).IsOpen);
        Assert.True(closed.Seen(28, Look.Well.Lag(4)).Seen(35, Look.Well.Lag(14)).Flag(FlagIds.LagRise, 35).IsOpen);
    }

    [Fact]
    public void A_raise_lost_and_closed_is_lost_again_only_after_it_has_come_back()
    {
        Look cannot = Look.Well.Says(Signs.StraightLegRaise, Answer.No);
        Knee closed = Knee.Well.Seen(14, Look.Well).Seen(21, cannot).Noted(FlagIds.RaiseLost, 21);

        Assert.False(closed.Seen(28, cannot).Flag(FlagIds.RaiseLost, 28).IsOpen);
        Assert.True(closed.Seen(28, Look.Well).Seen(35, cannot).Flag(FlagIds.RaiseLost, 35).IsOpen);
    }

    [Fact]
    public void A_rise_of_lag_stands_while_the_lag_is_not_measured_again()
    {
        Knee up = Knee.Well.Seen(14, Look.Well.Lag(3)).Seen(21, Look.Well.Lag(14));

        Assert.True(up.Seen(23, Look.Well.Without(MeasureIds.ExtensionActive)).Flag(FlagIds.LagRise, 23).IsOpen);
        Assert.False(up.Seen(23, Look.Well.Lag(5)).Flag(FlagIds.LagRise, 23).IsOpen);
    }

    [Fact]
    public void A_flag_of_the_clinics_own_locks_like_the_others()
    {
        RedFlag own = new()
        {
            Id = "our-sign",
            Title = "our own sign",
            Questions = [new FlagQuestion("our_question", "Is it there?", null)],
            Checklist = [RedFlag.ProtocolLine],
            Source = new Source("made for the test", Standing.CommonPractice),
        };
        ClinicalLibrary library = Knee.Library with { RedFlags = Knee.Library.RedFlags.Add(own) };
        Knee before = Knee.Well.Seen(21, Look.Well.Says("our_question", Answer.No));
        LadderOutcome With(Look now) => before.Seen(28, now).Judge(Rung.Reduced, 14, library).Outcome;

        Assert.Equal(LadderOutcome.ReferAndLock, With(Look.Well.Says("our_question", Answer.Yes)));
        Assert.Equal(LadderOutcome.NotEnoughInformation, With(Look.Well));
        Assert.Equal(LadderOutcome.StepDown, With(Look.Well.Says("our_question", Answer.No)));
        Assert.Contains("ask: Is it there?", before.Seen(28, Look.Well).Judge(Rung.Reduced, 14, library).ToMeasure);
    }

    [Fact]
    public void Nothing_urgent_is_ordered_and_every_checklist_ends_with_the_clinics_protocol()
    {
        ImmutableArray<string> orders = ["emergency", "ambulance", "immediately", "at once", "go now", "call "];
        Assert.All(Knee.Library.RedFlags, flag =>
        {
            Assert.Equal("Follow the clinic's protocol.", flag.Checklist[^1]);
            Assert.All(flag.Checklist, line => Assert.DoesNotContain(orders, order => line.Contains(order, StringComparison.OrdinalIgnoreCase)));
        });
    }
}
