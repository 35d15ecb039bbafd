using System.Collections.Immutable;
using Progression.App.Assess;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using static Progression.App.Tests.Assess.SampleVisits;

namespace Progression.App.Tests.Assess;

/// <summary>What the form asks before it takes a visit.</summary>
public sealed class AssessQuestionTests
{
    private static readonly Case Unasked = Knee with { DeficitWritten = null };

    [Fact]
    public void How_a_deficit_is_written_is_asked_once_and_kept_with_the_case()
    {
        AssessState asked = Fill(Open(Unasked), MeasureIds.ExtensionActive, "-8");
        Assert.Equal(AssessMode.Sign, asked.Mode);
        AssessState answered = Press(asked, "2");
        Assert.Equal((AssessMode.Form, MeasureIds.ExtensionPassive), (answered.Mode, answered.Form.Current.Id));
        Assert.Contains("(-5=short)", answered.Form.Current.Title, StringComparison.Ordinal);
        AssessmentReady ready = Ready(Fill(answered, MeasureIds.ExtensionPassive, "-4"));
        Assert.Equal((8, 4, DeficitSign.Negative), (ready.Visit.Value(MeasureIds.ExtensionActive), ready.Visit.Value(MeasureIds.ExtensionPassive), ready.Patient.DeficitWritten));
    }

    [Fact]
    public void Letters_typed_on_while_it_is_asked_go_into_the_next_line()
    {
        AssessState asked = Fill(Open(Unasked), MeasureIds.ExtensionActive, "-8");
        AssessState typed = Typed(asked, "-4.5");
        Assert.Equal((AssessMode.Sign, "-4.5"), (typed.Mode, typed.TypedOn));
        Assert.Contains("Typed on, for the next line: -4.5", Flowing(typed), StringComparison.Ordinal);
        AssessState answered = Press(typed, "2");
        Assert.Equal((AssessMode.Form, MeasureIds.ExtensionPassive, "-4.5", ""), (answered.Mode, answered.Form.Current.Id, answered.Form.Current.Text, answered.TypedOn));
    }

    [Fact]
    public void Where_the_value_is_refused_after_the_answer_what_was_typed_on_is_told()
    {
        AssessState answered = Press(Typed(Fill(Open(Unasked), MeasureIds.ExtensionActive, "40"), "3"), "2");
        Assert.Equal(("40", "Typed meanwhile and not taken: 3"), (answered.Form.Current.Text, answered.Status));
    }

    [Fact]
    public void Until_it_is_known_nothing_is_said_of_the_change()
    {
        Assert.DoesNotContain("change", Row(Typed(Press(Open(Unasked), "Enter", "Enter"), "8"), MeasureIds.ExtensionActive, "Ext. active"), StringComparison.Ordinal);
        Assert.Contains("change", Row(Typed(Press(Open(), "Enter", "Enter"), "8"), MeasureIds.ExtensionActive, "Ext. active"), StringComparison.Ordinal);
    }

    [Fact]
    public void Finishing_straight_from_the_field_asks_too_and_goes_on()
    {
        AssessState asked = Press(Typed(Press(Open(Unasked), "Enter", "Enter"), "8"), "Ctrl+S");
        Assert.Equal((AssessMode.Sign, MeasureIds.ExtensionActive), (asked.Mode, asked.Form.Current.Id));
        Assert.Equal(8, Ready(asked, "1").Visit.Value(MeasureIds.ExtensionActive));
    }

    [Fact]
    public void A_value_that_does_not_fit_the_answer_is_refused_in_the_way_it_is_written()
    {
        AssessState answered = Press(Fill(Open(Unasked), MeasureIds.ExtensionActive, "40"), "2");
        Assert.Contains("from -60 to 15 deg", answered.Form.Problem!.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_asked_where_extension_is_not_measured_or_the_case_says_how()
    {
        Assert.Equal(AssessMode.Form, Fill(Open(Unasked), MeasureIds.ExtensionActive, "").Mode);
        Assert.Equal(AssessMode.Form, Fill(Open(), MeasureIds.ExtensionActive, "8").Mode);
    }

    [Fact]
    public void Last_values_are_shown_as_deficits_are_written_and_f3_asks_again()
    {
        Assert.Contains("-14, 18 Nov", Row(Open(Knee with { DeficitWritten = DeficitSign.Negative }), MeasureIds.ExtensionActive, "Ext. active"), StringComparison.Ordinal);
        Assert.Equal(DeficitSign.Negative, Press(Open(), "F3", "2").Sign);
    }

    // A lag of 2 - 14 deg is further under zero than the error of one lag, 1.645 x 4.243 = 6.98 deg (reference part 5.2).
    [Fact]
    public void Active_extension_better_than_passive_beyond_error_is_asked_about()
    {
        AssessState asked = Press(Fill(Fill(Open(), MeasureIds.ExtensionActive, "2"), MeasureIds.ExtensionPassive, "14"), "Ctrl+S");
        Assert.Equal((AssessMode.Query, MeasureIds.ExtensionActive), (asked.Mode, asked.Form.Current.Id));
        Assert.Equal(2, Ready(asked, "y").Visit.Value(MeasureIds.ExtensionActive));
        AssessState back = Press(asked, "Enter");
        Assert.Equal((AssessMode.Form, MeasureIds.ExtensionActive), (back.Mode, back.Form.Current.Id));
        Assert.Equal(14, Ready(Fill(back, MeasureIds.ExtensionActive, "14")).Visit.Value(MeasureIds.ExtensionActive));
    }

    // 140 N last time; 140 N is 31.5 pounds of pull (1 lbf is 4.448 N by definition).
    [Fact]
    public void A_force_that_looks_like_pounds_is_asked_about()
    {
        AssessState asked = Press(Fill(Open(), MeasureIds.QuadricepsForce, "31.5"), "Ctrl+S");
        Assert.Equal((AssessMode.Query, MeasureIds.QuadricepsForce), (asked.Mode, asked.Form.Current.Id));
    }

    [Fact]
    public void Each_odd_value_is_asked_about_once_and_remarks_only_go_along()
    {
        ImmutableArray<EntryQuery> odd =
        [
            new EntryQuery(MeasureIds.FlexionActive, "Odd bend.", "a", "b"), new EntryQuery("rater", "Another rater.", "a", "b") { IsNote = true },
            new EntryQuery(MeasureIds.PainRest, "Odd pain.", "a", "b"),
        ];
        AssessState state = AssessState.Open(Open().Desk with { QueriesOn = (_, _) => odd });
        AssessState first = Press(Fill(state, MeasureIds.FlexionActive, "95"), "Ctrl+S");
        Assert.Contains("Flexion, active: Odd bend.", Text(first), StringComparison.Ordinal);
        AssessState second = Press(first, "y");
        Assert.Contains("Odd pain.", Text(second), StringComparison.Ordinal);
        Assert.Equal("Another rater.", Assert.Single(Ready(second, "y").Notes).Odd);
        Assert.Contains("Odd pain.", Text(Press(second, "n", "Ctrl+S")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_device_and_position_of_last_time_hold_until_another_is_typed()
    {
        AssessState asked = Press(Fill(Open(), MeasureIds.FlexionActive, "95"), "Up", "F2");
        Assert.Equal(("long goniometer", "supine"), (asked.Aside!.TextOf("device"), asked.Aside.TextOf("position")));
        AssessState told = Press(AssessScreen.Definition.Paste(Press(asked, "Ctrl+U"), "inclinometer"), "Ctrl+S");
        Reading reading = Ready(told).Visit.Readings[MeasureIds.FlexionActive];
        Assert.Equal(("inclinometer", "supine"), (reading.Device, reading.Position));
        Assert.Contains("*78, 18 Nov", Row(told, MeasureIds.FlexionActive, "Flexion, active"), StringComparison.Ordinal);
        Assert.Contains("last time with device long goniometer", Flowing(told), StringComparison.Ordinal);
    }

    [Fact]
    public void Stairs_ask_for_their_steps_and_a_day_has_no_device()
    {
        AssessState asked = Press(Open() with { Form = Open().Form.To("stairs_up") }, "F2");
        AssessState refused = Press(asked with { Aside = AssessScreen.Definition.Paste(asked with { Aside = asked.Aside!.To("steps") }, "many").Aside }, "Enter");
        Assert.Contains("1 to 60", refused.Aside!.Problem!.Allowed, StringComparison.Ordinal);
        Assert.Contains("belong to a measured value", Press(Open(), "Up", "F2").Status, StringComparison.Ordinal);
    }
}
