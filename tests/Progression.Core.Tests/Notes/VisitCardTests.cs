using Progression.Core.Documents;
using Progression.Core.Notes;
using Progression.Core.People;

namespace Progression.Core.Tests.Notes;

public sealed class VisitCardTests
{
    private static readonly Knee Seen = Knee.Well.Seen(3, Look.Well);

    // Stevens-Lapsley 2012: 15 contractions of 15 s with 45 s of rest, 250 us at 50 a second, pads of 7.6 x 12.7 cm, twice a day; 15 minutes a session as MSSE 2009 has it.
    [Fact]
    public void Tells_all_that_another_person_needs_to_set_the_same()
    {
        string card = Written.Card(Written.Order(Seen, 8), 2);

        Assert.Contains("Visit card, K-001", card, StringComparison.Ordinal);
        Assert.Contains("Left knee, post-op week 2: 2026-03-09 to 2026-03-15;", card, StringComparison.Ordinal);
        Assert.Contains("Dose 15 contractions, 2 sessions a day, daily", card, StringComparison.Ordinal);
        Assert.Contains("On / off 15 s / 45 s; 15 min with the last rest", card, StringComparison.Ordinal);
        Assert.Contains("symmetric, 50 Hz, 250 us (of a phase or the whole pulse: not stated)", card, StringComparison.Ordinal);
        Assert.Contains("Pads two of 7.6 x 12.7 cm", card, StringComparison.Ordinal);
        Assert.Contains("one low on the inner front above the kneecap", card, StringComparison.Ordinal);
        Assert.Contains("Intensity Maximum tolerated.", card, StringComparison.Ordinal);
        Assert.Contains(Caution.Text, card, StringComparison.Ordinal);
        Assert.Contains("UNSIGNED DRAFT.", card, StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_the_publication_leaves_open_is_said_to_be_open()
    {
        string card = Written.Card(Written.Order(Seen, 8, Seen.Draft(regimen: "burst-10-weaker-leg")), 2);

        Assert.Contains("Current waveform not stated, 50 Hz (from memory), carrier 2500 Hz (from memory), burst share not stated", card, StringComparison.Ordinal);
        Assert.Contains("Ramps up 2 s (from memory), down not stated, set at the clinic", card, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_logged_current_it_says_so() =>
        Assert.Contains("Last tolerated not logged", Written.Card(Written.Order(Seen.Logged(4, null, true), 8), 2), StringComparison.Ordinal);

    [Theory]
    [InlineData(true, "41 mA peak on 2026-03-08, strong contraction tolerated")]
    [InlineData(null, "41 mA peak on 2026-03-08, not asked whether a strong contraction was tolerated")]
    [InlineData(false, "38 mA peak on 2026-03-07, strong contraction tolerated")]
    public void The_last_current_is_of_the_latest_session_that_was_not_called_too_much(bool? tolerated, string told)
    {
        Knee knee = Seen.Logged(4, 30, true).Logged(5, 38, true).Logged(6, 41, tolerated);

        Assert.Contains($"Last tolerated {told}", Written.Card(Written.Order(knee, 8), 2), StringComparison.Ordinal);
    }

    [Fact]
    public void A_session_of_a_later_day_is_not_known_yet() =>
        Assert.Equal("not logged", LastCurrent.Words(Seen.Logged(6, 41, true).Case, Knee.Day(5)));

    [Fact]
    public void A_week_without_stim_has_no_settings_and_says_why()
    {
        Knee barred = Seen.Screened("active-implant", Answer.Yes);
        string card = Written.Card(Written.Order(barred, 8), 2);

        Assert.Contains("No stim in week 2.", card, StringComparison.Ordinal);
        Assert.Contains("No stim: ", card, StringComparison.Ordinal);
        Assert.DoesNotContain("On / off", card, StringComparison.Ordinal);
    }

    [Fact]
    public void Precautions_clearances_red_flags_and_the_surgeons_word_stand_among_the_cautions()
    {
        Knee knee = Seen.Screened("heart-disease", Answer.Yes, new Clearance("Ward physician", Knee.Day(2), "may begin"))
            .Seen(6, Look.Well.Says(Signs.ClotSigns, Answer.Yes));
        knee = knee with { Case = knee.Case with { Surgeon = new SurgeonLimits { Text = "Keep the dressing dry." } } };
        string card = Written.Card(Written.Order(knee, 8, Seen.Draft()), 2);

        Assert.Contains("Heart disease, arrhythmia or heart failure? Yes.", card, StringComparison.Ordinal);
        Assert.Contains("Seen by Ward physician on 2026-03-04.", card, StringComparison.Ordinal);
        Assert.Contains("Surgeon: Keep the dressing dry.", card, StringComparison.Ordinal);
        Assert.Contains("ed flag", card, StringComparison.Ordinal);
    }

    [Fact]
    public void A_week_the_plan_does_not_have_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => VisitCard.Of(Written.Order(Seen, 8), 7));

    [Fact]
    public void A_card_can_be_made_of_any_plan_and_week() => Assert.All(InventedKnees.Drafted.Take(100), made =>
    {
        NoteOrder order = Written.Order(made.Knee, 20, made.Plan);
        Assert.All(Enumerable.Range(1, made.Plan.Weeks), week => Assert.Contains(Caution.Text, Written.Card(order, week), StringComparison.Ordinal));
    });
}
