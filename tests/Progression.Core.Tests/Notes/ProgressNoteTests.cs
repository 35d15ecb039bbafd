using System.Collections.Immutable;
using Progression.Core.Adherence;
using Progression.Core.Documents;
using Progression.Core.Library;
using Progression.Core.Notes;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Notes;

public sealed class ProgressNoteTests
{
    private static readonly Knee Seen = Knee.Well.Seen(3, Look.Well.Lag(12).With(MeasureIds.FlexionActive, 70));
    private static readonly Knee Twice = Seen.Logged(4, 30, true).Logged(5, 35, true).Logged(9, 38, true).Seen(10, Look.Well.Lag(4).With(MeasureIds.FlexionActive, 95));

    // A plan of care tells type, amount (times a day), frequency (times a week) and duration (weeks): 42 CFR 410.61 by a payer's text.
    [Fact]
    public void The_plan_of_care_tells_amount_frequency_and_duration_of_each_treatment()
    {
        ImmutableArray<ImmutableArray<string>> rows = Written.Table(Written.Order(Seen, 4), "Plan of care");

        Assert.Contains(rows, row => row.SequenceEqual(["Stim, high volume: 15 contractions a session", "2 times a day", "7 days a week", "weeks 2 to 3 (2 weeks)"]));
        Assert.Contains(rows, row => row[0].StartsWith("Step up, 10 cm: 3 x 8, growing to ", StringComparison.Ordinal) && row[2] == "7 days a week");
    }

    [Fact]
    public void A_treatment_that_stops_and_begins_again_has_two_rows()
    {
        PlanRevision plan = Seen.Draft();
        foreach ((int week, bool isThere) in new[] { (1, false), (2, true), (3, false), (4, true), (5, false), (6, false) })
        {
            CellAddress at = new("calf", week);
            plan = plan.With(at, plan.At(at)! with { Content = isThere ? new ActiveCell("ankle-pump", ExerciseDose.InRepetitions(2, 10, 3) with { Days = DaysOfWeek.Parse("mon thu")!.Value }) : null });
        }

        Assert.Equal(["week 2", "week 4"], Written.Table(Written.Order(Seen, 4, plan), "Plan of care")
            .Where(row => row[0] == "Ankle pump: 2 x 10" && row[1] == "3 times a day" && row[2] == "2 days a week (mon thu)").Select(row => row[3]));
    }

    [Fact]
    public void Goals_have_aim_reading_range_and_chance()
    {
        ImmutableArray<ImmutableArray<string>> rows = Written.Table(Written.Order(Twice, 10), "Goals");
        ImmutableArray<string> last = rows.Last(row => row[0] == "Active flexion");

        Assert.Equal(2, rows.Count(row => row[0] == "Active flexion"));
        Assert.Matches("^at least [0-9.]+ deg by the end of week 6$", last[1]);
        Assert.Equal("95 deg on 2026-03-12", last[2]);
        Assert.Matches("^[0-9]+ to [0-9]+ deg$", last[3]);
        Assert.Matches("^(about [1-9]|fewer than 1|more than 9) in 10$", last[4]);
    }

    [Fact]
    public void What_was_not_measured_and_not_forecast_is_said_so()
    {
        string note = Written.Note(Written.Order(Knee.Well, 1));

        Assert.Contains("not measured", note, StringComparison.Ordinal);
        Assert.Contains("no forecast. Nothing was measured since the operation.", note, StringComparison.Ordinal);
        Assert.Contains("What changed -", note, StringComparison.Ordinal);
        Assert.Contains("No measure has two readings since the operation.", note, StringComparison.Ordinal);
        Assert.Contains("there was no stim session before the last visit.", note, StringComparison.Ordinal);
    }

    // Standard error of a lag from two extension readings of 3 deg each: 4.24 deg; detectable at 90 %: 1.645 x 1.414 x 4.24 = 9.87 deg (product notes, worked example).
    [Fact]
    public void A_change_has_its_class_and_the_error_it_was_held_against()
    {
        ImmutableArray<ImmutableArray<string>> rows = Written.Table(Written.Order(Twice, 10), "What changed");

        Assert.Contains(rows, row => row.SequenceEqual(["Extension lag", "12 deg on 2026-03-05", "4 deg on 2026-03-12", "-8", "9.87 deg", "4.24 and 4.24 deg", "no detectable change"]));
        Assert.Contains(rows, row => row[0] == "Active flexion" && row[3] == "+25" && row[6].StartsWith("improved", StringComparison.Ordinal));
    }

    [Fact]
    public void The_phase_tells_the_rule_its_conditions_and_what_would_change_it()
    {
        string note = Written.Note(Written.Order(Twice, 10));

        Assert.Contains("Visit of 2026-03-12. The rules suggest: ", note, StringComparison.Ordinal);
        Assert.Contains("Would change it: ", note, StringComparison.Ordinal);
        Assert.Contains("Last tolerated current: 38 mA peak on 2026-03-11", note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decision_and_a_cell_set_by_hand_stand_with_their_reasons()
    {
        PlanRevision plan = Seen.Draft();
        CellAddress at = new(Lanes.Stim, 3);
        PlanCell cell = plan.At(at)!;
        plan = plan.With(at, cell with { Content = new StimCell(Rung.HighVolume, 10, 1, DaysOfWeek.Every), Pin = new Pin(cell.Content, "travels this week") })
            with
        { Decision = PlanDecision.Of(Knee.Day(10), 4, 3, "stairs later") };
        string note = Written.Note(Written.Order(Twice, 10, plan));

        Assert.Contains("After the visit of 2026-03-12, 3 of 4 proposed changes were taken: stairs later", note, StringComparison.Ordinal);
        Assert.Contains("Set by hand in week 3, Stim: high 10x1 daily instead of high 15x2 daily. Reason: travels this week.", note, StringComparison.Ordinal);
    }

    // Two sessions of 15 contractions logged in the days from the plan's first, of 4 days of one session in week 1 and 14 sessions in week 2.
    [Fact]
    public void Sessions_are_told_as_logged_of_planned_with_the_definition_of_adherence()
    {
        NoteOrder order = Written.Order(Twice, 10, Twice.Draft());
        ImmutableArray<ImmutableArray<string>> rows = Written.Table(order with { Plan = Seen.Draft() }, "Sessions and adherence");

        Assert.Equal(["1", "2 (present)"], rows.Select(row => row[0]));
        Assert.StartsWith("2 of ", rows[0][1], StringComparison.Ordinal);
        Assert.Equal("1 of 14", rows[1][1]);
        Assert.Equal("15 of 210", rows[1][2]);
        Assert.Contains(PlanAdherence.Definition, Written.Note(order), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_findings_stand_with_their_rule_and_a_red_flag_holds_forecasts_back()
    {
        Knee flagged = Twice.Seen(12, Look.Well.Says(Signs.ClotSigns, Answer.Yes));
        string note = Written.Note(Written.Order(flagged, 12, Seen.Draft()));

        Assert.Contains("Stop: ", note, StringComparison.Ordinal);
        Assert.Contains("no forecast. A red flag is open", note, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_due_names_its_setting_and_where_that_comes_from()
    {
        Limit every = new(LimitIds.ReportEvery, "Days from one progress note to the next", 30, "d", new Source("Our payer's letter", Standing.Seen));
        ClinicalLibrary library = Knee.Library with { Limits = Knee.Library.Limits.Add(every.Id, every) };
        string note = Written.Note(Written.Order(Twice, 10, library: library));

        Assert.Contains("2026-03-23: reassess.", note, StringComparison.Ordinal);
        Assert.Contains("2026-04-05: progress note. Days from one progress note to the next: 30 d; Our payer's letter [seen].", note, StringComparison.Ordinal);
        Assert.DoesNotContain("progress note. Days", Written.Note(Written.Order(Twice, 10)), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_personal_but_the_code_is_on_a_paper()
    {
        Case named = Twice.Case with { Born = new DateOnly(1957, 5, 14), BodyMass = Mass.FromKilograms(82.5), Therapist = "QX" };
        NoteOrder order = Written.Order(new Knee(named), 10);

        Assert.All(new[] { Written.Note(order), Written.Card(order, 2) }, paper =>
        {
            Assert.DoesNotContain("1957", paper, StringComparison.Ordinal);
            Assert.DoesNotContain("82.5", paper, StringComparison.Ordinal);
            Assert.DoesNotContain("QX", paper, StringComparison.Ordinal);
            Assert.Contains("K-001", paper, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_note_can_be_written_of_any_plan_and_carries_its_caution_and_mark() => Assert.All(InventedKnees.Drafted.Take(60), made =>
    {
        string note = Written.Note(Written.Order(made.Knee, 30, made.Plan));
        Assert.Contains(Caution.Text, note, StringComparison.Ordinal);
        Assert.Contains("UNSIGNED DRAFT.", note, StringComparison.Ordinal);
    });
}
