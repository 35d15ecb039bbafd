using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>What the keys of the screening do.</summary>
internal static class ScreeningFlow
{
    private const string By = "by";
    private const string On = "on";
    private const string Text = "text";

    /// <summary>Answers the question under the cursor and goes on; a yes that a clearance may lift stays, so that one can be given.</summary>
    public static ScreeningState Answer(ScreeningState state, Answer answer)
    {
        ScreeningItem item = state.Chosen!;
        Clearance? clearance = state.Answers.GetValueOrDefault(item.Id)?.Clearance;
        bool drops = clearance is not null && answer != Core.People.Answer.Yes;
        ScreeningState answered = state.With(state.Answers.SetItem(item.Id, new ScreeningAnswer(item.Id, answer, drops ? null : clearance)));
        bool stays = answer == Core.People.Answer.Yes && item is { CanBeCleared: true, Kind: not ScreeningKind.NoConcern } && clearance is null;
        return (stays ? answered : answered.To(state.Index + 1)) with
        {
            Status = drops ? "The clearance went with the yes it was given for."
                : stays ? "Down goes on; c enters a clearance where one was given."
                : state.Index == state.Items.Length - 1 ? "That was the last question: Ctrl+S goes on."
                : "",
        };
    }

    public static ScreeningState TakeBack(ScreeningState state) => state.With(state.Answers.Remove(state.Chosen!.Id)) with { Status = "Taken back: not asked." };

    public static ScreeningState AskRest(ScreeningState state) => state with { Mode = ScreeningMode.Rest, Status = "" };

    public static ScreeningState TakeRest(ScreeningState state)
    {
        int count = state.Rest.Count();
        ScreeningState answered = state.With(state.Answers.SetItems(state.Rest.Select(item => KeyValuePair.Create(item.Id, new ScreeningAnswer(item.Id, Core.People.Answer.No, null)))));
        return answered with { Mode = ScreeningMode.Questions, Status = $"{count} questions: asked, all no. Ctrl+S goes on." };
    }

    public static ScreeningState AskClearance(ScreeningState state)
    {
        string group = "A named clinician's clearance";
        Clearance? given = state.Answers[state.Chosen!.Id].Clearance;
        return state with
        {
            Mode = ScreeningMode.Clearance,
            Status = "",
            Aside = Form.Of(
                new FormLine(By, group, "Cleared by") { Given = given?.By ?? "", IsText = true },
                new FormLine(On, group, "On") { Given = DayWords.Typed(given?.On ?? state.Today) },
                new FormLine(Text, group, "What was said") { Given = given?.Text ?? "", IsText = true }),
        };
    }

    public static ScreeningState AskDay(ScreeningState state) => state with
    {
        Mode = ScreeningMode.Day,
        Status = "",
        Aside = Form.Of(new FormLine(On, "The day of the screening", "Asked on") { Given = DayWords.Typed(state.AskedOn) }),
    };

    public static ScreeningState HandInAside(ScreeningState state)
    {
        Form aside = state.Aside!.HandIn(line => Wrong(state, line), line => Settled(state, line));
        return aside.Problem is null && state.Aside.IsLast ? TakeAside(state) : state with { Aside = aside, Status = "" };
    }

    public static ScreeningState TakeAside(ScreeningState state)
    {
        if (state.Aside!.FirstWrong(line => Wrong(state, line)) is { } refused)
        {
            return state with { Aside = refused, Status = "" };
        }

        DateOnly day = DayText.Read("", state.Aside.TextOf(On), Days(state)).Value!.Value;
        ScreeningState back = state with { Mode = ScreeningMode.Questions, Aside = null };
        if (state.Mode == ScreeningMode.Day)
        {
            return back with { AskedOn = day, Status = $"Asked on {DayText.Written(day)}." };
        }

        ScreeningAnswer cleared = state.Answers[state.Chosen!.Id] with { Clearance = new Clearance(state.Aside.TextOf(By), day, state.Aside.TextOf(Text)) };
        return back.With(state.Answers.SetItem(cleared.Item, cleared)) with { Status = "The clearance stands with the answer. Down goes on." };
    }

    public static ScreeningState Back(ScreeningState state) => state with { Mode = ScreeningMode.Questions, Aside = null, Status = "Left as it was." };

    public static Step<ScreeningState> Finish(ScreeningState state) => Step.To(state with { Status = "" }, new ScreeningAnswered(state.Patient));

    /// <summary>Leaves; on the way to a first plan what was answered is saved first, because a screening may be answered in part.</summary>
    public static Step<ScreeningState> Leave(ScreeningState state) => state is { IsStep: true, IsTouched: true } ? Finish(state) : Step.To(state, new LeaveScreen(new ScreeningLeft(state.IsTouched ? state : null)));

    public static string? WhyNoAnswer(ScreeningState state) => state.Chosen is null ? "The library has no questions." : null;

    public static string? WhyNoTakingBack(ScreeningState state) =>
        WhyNoAnswer(state) ?? (state.Answers.ContainsKey(state.Chosen!.Id) ? null : "This question has no answer yet.");

    public static string? WhyNoRest(ScreeningState state) => state.Rest.Any() ? null : "Every question that bears on stim has its answer.";

    public static string? WhyNoClearance(ScreeningState state) => WhyNoAnswer(state)
        ?? (!state.Chosen!.CanBeCleared ? "No clearance lifts this item."
            : state.Answers.GetValueOrDefault(state.Chosen.Id)?.Answer != Core.People.Answer.Yes ? "A clearance belongs to a yes; this is not one."
            : null);

    public static string? WhyNotFinish(ScreeningState state) => state.IsTouched || state.IsStep ? null : "Nothing has been answered anew.";

    /// <summary>What the line of a small form takes.</summary>
    public static string Allowed(ScreeningState state) => state.Aside!.Current.Id switch
    {
        On => $"{Days(state).Allowed}.",
        By => "A role or initials of the clinician who cleared it. All three are needed.",
        _ => "What was said, with any condition.",
    };

    /// <summary>The day that was understood in a line; empty where none was.</summary>
    public static string Understood(ScreeningState state, FormLine line) =>
        line.Id == On && DayText.Read("", line.Text, Days(state)).Value is { } day ? DayWords.Place(state.Case.Operation.Date, day.Value) : "";

    private static Problem? Wrong(ScreeningState state, FormLine line) => line.Id == On
        ? DayText.Read(line.Title, line.Text, Days(state)).Problems.FirstOrDefault()
        : FreeText.Wrong(line.Title, line.Text, line.Id == By ? IntakeReading.MostName : IntakeReading.MostText, isNeeded: true);

    private static string? Settled(ScreeningState state, FormLine line) =>
        line.Id == On && DayText.Read("", line.Text, Days(state)).Value is { } day ? DayWords.Typed(day.Value) : null;

    private static DayRange Days(ScreeningState state) => new(state.Case.Operation.Date.AddDays(-365), state.Today, state.Today) { Operated = state.Case.Operation.Date };
}
