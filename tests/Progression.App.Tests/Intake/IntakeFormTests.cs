using Progression.App.Actions;
using Progression.App.Forms;
using Progression.App.Intake;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using static Progression.App.Tests.Intake.SampleIntake;

namespace Progression.App.Tests.Intake;

public sealed class IntakeFormTests
{
    [Theory]
    [InlineData("code", "wren 4", "capital letters")]
    [InlineData("code", "lark-03", "not in the list")]
    [InlineData("operated", "", "2026-05-28 to 2026-11-25")]
    [InlineData("operated", "11.10.", "can be 11 Oct or 10 Nov")]
    [InlineData("operated", "tomorrow", "2026-05-28 to 2026-11-25")]
    [InlineData("operated", "2026-05-27", "too early")]
    [InlineData("operated", "op+1", "not known yet")]
    [InlineData("side", "both", "left, right")]
    [InlineData("side", "", "left, right")]
    [InlineData("weight-bearing", "half", "none, touch, partial, as tolerated, full")]
    [InlineData("procedure", " ", "1 to 120 letters")]
    [InlineData("body-mass", "19", "from 20 to 350 kg")]
    [InlineData("body-mass", "80 st", "kg or lb")]
    [InlineData("born", "12 may", "too late")]
    [InlineData("flexion-at-most", "161", "from 0 to 160 deg")]
    [InlineData("pads", "5 x 10", "with one unit")]
    [InlineData("plan-to", "1", "from 2 to 26")]
    [InlineData("plan-to", "27", "from 2 to 26")]
    [InlineData("regimen", "two-hours-twice-daily", "leaves open what a plan needs: contractions a session")]
    [InlineData("regimen", "strong", "one of")]
    [InlineData("measured-before", "2026-11-16", "too late")]
    [InlineData("flexion_active", "9x", "from 0 to 160 deg")]
    public void Refuses_a_line_on_the_spot_and_says_what_is_allowed(string line, string text, string allowed)
    {
        IntakeState begun = Fill(New("LARK-03"), "operated", line == "operated" ? "" : "2026-11-16");
        IntakeState refused = Fill(begun, line, text);
        Assert.Equal(line, refused.Form.Current.Id);
        Assert.Contains(allowed, refused.Form.Problem!.ToString(), StringComparison.Ordinal);
    }

    // 180 lb x 0.45359237 kg/lb (the international pound of 1959) is 81.65 kg.
    [Theory]
    [InlineData("code", " ab-1 ", "AB-1")]
    [InlineData("operated", "16 nov", "2026-11-16")]
    [InlineData("operated", "last mon", "2026-11-23")]
    [InlineData("side", "R", "right")]
    [InlineData("weight-bearing", "wbat", "as tolerated")]
    [InlineData("weight-bearing", "p", "partial")]
    [InlineData("other-knee", "so", "sound")]
    [InlineData("no-resistance-before", "op+28", "2026-12-14")]
    [InlineData("regimen", "burst-10-w", "burst-10-weaker-leg")]
    [InlineData("body-mass", "81,5 kg", "81,5 kg")]
    [InlineData("measured-before", "-30", "2026-10-26")]
    public void Takes_a_line_and_writes_it_out(string line, string text, string then) => Assert.Equal(then, Fill(Filled(), line, text).Form.TextOf(line));

    [Fact]
    public void What_is_needed_makes_a_case_of_six_weeks_from_today_and_nothing_else_is_known()
    {
        CaseTyped typed = Taken(Filled());
        Assert.Equal(("WREN-01", new DateOnly(2026, 11, 16), Side.Left, 7), (typed.Patient.Code.Text, typed.Patient.Operation.Date, typed.Patient.Operation.Side, typed.Patient.Weeks));
        Assert.Equal((null, null, OtherKnee.NotKnown, null, null), (typed.Patient.WeightBearing, typed.Patient.BodyMass, typed.Patient.OtherKnee, typed.Patient.PreOp, typed.Patient.Regimen));
        Assert.Equal(SurgeonLimits.NotStated, typed.Patient.Surgeon);
        Assert.False(typed.Anew);
    }

    [Fact]
    public void Every_line_comes_into_the_case()
    {
        IntakeState state = Filled();
        foreach ((string line, string text) in new[]
        {
            ("weight-bearing", "full"), ("other-knee", "painful"), ("body-mass", "180 lb"), ("born", "1957-05-14"), ("therapist", "KL"), ("flexion-at-most", "110"), ("no-resistance-before", "op+28"),
            ("surgeon", "dressing dry"), ("stimulator", "two-channel"), ("pads", "7,6x12,7cm"), ("regimen", "burst-10-w"), ("plan-from", "+2"), ("plan-to", "week 12"), ("measured-before", "2026-10-20"),
            ("flexion_active", "112"), ("quadriceps_torque", "82 86 84 Nm"),
        })
        {
            state = Fill(state, line, text);
        }

        Case patient = Taken(state).Patient;
        Assert.Equal((WeightBearing.Full, OtherKnee.Painful, new DateOnly(1957, 5, 14), "KL"), (patient.WeightBearing!.Value, patient.OtherKnee, patient.Born!.Value, patient.Therapist));
        Assert.Equal(81.65, patient.BodyMass!.Kilograms, 2);
        Assert.Equal((110, new DateOnly(2026, 12, 14), "dressing dry"), (patient.Surgeon.FlexionAtMost!.Degrees, patient.Surgeon.NoResistanceBefore!.Value, patient.Surgeon.Text));
        Assert.Equal(("two-channel", "7.6 x 12.7 cm", "burst-10-weaker-leg"), (patient.Stimulator, $"{patient.Pads}", patient.Regimen));
        Assert.Equal((new DateOnly(2026, 11, 27), 12), (patient.PlanFrom!.Value, patient.Weeks));
        Assert.Equal((new DateOnly(2026, 10, 20), 112, 84), (patient.PreOp!.Date, patient.PreOp.Value(MeasureIds.FlexionActive), patient.PreOp.Value(MeasureIds.QuadricepsTorque)));
    }

    [Fact]
    public void Measures_before_the_operation_need_their_day() =>
        Assert.Equal("measured-before", Press(Fill(Filled(), "flexion_active", "112"), "Ctrl+S").Form.Current.Id);

    // Post-op week 1 is days 0 to 6 (the reference's counting), so day 0 is week 1, day 7 week 2 and day 181 week 26.
    [Theory]
    [InlineData("2026-11-25", 6)]
    [InlineData("2026-11-18", 7)]
    [InlineData("2026-05-28", 26)]
    public void Any_case_it_takes_drafts_a_plan_from_today_without_stim_until_screened(string operated, int weeks)
    {
        PlanRevision plan = PlanDraft.Draft(Taken(Filled(operated)).Patient, Library).Value!;
        Assert.Equal(weeks, plan.Weeks);
        Assert.True(plan.From >= Today);
        Assert.Contains("not answered", Assert.Single(plan.StimBarred), StringComparison.Ordinal);
    }

    [Fact]
    public void What_stays_in_a_kept_case_says_why()
    {
        Case seen = Knee with { Sessions = [new SessionLog(Today, 10)] };
        Assert.Contains("keeps its code", Fill(Kept(Knee), "code", "WREN-02").Form.Problem!.Wrong, StringComparison.Ordinal);
        Assert.Contains("sessions are kept under it", Fill(Kept(seen), "operated", "2026-11-15").Form.Problem!.Wrong, StringComparison.Ordinal);
        Assert.Contains("sessions are kept under it", Fill(Kept(seen), "side", "right").Form.Problem!.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_in_the_day_is_put_right_while_nothing_hangs_on_it()
    {
        CaseTyped typed = Taken(Fill(Kept(Knee), "operated", "2026-11-15"));
        Assert.Equal((new DateOnly(2026, 11, 15), true), (typed.Patient.Operation.Date, typed.Anew));
    }

    [Fact]
    public void A_changed_case_keeps_everything_the_form_does_not_show()
    {
        Case rich = Knee with { DeficitWritten = DeficitSign.Negative, FlagNotes = [new FlagNote("clot-leg", Today, "KL", "seen")], BodyMass = Core.Quantities.Mass.FromKilograms(80) };
        Assert.Equal(rich with { Therapist = "CD" }, Taken(Fill(Kept(rich), "therapist", "CD")).Patient);
        Assert.Null(Taken(Fill(Kept(rich), "body-mass", "")).Patient.BodyMass);
        Assert.Equal("Nothing was changed.", Press(Kept(rich), "Ctrl+S").Status);
    }

    [Fact]
    public void A_plan_that_is_over_can_still_have_its_case_changed()
    {
        Case old = Knee with { Operation = Knee.Operation with { Date = new(2026, 6, 1) }, Weeks = 6 };
        Assert.Equal("CD", Taken(Fill(Kept(old), "therapist", "CD")).Patient.Therapist);
    }

    [Fact]
    public void Regimens_are_gone_through_and_one_that_leaves_too_much_open_is_not_taken()
    {
        IntakeState list = Press(Filled(), "F2");
        Assert.Contains("> ", Text(Press(list, "Esc")), StringComparison.Ordinal);
        Assert.Equal("strong-15-twice-daily", Press(list, "Enter").Form.TextOf("regimen"));
        IntakeState last = Press(list, "End");
        Assert.Contains("cannot be planned: it leaves open", Press(last, "Enter").Status, StringComparison.Ordinal);
        Assert.Equal(IntakeMode.Regimens, Press(last, "Enter").Mode);
    }

    [Fact]
    public void What_was_typed_can_be_kept_as_texts_and_put_back()
    {
        IntakeState typed = Typed(Filled(), "body-mass", "8");
        FormTexts texts = typed.Form.Texts;
        Assert.Equal(typed.Form.Lines.Select(line => line.Text), New().Form.With(texts).Lines.Select(line => line.Text));
        Assert.Equal("body-mass", New().Form.With(texts).Current.Id);
    }

    [Fact]
    public void The_screening_is_reached_from_the_data_of_a_kept_case()
    {
        Assert.Equal(new GoToScreening(), Assert.Single(Step(Kept(Knee), "F4").Effects));
        Assert.Contains("Ctrl+S saves the case first", Press(Filled(), "F4").Status, StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_hands_over_what_was_typed()
    {
        LeaveTold(New(), null);
        LeaveTold(Filled(), "WREN-01");
    }

    [Fact]
    public void Pasted_keys_are_text() => Assert.Equal("ab q", IntakeScreen.Definition.Paste(New(), "ab\rq").Form.TextOf("code"));

    private static void LeaveTold(IntakeState state, string? code) =>
        Assert.Equal(code, Assert.IsType<IntakeLeft>(Assert.IsType<LeaveScreen>(Assert.Single(Step(state, "Esc").Effects)).Telling).Typed?.Form.TextOf("code"));
}
