using Progression.App.Assess;
using Progression.Core.Library;
using Progression.Core.People;
using static Progression.App.Tests.Assess.SampleVisits;

namespace Progression.App.Tests.Assess;

public sealed class AssessCorrectionTests
{
    [Fact]
    public void The_day_of_a_kept_visit_is_offered_as_a_correction_of_it()
    {
        AssessState asked = Fill(Open(), "date", "2026-11-18");
        Assert.Equal(AssessMode.Visit, asked.Mode);
        Assert.Contains("A visit of 2026-11-18 is kept already", Text(asked), StringComparison.Ordinal);
        AssessState filled = Press(asked, "y");
        Assert.Equal(("78", "14", "1+"), (filled.Form.TextOf(MeasureIds.FlexionActive), filled.Form.TextOf(MeasureIds.ExtensionActive), filled.Form.TextOf(MeasureIds.Effusion)));
    }

    [Fact]
    public void No_goes_back_to_the_day_and_takes_nothing()
    {
        AssessState back = Press(Fill(Open(), "date", "2026-11-18"), "Esc");
        Assert.Equal((AssessMode.Form, "date", null), (back.Mode, back.Form.Current.Id, back.Standing));
    }

    [Fact]
    public void A_second_visit_on_a_day_cannot_be_made_by_finishing()
    {
        Case seen = Knee with { Assessments = [.. Knee.Assessments, Knee.Assessments[1] with { Date = Today }] };
        AssessState asked = Press(Fill(Open(seen), MeasureIds.FlexionActive, "95"), "Ctrl+S");
        Assert.Equal(AssessMode.Visit, asked.Mode);
        AssessState filled = Press(asked, "y");
        Assert.Equal(("95", "14"), (filled.Form.TextOf(MeasureIds.FlexionActive), filled.Form.TextOf(MeasureIds.ExtensionActive)));
    }

    [Fact]
    public void A_changed_value_keeps_the_old_one_with_who_and_why()
    {
        AssessState asked = Press(Fill(Open(visit: Second), MeasureIds.FlexionActive, "87"), "Ctrl+S");
        Assert.Equal(AssessMode.Reason, asked.Mode);
        Assert.NotNull(Press(asked, "Enter", "Enter").Aside!.Problem);
        AssessState reasoned = AssessScreen.Definition.Paste(Press(asked, "Enter"), "digits swapped");
        AssessmentReady ready = Ready(reasoned, "Enter");
        Reading reading = ready.Visit.Readings[MeasureIds.FlexionActive];
        Assert.Equal((87, "long goniometer"), (reading.Value, reading.Device));
        Assert.Equal(new Correction(78, Today, "AB", "digits swapped"), Assert.Single(reading.Corrected));
        Assert.Empty(ready.Visit.Readings[MeasureIds.ExtensionActive].Corrected);
        Assert.Equal([First, Second], ready.Patient.Assessments.Select(visit => visit.Date));
        Assert.Equal(Answer.Yes, ready.Visit.SignsSeen[Signs.StraightLegRaise]);
    }

    [Fact]
    public void A_value_that_is_added_to_a_kept_visit_is_no_correction()
    {
        AssessmentReady ready = Ready(Fill(Open(visit: Second), "girth", "41"));
        Assert.Empty(ready.Visit.Readings["girth"].Corrected);
        Assert.Equal(9, ready.Visit.Readings.Count);
    }

    [Fact]
    public void A_visit_that_was_not_changed_is_not_taken() => Assert.Equal("Nothing of this visit was changed.", Press(Open(visit: Second), "Ctrl+S").Status);

    [Fact]
    public void A_kept_value_that_is_emptied_is_not_measured_and_stays_kept_with_who_and_why()
    {
        AssessState emptied = Fill(Open(visit: Second), MeasureIds.FlexionActive, "");
        Assert.Contains("empty takes it out as not measured", Flowing(emptied with { Form = emptied.Form.To(MeasureIds.FlexionActive) }), StringComparison.Ordinal);
        AssessmentReady ready = Reasoned(emptied);
        Assert.Null(ready.Visit.Value(MeasureIds.FlexionActive));
        Assert.Equal(new VisitCorrection.TakenOut(MeasureIds.FlexionActive, 78, Today, "AB", "other knee"), Assert.Single(ready.Visit.Corrected));
    }

    [Fact]
    public void A_changed_or_emptied_answer_stays_kept_too()
    {
        Assert.Equal(
            [new VisitCorrection.AnswerWas(Signs.StraightLegRaise, Answer.Yes, Today, "AB", "other knee")],
            Reasoned(Fill(Open(visit: Second), Signs.StraightLegRaise, "n")).Visit.Corrected);
        Assert.False(Reasoned(Fill(Open(visit: Second), Signs.StraightLegRaise, "")).Visit.SignsSeen.ContainsKey(Signs.StraightLegRaise));
    }

    [Fact]
    public void The_day_of_a_kept_visit_can_be_put_right_and_the_wrong_one_stays_kept()
    {
        AssessmentReady ready = Reasoned(Fill(Open(visit: Second), "date", "d15"));
        Assert.Equal(new DateOnly(2026, 11, 17), ready.Visit.Date);
        Assert.Equal(new VisitCorrection.DayWas(Second, Today, "AB", "other knee"), Assert.Single(ready.Visit.Corrected));
        Assert.Equal([First, new DateOnly(2026, 11, 17)], ready.Patient.Assessments.Select(visit => visit.Date));
    }

    [Theory]
    [InlineData("2026-11-09", "Another visit is kept of this day")]
    [InlineData("2026-10-20", "Another visit is kept of this day")]
    [InlineData("2026-11-01", "after the operation")]
    public void A_visit_does_not_move_onto_another_one_or_to_before_the_operation(string day, string wrong) =>
        Assert.Contains(wrong, Fill(Open(visit: Second), "date", day).Form.Problem!.Wrong, StringComparison.Ordinal);

    private static AssessmentReady Reasoned(AssessState state)
    {
        AssessState asked = Press(state, "Ctrl+S");
        Assert.Equal(AssessMode.Reason, asked.Mode);
        return Ready(AssessScreen.Definition.Paste(Press(asked, "Enter"), "other knee"), "Enter");
    }

    [Fact]
    public void A_corrected_visit_is_compared_with_the_one_before_it()
    {
        string row = Row(Open(visit: Second), MeasureIds.FlexionActive, "Flexion, active");
        Assert.Contains("62, 9 Nov", row, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_before_the_operation_is_asked_about_and_becomes_the_measures_before_it()
    {
        AssessState asked = Fill(Open(Knee with { PreOp = null }), "date", "2026-10-28");
        Assert.Contains("before the operation", Text(asked), StringComparison.Ordinal);
        AssessmentReady ready = Ready(Fill(Press(asked, "y"), MeasureIds.QuadricepsTorque, "90"));
        Assert.Equal((new DateOnly(2026, 10, 28), 90), (ready.Patient.PreOp!.Date, ready.Patient.PreOp.Value(MeasureIds.QuadricepsTorque)));
        Assert.Equal(2, ready.Patient.Assessments.Length);
    }

    [Fact]
    public void Measures_before_the_operation_that_are_kept_are_corrected_whatever_day_was_typed()
    {
        AssessState filled = Press(Fill(Open(), "date", "2026-10-28"), "y");
        Assert.Equal(("2026-10-20", "100", true), (filled.Form.TextOf("date"), filled.Form.TextOf(MeasureIds.QuadricepsTorque), filled.IsPreOp));
    }

    [Fact]
    public void Kept_values_follow_the_way_deficits_are_written()
    {
        AssessState turned = Press(Open(visit: Second), "F3", "2");
        Assert.Equal("-14", turned.Form.TextOf(MeasureIds.ExtensionActive));
        Assert.Equal("Nothing of this visit was changed.", Press(turned, "Ctrl+S").Status);
    }
}
