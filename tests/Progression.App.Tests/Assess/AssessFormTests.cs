using Progression.App.Actions;
using Progression.App.Assess;
using Progression.Core.Library;
using Progression.Core.People;
using static Progression.App.Tests.Assess.SampleVisits;

namespace Progression.App.Tests.Assess;

public sealed class AssessFormTests
{
    [Fact]
    public void Opens_on_the_first_measure_with_today_and_the_last_rater_filled_in()
    {
        AssessState state = Open();
        Assert.Equal((MeasureIds.FlexionActive, "2026-11-25", "AB"), (state.Form.Current.Id, state.Form.TextOf("date"), state.Form.TextOf("rater")));
    }

    [Fact]
    public void Only_what_was_typed_becomes_a_reading()
    {
        AssessmentReady ready = Ready(Fill(Open(), MeasureIds.FlexionActive, "95"));
        Assert.Equal(new Reading(MeasureIds.FlexionActive, 95) { Device = "long goniometer", Position = "supine" }, Assert.Single(ready.Visit.Readings).Value);
        Assert.Empty(ready.Visit.SignsSeen);
        Assert.Equal([First, Second, Today], ready.Patient.Assessments.Select(visit => visit.Date));
        Assert.Equal("AB", ready.Visit.Rater);
    }

    [Fact]
    public void An_empty_form_is_not_taken() => Assert.Equal("Nothing has been typed yet.", Press(Open(), "Ctrl+S").Status);

    [Theory]
    [InlineData("flexion_active", "ninety", "from 0 to 160 deg")]
    [InlineData("flexion_active", "161", "from 0 to 160 deg")]
    [InlineData("flexion_active", "95,55", "one number or two trials")]
    [InlineData("flexion_active", "1,234", "thousands or decimals")]
    [InlineData("flexion_active", "60 62 x", "unit that does not fit")]
    [InlineData("extension_active", "61", "from -15 to 60 deg")]
    [InlineData("extension_active", "-16", "from -15 to 60 deg")]
    [InlineData("effusion", "1", "none, trace, 1+, 2+, 3+")]
    [InlineData("pain_rest", "3.5", "whole")]
    [InlineData("pain_rest", "3 4", "One value only")]
    [InlineData("pain_rest", "11", "from 0 to 10")]
    [InlineData("quadriceps_force", "60 kg", "1 kg of pull is 9.81 N")]
    [InlineData("quadriceps_force", "130 lb", "1 lb is 4.45 N")]
    [InlineData("timed_up_and_go", "2.9", "from 3 to 120 s")]
    [InlineData("straight_leg_raise", "maybe", "y for yes")]
    [InlineData("date", "2026-11-26", "2025-11-02 to 2026-11-25")]
    [InlineData("date", "11.10.2026", "11 Oct or 10 Nov")]
    [InlineData("date", "", "The day is missing")]
    public void Refuses_nonsense_on_the_spot_with_what_is_allowed_and_the_caret_left_there(string line, string text, string words)
    {
        AssessState refused = Fill(Open(), line, text);
        Assert.Equal(line, refused.Form.Current.Id);
        Assert.Contains(words, refused.Form.Problem!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_in_another_unit_is_shown_as_it_is_kept()
    {
        string text = Flowing(Typed(Open() with { Form = Open().Form.To("girth") }, "385 mm"));
        Assert.Contains("Taken as 38.5 cm.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Taken as", Flowing(Typed(Open() with { Form = Open().Form.To("girth") }, "38.5 cm")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tue", "2026-11-24")]
    [InlineData("d20", "2026-11-22")]
    [InlineData("-1", "2026-11-24")]
    public void A_day_told_in_words_is_written_out_when_it_is_taken(string text, string day) => Assert.Equal(day, Fill(Open(), "date", text).Form.TextOf("date"));

    [Fact]
    public void The_day_that_is_understood_stands_beside_it() =>
        Assert.Contains("Tue 24 Nov 2026, day 22, week 4", Text(Typed(Open() with { Form = Open().Form.To("date") }, "tue")), StringComparison.Ordinal);

    // 30 cm is 0.3 m; a mean of 38 and 40 cm is 39 cm.
    [Theory]
    [InlineData("flexion_active", "0", 0)]
    [InlineData("flexion_active", "160 deg", 160)]
    [InlineData("flexion_active", "95°", 95)]
    [InlineData("extension_passive", "-3", -3)]
    [InlineData("girth", "0.3 m", 30)]
    [InlineData("girth", "0.38 0.40 m", 39)]
    [InlineData("girth", "38, 40", 39)]
    [InlineData("girth", "38,5", 38.5)]
    [InlineData("girth", "38,5 39,5", 39)]
    [InlineData("gait_speed", "1,25 m/s", 1.25)]
    [InlineData("effusion", "Trace", 1)]
    [InlineData("effusion", "3+", 4)]
    [InlineData("timed_up_and_go", "1.5 min", 90)]
    public void Takes_a_value_with_or_without_its_unit(string line, string text, double stored) =>
        Assert.Equal(stored, Ready(Fill(Open(), line, text)).Visit.Value(line));

    [Fact]
    public void Several_trials_are_kept_and_their_mean_counts()
    {
        AssessState state = Fill(Open(), MeasureIds.FlexionActive, "60 62 67 deg");
        Reading reading = Ready(state).Visit.Readings[MeasureIds.FlexionActive];
        Assert.Equal((63, 3), (reading.Value, reading.Trials));
        Assert.Equal([60, 62, 67], reading.Each);
        Assert.Contains("3 trials, mean 63", Flowing(state with { Form = state.Form.To(MeasureIds.FlexionActive) }), StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_are_kept_as_typed_and_unknown_is_an_answer()
    {
        AssessState state = Fill(Fill(Fill(Open(), Signs.StraightLegRaise, "Y"), Signs.LagGrows, "n"), Signs.ClotSigns, "u");
        Assert.Equal(
            [(Signs.ClotSigns, Answer.Unknown), (Signs.LagGrows, Answer.No), (Signs.StraightLegRaise, Answer.Yes)],
            Ready(state).Visit.SignsSeen.Select(pair => (pair.Key, pair.Value)));
    }

    [Fact]
    public void A_lever_arm_from_last_time_is_no_reading_until_a_force_is_typed()
    {
        Assert.DoesNotContain(MeasureIds.LeverArm, Ready(Fill(Open(), MeasureIds.PainRest, "2")).Visit.Readings.Keys);
        Assert.Equal(30, Ready(Fill(Open(), MeasureIds.QuadricepsForce, "150")).Visit.Value(MeasureIds.LeverArm));
    }

    [Fact]
    public void A_force_without_a_lever_arm_is_refused()
    {
        AssessState state = Open(Knee with { Assessments = [] });
        Assert.Contains("lever arm", Press(Fill(state, MeasureIds.QuadricepsForce, "150"), "Ctrl+S").Form.Problem!.Wrong, StringComparison.Ordinal);
    }

    // Lag 10 - 4; 200 N at 30 cm is 60 Nm; 60 of 90 Nm is 66.7 %; 60 of 100 Nm before the operation; 60 Nm by 80 kg.
    [Theory]
    [InlineData(MeasureIds.ExtensionActive, "Lag, active", "= 6 ")]
    [InlineData(MeasureIds.QuadricepsForce, "Torque, operated", "= 60 ")]
    [InlineData(MeasureIds.QuadricepsForce, "Index to other", "= 66.7 ")]
    [InlineData(MeasureIds.QuadricepsForce, "Of pre-op", "= 60 ")]
    [InlineData(MeasureIds.QuadricepsForce, "Torque per body", "= 0.75 ")]
    public void What_follows_from_other_lines_is_shown_and_not_typed(string near, string title, string shown)
    {
        AssessState state = Fill(Fill(Open(), MeasureIds.ExtensionActive, "10"), MeasureIds.ExtensionPassive, "4");
        state = Fill(Fill(state, MeasureIds.QuadricepsForce, "200"), MeasureIds.OtherForce, "300");
        Assert.Contains(shown, Row(state, near, title), StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_computed_says_why()
    {
        AssessState state = Open(Knee with { OtherKnee = OtherKnee.Painful, BodyMass = null, PreOp = null });
        Assert.Contains("other knee not sound", Row(state, MeasureIds.QuadricepsForce, "Index to other"), StringComparison.Ordinal);
        Assert.Contains("no body mass", Row(state, MeasureIds.QuadricepsForce, "Torque per body"), StringComparison.Ordinal);
        Assert.Contains("no pre-op strength", Row(state, MeasureIds.QuadricepsForce, "Of pre-op"), StringComparison.Ordinal);
        Assert.Contains("needs both extensions", Row(state, MeasureIds.ExtensionActive, "Lag, active"), StringComparison.Ordinal);
    }

    // Two readings of standard error 4 deg: detectable from 2.326174 x 4 = 9.3 deg (reference part 1.0), so 78 to 87 is not and 78 to 88 is.
    [Theory]
    [InlineData("87", "~ no detectable change")]
    [InlineData("88", "+ improved")]
    [InlineData("68", "- worse")]
    public void The_change_since_last_time_is_told_while_typing(string text, string words)
    {
        AssessState typed = Typed(Open(), text);
        Assert.Contains(words, Row(typed, MeasureIds.FlexionActive, "Flexion, active"), StringComparison.Ordinal);
        Assert.Contains("78, 18 Nov", Row(typed, MeasureIds.FlexionActive, "Flexion, active"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_not_taken_last_time_is_shown_from_before_it_or_from_before_the_operation()
    {
        Case patient = Knee with { Assessments = [Knee.Assessments[0] with { Readings = Knee.Assessments[0].Readings.Remove(MeasureIds.FlexionActive) }] };
        Assert.Contains("120, pre-op", Row(Open(patient), MeasureIds.FlexionActive, "Flexion, active"), StringComparison.Ordinal);
        Assert.DoesNotContain("pre-op", Row(Open(), MeasureIds.FlexionActive, "Flexion, active"), StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_tells_what_had_been_typed()
    {
        AssessState typed = Typed(Open(), "95");
        Assert.Same(typed, Assert.IsType<AssessmentLeft>(Assert.IsType<LeaveScreen>(Assert.Single(Step(typed, "Esc").Effects)).Telling).Typed);
        Assert.Null(Assert.IsType<AssessmentLeft>(Assert.IsType<LeaveScreen>(Assert.Single(Step(Open(), "Esc").Effects)).Telling).Typed);
    }

    [Fact]
    public void A_line_left_half_done_is_found_at_the_end()
    {
        AssessState state = Press(Typed(Open(), "9x"), "Up", "PgDn", "Ctrl+S");
        Assert.Equal(MeasureIds.FlexionActive, state.Form.Current.Id);
        Assert.NotNull(state.Form.Problem);
    }
}
