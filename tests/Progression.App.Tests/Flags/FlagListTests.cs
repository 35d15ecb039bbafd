using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Flags;
using Progression.App.Pictures;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;
using Progression.Records.Library;

namespace Progression.App.Tests.Flags;

public sealed class FlagListTests
{
    private static readonly DateOnly Operated = new(2026, 11, 2);
    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly Source Practice = new("Invented for the tests", Standing.CommonPractice);

    private static readonly ImmutableArray<RedFlag> Flags =
    [
        Flag("hot", "a hot knee", new FlagQuestion("hot_all", "Is the knee hot or red?", null) { CoversAll = true }, new FlagQuestion("fever", "Fever of 38 or more?", 5)),
        Flag("leg", "a swollen leg", new FlagQuestion("calf", "Is the calf swollen?", null), new FlagQuestion("late", "Asked later only?", 90)),
        Flag("lag", "a lag that rose"),
    ];

    private static Case Knee { get; } = new() { Code = CaseCode.Parse("K-030")!, Operation = new Operation(Operated, Side.Left, "total knee replacement") };

    [Fact]
    public void Single_keys_answer_and_move_on_and_a_no_that_covers_all_passes_the_rest_by()
    {
        FlagListState state = Press(Open(), "n");
        Assert.Equal("calf", state.Chosen!.Question!.Id);
        FlagListState last = Press(state, "u");
        Assert.Contains("last question", last.Status, StringComparison.Ordinal);
        FlagsAnswered effect = Assert.IsType<FlagsAnswered>(Assert.Single(Step(last, "Ctrl+S").Effects));
        Assert.Equal([("calf", Answer.Unknown), ("hot_all", Answer.No)], Signs(effect.Patient));
    }

    [Fact]
    public void A_no_to_a_sign_that_covers_two_flags_passes_both_by_and_each_stays_in_the_list()
    {
        RedFlag leg = Flag("leg", "a swollen leg", new FlagQuestion("clot", "Any sign of a clot?", null) { CoversAll = true }, new FlagQuestion("calf", "Is the calf swollen?", null));
        RedFlag lung = Flag("lung", "short of breath", new FlagQuestion("clot", "Any sign of a clot?", null) { CoversAll = true });
        FlagListState state = Open(flags: [leg, lung, Flag("hot", "a hot knee", new FlagQuestion("fever", "Fever?", null))]);
        Assert.Equal(["clot", "calf", null, "fever"], state.Rows.Select(row => row.Question?.Id));
        Assert.Equal("fever", Press(state, "n").Chosen!.Question!.Id);
        Assert.Equal(2, Press(state, "y").Flags.Count(flag => flag.IsOpen));
    }

    [Fact]
    public void Every_question_of_the_library_is_asked_once_and_no_to_all_raises_nothing()
    {
        FlagListState state = FlagListState.Open(FlagDesk.For(Knee, LibraryReader.Default(), Today));
        Assert.Distinct(state.Rows.Select(row => row.Question?.Id).OfType<string>());
        FlagListState answered = Enumerable.Range(0, state.Rows.Length).Aggregate(state, (now, _) => now.Chosen!.Question is null ? Press(now, "Down") : Press(now, "n"));
        Assert.DoesNotContain(answered.Flags, flag => flag.IsOpen);
        Assert.NotEmpty(answered.Answers);
    }

    [Fact]
    public void A_yes_to_infection_opens_the_flag_of_the_library_and_a_note_closes_it()
    {
        FlagListState state = FlagListState.Open(FlagDesk.For(Knee, LibraryReader.Default(), Today));
        FlagListState raised = Press(state.To(state.Rows.ToList().FindIndex(row => row.Question?.Id == Core.People.Signs.InfectionSigns)), "y");
        Assert.True(raised.Chosen!.Flag.IsOpen);
        FlagListState closed = Press(Typed(Press(Typed(Press(raised, "c"), "AB"), "Enter"), "seen, no infection"), "Ctrl+S");
        Assert.Equal("AB", closed.Chosen!.Flag.ClosedBy!.By);
    }

    [Fact]
    public void A_yes_shows_the_checklist_and_stays_on_it()
    {
        FlagListState state = Press(Open(), "y");
        Assert.Equal("hot_all", state.Chosen!.Question!.Id);
        string text = Text(state);
        Assert.Contains("OPEN", text, StringComparison.Ordinal);
        Assert.Contains("- Look at it.", text, StringComparison.Ordinal);
        Assert.Contains("- Follow the clinic's protocol.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_question_whose_day_has_not_come_is_not_asked() => Assert.DoesNotContain("late", Open().Rows.Select(row => row.Question?.Id));

    [Fact]
    public void A_flag_of_readings_has_nothing_to_answer() => Assert.Contains("raised by the readings", Press(Open(), "End", "y").Status, StringComparison.Ordinal);

    [Fact]
    public void Answers_join_the_visit_of_the_day_and_what_it_held_stays()
    {
        Assessment visit = Visit(Today, ("fever", Answer.Yes), ("other", Answer.No));
        FlagListState state = Press(Open(Knee with { Assessments = [visit] }), "n");
        Assert.Equal([("fever", Answer.Yes), ("hot_all", Answer.No), ("other", Answer.No)], Signs(state.Patient));
        Assert.Single(state.Patient.Assessments);
    }

    [Fact]
    public void An_answer_can_be_taken_back_unless_it_is_kept()
    {
        FlagListState back = Press(Open(), "n", "Up", "Up", "Backspace");
        Assert.Empty(back.Patient.Assessments);
        FlagListState kept = Open(Knee with { Assessments = [Visit(Today, ("hot_all", Answer.No))] });
        Assert.Contains("answered anew", Press(kept, "Backspace").Status, StringComparison.Ordinal);
    }

    [Fact]
    public void An_open_flag_is_closed_with_a_name_and_a_text_and_neither_may_be_missing()
    {
        FlagListState note = Press(Open(), "y", "c");
        Assert.Equal(FlagMode.Note, note.Mode);
        Assert.NotNull(Press(note, "Enter").Note!.Problem);
        FlagListState named = Press(Typed(note, "AB"), "Enter");
        Assert.NotNull(Press(named, "Enter").Note!.Problem);
        Step<FlagListState> closed = Step(Typed(named, "seen by the surgeon, skin only"), "Enter");
        FlagClosed effect = Assert.IsType<FlagClosed>(Assert.Single(closed.Effects));
        Assert.Equal(new FlagNote("hot", Today, "AB", "seen by the surgeon, skin only"), Assert.Single(effect.Patient.FlagNotes));
        Assert.Equal([("hot_all", Answer.Yes)], Signs(effect.Patient));
        Assert.Contains("Closed 2026-11-25 by AB", Text(closed.State), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_open_cannot_be_closed() => Assert.Equal("This flag is not open.", Press(Open(), "c").Status);

    [Fact]
    public void Nothing_answered_is_nothing_to_keep_or_to_leave_behind()
    {
        Assert.Equal("Nothing has been answered yet.", Press(Open(), "Ctrl+S").Status);
        Assert.Null(Assert.IsType<FlagsLeft>(Assert.IsType<LeaveScreen>(Assert.Single(Step(Open(), "Esc").Effects)).Telling).Answered);
        Assert.NotNull(Assert.IsType<FlagsLeft>(Assert.IsType<LeaveScreen>(Assert.Single(Step(Press(Open(), "n"), "q").Effects)).Telling).Answered);
    }

    [Fact]
    public void The_checklist_and_its_note_look_like_this()
    {
        Snapshot.Match(Text(Press(Open(), "y")), "flags-80x24");
        Snapshot.Match(Text(Press(Open(), "n"), 120, 40), "flags-120x40");
        Snapshot.Match(Text(Press(Open(), "y", "c", "Enter")), "flags-note-80x24");
        Snapshot.Match(Text(Press(Open(), "F1"), 80, 40), "flags-help-80x40");
    }

    private static FlagListState Open(Case? patient = null, ImmutableArray<RedFlag>? flags = null) =>
        FlagListState.Open(new FlagDesk { Case = patient ?? Knee, Today = Today, FlagsOf = altered => Judge(altered, flags ?? Flags) });

    private static FlagListState Press(FlagListState state, params string[] keys) => keys.Aggregate(state, (now, key) => Step(now, key).State);

    private static FlagListState Typed(FlagListState state, string text) => FlagScreen.Definition.Paste(state, text);

    private static Step<FlagListState> Step(FlagListState state, string key) => FlagScreen.Definition.Press(state, key, key.Length == 1 ? key : null);

    private static string Text(FlagListState state, int width = 80, int height = 24) => FlagPicture.Draw(state, new(width, height)).Fit(new PictureSize(width, height)).Text;

    private static IEnumerable<(string, Answer)> Signs(Case patient) => Assert.Single(patient.Assessments).SignsSeen.Select(pair => (pair.Key, pair.Value));

    private static Assessment Visit(DateOnly day, params (string Sign, Answer Answer)[] signs) => new(
        day,
        ImmutableSortedDictionary.Create<string, Reading>(StringComparer.Ordinal),
        signs.ToImmutableSortedDictionary(pair => pair.Sign, pair => pair.Answer, StringComparer.Ordinal));

    private static RedFlag Flag(string id, string title, params FlagQuestion[] questions) =>
        new() { Id = id, Title = title, Questions = [.. questions], Checklist = ["Look at it.", "Follow the clinic's protocol."], Source = Practice };

    // A stand-in for the rules: a flag shows when one of its questions was answered yes, and a note closes it.
    private static ImmutableArray<FlagState> Judge(Case patient, ImmutableArray<RedFlag> flags) => [.. flags.Select(flag =>
    {
        ImmutableArray<Answer> answers = [.. patient.Assessments.SelectMany(visit => flag.Questions.Where(question => visit.SignsSeen.ContainsKey(question.Id)).Select(question => visit.SignsSeen[question.Id]))];
        return new FlagState
        {
            Flag = flag,
            Raised = answers.Contains(Answer.Yes) ? Truth.Holds : answers.Contains(Answer.No) ? Truth.DoesNotHold : Truth.NotKnown,
            Since = answers.Contains(Answer.Yes) ? Today : null,
            ClosedBy = patient.FlagNotes.FirstOrDefault(note => note.Flag == flag.Id),
        };
    })];
}
