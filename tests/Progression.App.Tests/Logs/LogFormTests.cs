using Progression.App.Actions;
using Progression.App.Logs;
using Progression.App.Tests.Grid;
using Progression.Core.People;
using static Progression.App.Tests.Logs.SampleSession;

namespace Progression.App.Tests.Logs;

public sealed class LogFormTests
{
    // Six is the card's bound: one key opens the log from the grid, the rest is counted here.
    [Fact]
    public void A_usual_session_takes_six_keys_beyond_its_numbers()
    {
        int keys = 1;
        LogState state = Open();
        foreach (string number in new[] { "62", "7", "3", "4" })
        {
            state = Press(Typed(state, number), "Enter");
            keys++;
        }

        SessionReady ready = Ready(Typed(state, "0"));
        keys++;
        Assert.Equal(6, keys);
        SessionLog session = ready.Session;
        Assert.Equal((Sample.Today, 15, 62, 7, 3, 4), (session.Date, session.Contractions, session.Peak!.Milliamperes, session.Comfort, session.PainBefore, session.PainAfter));
        Assert.Equal(SkinCheck.Clear, session.Skin);
        Assert.Equal(["quad-set", "heel-slide", "walk"], session.Exercises.Select(done => done.Exercise));
    }

    [Fact]
    public void What_was_planned_is_logged_as_planned_and_what_was_not_typed_is_not_recorded()
    {
        SessionLog session = Ready(Open()).Session;
        Assert.Equal([10, 10, 10], session.Exercises[0].Sets.Select(set => set.Repetitions));
        Assert.Equal([11, 11, 11], session.Exercises[1].Sets.Select(set => set.Repetitions));
        Assert.Equal(900, session.Exercises[2].Time!.Seconds);
        Assert.Null(session.Peak);
        Assert.Null(session.Skin);
        Assert.Null(session.StrongContractionTolerated);
        Assert.Null(session.Adherence);
    }

    [Fact]
    public void An_emptied_exercise_was_not_done_and_another_dose_is_logged_as_typed()
    {
        SessionLog session = Ready(Fill(Fill(Open(), "quad-set", ""), "heel-slide", "10 8 @ 2 kg")).Session;
        Assert.Equal(["heel-slide", "walk"], session.Exercises.Select(done => done.Exercise));
        Assert.Equal([(10, 2), (8, 2)], session.Exercises[0].Sets.Select(set => (set.Repetitions!.Value, set.Load!.Kilograms)));
    }

    [Theory]
    [InlineData("contractions", "601", "0 to 600")]
    [InlineData("contractions", "", "0 to 600")]
    [InlineData("peak", "60 V", "mA")]
    [InlineData("peak", "1001", "from 0 to 1000 mA")]
    [InlineData("comfort", "11", "0 to 10")]
    [InlineData("pain-after", "-1", "0 to 10")]
    [InlineData("skin", "3", "2 or damaged")]
    [InlineData("strong", "u", "y or n")]
    [InlineData("adherence", "101", "from 0 to 100 %")]
    [InlineData("next-morning", "4.5", "0 to 10")]
    [InlineData("quad-set", "3x201", "0 to 200 repetitions")]
    [InlineData("quad-set", "three tens", "3x10")]
    [InlineData("date", "2026-11-19", "2026-11-02 to 2026-11-18")]
    [InlineData("date", "2026-11-01", "2026-11-02 to 2026-11-18")]
    public void Refuses_nonsense_on_the_spot_with_what_is_allowed(string line, string text, string words)
    {
        LogState refused = Fill(Open(), line, text);
        Assert.Equal(line, refused.Form.Current.Id);
        Assert.Contains(words, refused.Form.Problem!.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void The_morning_after_is_kept_with_the_session_before()
    {
        SessionReady ready = Ready(Fill(Open(), "next-morning", "5"));
        Assert.Equal((5, null), (ready.Patient.Sessions[0].PainNextMorning, ready.Session.PainNextMorning));
        Assert.Equal(2, ready.Patient.Sessions.Length);
        Assert.Null(Open(Knee with { Sessions = [Knee.Sessions[0] with { PainNextMorning = 2 }] }).Form.Line("next-morning"));
    }

    [Fact]
    public void A_session_without_stim_takes_nothing_of_stim()
    {
        LogState state = Fill(Open(), "contractions", "0");
        Assert.Contains("none in the contractions", Press(Fill(state, "peak", "60"), "Ctrl+S").Form.Problem!.Wrong, StringComparison.Ordinal);
        Assert.Equal(0, Ready(state).Session.Contractions);
    }

    [Fact]
    public void Another_day_is_filled_in_with_what_was_planned_for_it_and_what_was_typed_stays()
    {
        LogState earlier = Fill(Fill(Fill(Open(), "quad-set", "2x10"), "peak", "60"), "date", "2026-11-12");
        Assert.Equal(("2x10", "3x10", "60"), (earlier.Form.TextOf("quad-set"), earlier.Form.TextOf("heel-slide"), earlier.Form.TextOf("peak")));
        Assert.Equal([new DateOnly(2026, 11, 12), new DateOnly(2026, 11, 17)], Ready(earlier).Patient.Sessions.Select(session => session.Date));
    }

    [Fact]
    public void A_second_session_of_a_day_is_asked_about()
    {
        LogState asked = Press(Open(Knee with { Sessions = [new SessionLog(Sample.Today, 15)] }), "Ctrl+S");
        Assert.Equal(LogMode.Again, asked.Mode);
        Assert.Equal(2, Ready(asked, "y").Patient.Sessions.Length);
        Assert.Equal((LogMode.Form, "date"), (Press(asked, "n").Mode, Press(asked, "n").Form.Current.Id));
    }

    [Fact]
    public void Without_a_plan_nothing_is_filled_in_and_typing_begins_at_the_pain()
    {
        LogState state = Open(planned: false);
        Assert.Equal(("0", "pain-before"), (state.Form.TextOf("contractions"), state.Form.Current.Id));
        Assert.Empty(Ready(state).Session.Exercises);
    }

    [Fact]
    public void Leaving_tells_what_had_been_typed()
    {
        Assert.Null(Assert.IsType<SessionLeft>(Assert.IsType<LeaveScreen>(Assert.Single(Step(Open(), "Esc").Effects)).Telling).Typed);
        Assert.NotNull(Assert.IsType<SessionLeft>(Assert.IsType<LeaveScreen>(Assert.Single(Step(Typed(Open(), "6"), "Esc").Effects)).Telling).Typed);
    }

    [Fact]
    public void The_log_and_its_help_look_like_this()
    {
        Snapshot.Match(Text(Typed(Open(), "62")), "log-80x24");
        Snapshot.Match(Text(Typed(Open(), "62"), 120, 40), "log-120x40");
        Snapshot.Match(Text(Press(Open(), "F1"), 80, 40), "log-help-80x40");
    }

    [Fact]
    public void Hostile_text_stays_harmless()
    {
        string text = Text(Typed(Open() with { Form = Open().Form.To("note") }, "a\u001b[2Jb\u202Ec"));
        Assert.DoesNotContain('\u001b', text);
        Assert.DoesNotContain('\u202E', text);
    }
}
