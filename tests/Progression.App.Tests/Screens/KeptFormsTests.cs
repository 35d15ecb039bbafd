using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Flags;
using Progression.App.Grid;
using Progression.App.Logs;
using Progression.App.Pictures;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Screens;

/// <summary>Forms half typed when a session is killed, and the next session on the same store.</summary>
public sealed class KeptFormsTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly OpenStore _killed;

    public KeptFormsTests()
    {
        _killed = _temp.Open(_temp.Demo, ended: true);
        Assert.True(DemoStore.Prepare(_killed, fresh: false).Ready);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_half_typed_assessment_is_offered_compared_and_recovered_with_every_text()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "a");
        Line(before, "95");
        before.Paste("half");
        before.Keep();

        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        DraftOffer offer = Assert.Single(Grid(after).Offers);
        Assert.Equal("an assessment", offer.What);
        Assert.Contains(new DraftText("Flexion, active", "", "95"), offer.Lines);
        Keys(after, "r");
        AssessState restored = Assert.IsType<Frame<AssessState>>(after.Top).State;
        Assert.Equal(("95", "half"), (restored.Form.TextOf(MeasureIds.FlexionActive), restored.Form.TextOf(MeasureIds.FlexionPassive)));
        Assert.Equal(MeasureIds.FlexionPassive, restored.Form.Current.Id);
        Assert.Single(Files());
    }

    [Fact]
    public void A_visit_typed_yesterday_keeps_its_day()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "a");
        Line(before, "95");
        before.Keep();
        _temp.Clock.Now = _temp.Clock.Now.AddDays(1);
        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        Assert.Contains("Kept on 2026-11-25 at 09:00", Grid(after).Offers[0].Kept, StringComparison.Ordinal);
        Keys(after, "r");
        Assert.Equal("2026-11-25", Assert.IsType<Frame<AssessState>>(after.Top).State.Form.TextOf("date"));
    }

    [Fact]
    public void A_correction_and_how_a_value_was_taken_come_back()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "A");
        Line(before, "91");
        Keys(before, "F2");
        Line(before, "long goniometer");
        before.Paste("supine");
        before.Keep();
        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        Assert.Equal("a correction of an assessment", Assert.Single(Grid(after).Offers).What);
        Keys(after, "r");
        AssessState restored = Assert.IsType<Frame<AssessState>>(after.Top).State;
        Assert.Equal(("91", AssessMode.Detail), (restored.Form.TextOf(MeasureIds.FlexionActive), restored.Mode));
        Assert.NotNull(restored.Standing);
        Assert.Equal(("long goniometer", "supine"), (restored.Aside!.TextOf("device"), restored.Aside.TextOf("position")));
    }

    [Fact]
    public void A_half_typed_session_comes_back_and_is_gone_from_disk_once_it_is_logged()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "s");
        Line(before, "58");
        before.Keep();
        OpenStore store = _temp.Open(_temp.Demo);
        ScreenStack after = Screens(store);
        Keys(after, "r");
        Assert.Equal("58", Assert.IsType<Frame<LogState>>(after.Top).State.Form.TextOf("peak"));
        Frame typed = after.Top!;
        Keys(after, "Ctrl+S");
        Assert.Contains("is logged", Grid(after).Status, StringComparison.Ordinal);
        Assert.Empty(Files());
        // The timer may come late with the form as it was before it was saved.
        Assert.Null(typed.Keep());
        Assert.Empty(Files());
        Assert.Equal(58, store.Book.Open(DemoStore.Showcase)!.Case.Sessions[^1].Peak!.Milliamperes);
    }

    [Fact]
    public void Answers_to_red_flags_and_a_note_half_typed_come_back()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "r", "y", "c");
        Line(before, "anna");
        before.Paste("seen by");
        before.Keep();
        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        DraftOffer offer = Assert.Single(Grid(after).Offers);
        Assert.Contains(offer.Lines, line => line.Draft == "yes");
        Keys(after, "r");
        FlagListState restored = Assert.IsType<Frame<FlagListState>>(after.Top).State;
        Assert.Contains(Answer.Yes, restored.Answers.Values);
        Assert.Equal((FlagMode.Note, "anna", "seen by"), (restored.Mode, restored.Note!.TextOf("by"), restored.Note.TextOf("text")));
    }

    [Fact]
    public void A_form_left_half_typed_is_on_disk_at_once_and_offered_when_the_case_is_opened_again()
    {
        OpenStore store = _temp.Open(_temp.Demo);
        ScreenStack screens = Screens(store);
        Keys(screens, "s");
        Line(screens, "61");
        Keys(screens, "Esc");
        Assert.Equal("Not finished, and kept: the session; s goes on with it.", Grid(screens).Status);
        Assert.Single(Files());
        Assert.Equal("Half typed and kept for LARK-03: the session.", PlanFrame.Farewell(Grid(screens)));
        Assert.Equal("Kept today at 09:00, earlier in this session.", Assert.Single(Grid(Screens(store)).Offers).Kept);
        // Emptied again, there is nothing to keep.
        Keys(screens, "s", "Up", "Ctrl+U", "Esc");
        Assert.Empty(Files());
        Assert.Null(PlanFrame.Farewell(Grid(screens)));
    }

    [Fact]
    public void An_untouched_form_keeps_nothing()
    {
        ScreenStack screens = Screens(_temp.Open(_temp.Demo));
        foreach (string door in new[] { "a", "s", "r" })
        {
            Keys(screens, door);
            screens.Keep();
            Keys(screens, "Esc");
        }

        Assert.Empty(Files());
    }

    [Fact]
    public void With_a_recovered_plan_unsaved_a_recovered_assessment_waits_for_it()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "a");
        Line(before, "95");
        before.Keep();
        Keys(before, "Esc", "g", "x");
        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        Assert.Equal(["changes to the plan", "an assessment"], Grid(after).Offers.Select(offer => offer.What));
        Keys(after, "r", "r");
        Assert.StartsWith("The assessment is recovered and waits", Grid(after).Status, StringComparison.Ordinal);
        Assert.Equal(2, Files().Length);
        Keys(after, "Ctrl+S", "a");
        Assert.Equal("95", Assert.IsType<Frame<AssessState>>(after.Top).State.Form.TextOf(MeasureIds.FlexionActive));
    }

    [Fact]
    public void Hostile_text_in_a_draft_does_not_reach_the_terminal_and_a_text_without_a_line_is_told()
    {
        KeptForm hostile = new(DemoStore.Showcase, "session")
        {
            Fields = ImmutableSortedDictionary<string, string>.Empty.Add("peak", "5\u001b[2J").Add("date", "2026-11-25").Add("gone\u0007", "7\u202e"),
        };
        _killed.Drafts.Opened().Keep(hostile);
        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        Keys(after, "c");
        string compared = after.Draw(PictureSize.Smallest).Text;
        Keys(after, "r");
        string form = after.Draw(PictureSize.Smallest).Text;
        Assert.Contains("these have no line any more: gone", form, StringComparison.Ordinal);
        Assert.All([compared, form], text => Assert.DoesNotContain(text, letter => letter is '\u001b' or '\u0007' or '\u202e'));
    }

    [Fact]
    public void A_form_this_program_does_not_know_stays_kept()
    {
        _killed.Drafts.Opened().Keep(new KeptForm(DemoStore.Showcase, "later") { Fields = ImmutableSortedDictionary<string, string>.Empty.Add("a", "b") });
        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        Keys(after, "r");
        Assert.Equal("This program does not know that form; it stays kept.", Grid(after).Status);
        Assert.Single(Files());
    }

    [Fact]
    public void What_is_dropped_is_gone()
    {
        ScreenStack before = Screens(_killed);
        Keys(before, "a");
        Line(before, "95");
        before.Keep();
        ScreenStack after = Screens(_temp.Open(_temp.Demo));
        Keys(after, "c", "x");
        Assert.Empty(Files());
        Assert.Equal(GridMode.Grid, Grid(after).Mode);
    }

    private string[] Files() => Directory.Exists(Path.Combine(_temp.Demo, "drafts")) ? Directory.GetFiles(Path.Combine(_temp.Demo, "drafts")) : [];

    private static ScreenStack Screens(OpenStore store) => new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Plan(DemoStore.Showcase).Frame!);

    private static GridState Grid(ScreenStack screens) => Assert.IsType<Frame<GridState>>(screens.Top).State;

    private static void Line(ScreenStack screens, string text)
    {
        Keys(screens, "Ctrl+U");
        screens.Paste(text);
        Keys(screens, "Enter");
    }

    private static void Keys(ScreenStack screens, params string[] keys)
    {
        foreach (string key in keys)
        {
            screens.Press(key, key.Length == 1 ? key : null);
        }
    }
}
