using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>What the keys of the assessment do: handing lines in, finishing, and the questions on the way.</summary>
internal static class AssessFlow
{
    public static AssessState HandIn(AssessState state)
    {
        AssessReading reading = new(state);
        Form form = state.Form.HandIn(reading.Wrong, reading.Settled);
        if (form.Problem is not null)
        {
            return state with { Form = form, Status = "" };
        }

        if (MustAskSign(state.Form.Current, state))
        {
            return state with { Mode = AssessMode.Sign, IsFinishing = false };
        }

        if (state.Form.Current.Id == AssessLines.Date && AssessVisits.Question(state) is not null)
        {
            return state with { Mode = AssessMode.Visit, IsFinishing = false };
        }

        return state with { Form = form, Status = state.Form.IsLast ? "That was the last line: Ctrl+S takes the visit." : "" };
    }

    /// <summary>Takes the visit, or goes to what stands in the way.</summary>
    public static Step<AssessState> Finish(AssessState state)
    {
        AssessReading reading = new(state);
        if (state.Form.Lines.FirstOrDefault(line => MustAskSign(line, state)) is { } unsigned)
        {
            return Step.To(state with { Form = state.Form.To(unsigned.Id), Mode = AssessMode.Sign, IsFinishing = true });
        }

        if (state.Form.FirstWrong(reading.Wrong) is { } refused)
        {
            return Step.To(state with { Form = refused, Status = "This line has to be put right first." });
        }

        if (AssessVisits.Question(state) is not null)
        {
            return Step.To(state with { Form = state.Form.To(AssessLines.Date), Mode = AssessMode.Visit, IsFinishing = true });
        }

        if (reading.IsEmpty)
        {
            return Step.To(state with { Status = state.Standing is null ? "Nothing has been typed yet." : "Nothing of this visit was changed." });
        }

        return reading.IsCorrecting && state.Reason is null ? Step.To(AskReason(state)) : Judge(state, reading.Visit());
    }

    public static Step<AssessState> Answer(AssessState state, DeficitSign sign)
    {
        string at = state.Form.Current.Id;
        AssessState signed = state with { Sign = sign, Form = AssessLines.Labelled(state.Form, sign), Mode = AssessMode.Form };
        AssessState filled = state.Standing is { } standing ? AssessVisits.Correct(signed, standing) : signed;
        AssessState shown = filled with { Form = filled.Form.To(at), Status = AssessLines.Convention(sign) };
        return state.IsFinishing ? Finish(shown) : Step.To(TypedOn(AssessLines.IsExtension(shown.Form.Current.Id) && shown.Form.Current.Text.Length > 0 ? HandIn(shown) : shown));
    }

    // A refused value keeps its line for itself.
    private static AssessState TypedOn(AssessState state) => state.TypedOn.Length == 0 ? state
        : state is { Mode: AssessMode.Form, Form.Problem: null } ? state with { Form = state.Form.With(line => line.Put(state.TypedOn)), TypedOn = "" }
        : state with { Status = $"Typed meanwhile and not taken: {state.TypedOn}", TypedOn = "" };

    public static AssessState BackToDay(AssessState state) =>
        state with { Mode = AssessMode.Form, Form = state.Form.To(AssessLines.Date), Status = "The day can be changed; nothing was taken." };

    public static AssessState AskDetail(AssessState state)
    {
        ReadingDetail detail = new AssessReading(state).DetailOf(state.Form.Current.Id);
        string group = $"How {state.Form.Current.Title} was taken";
        bool stairs = state.Desk.Library.Measures[state.Form.Current.Id].SameStairs;
        return state with
        {
            Mode = AssessMode.Detail,
            Aside = Form.Of(
            [
                new FormLine("device", group, "Device") { Given = detail.Device ?? "", IsText = true },
                new FormLine("position", group, "Position") { Given = detail.Position ?? "", IsText = true },
                new FormLine("rater", group, "Who measured") { Given = detail.Rater ?? "", IsText = true },
                .. stairs ? [new FormLine("steps", group, "Steps of the stairs") { Given = $"{detail.Steps}" }] : Array.Empty<FormLine>(),
            ]),
        };
    }

    /// <summary>Hands a line of the small form in; after the last, the whole of it.</summary>
    public static Step<AssessState> HandInAside(AssessState state)
    {
        Form aside = state.Aside!.HandIn(AssessAside.Wrong);
        return aside.Problem is null && state.Aside.IsLast ? TakeAside(state) : Step.To(state with { Aside = aside, Status = "" });
    }

    public static Step<AssessState> TakeAside(AssessState state)
    {
        if (state.Aside!.FirstWrong(AssessAside.Wrong) is { } refused)
        {
            return Step.To(state with { Aside = refused, Status = "" });
        }

        AssessState back = state with { Mode = AssessMode.Form, Aside = null, Status = "" };
        return state.Mode == AssessMode.Reason
            ? Finish(back with { Reason = AssessAside.Reason(state.Aside) })
            : Step.To(back with { Details = state.Details.SetItem(state.Form.Current.Id, AssessAside.Detail(state.Aside)) });
    }

    /// <summary>The odd value is right: on to the next, or done.</summary>
    public static Step<AssessState> Confirm(AssessState state) =>
        Finish(state with { Confirmed = state.Confirmed.Add(state.Query!), Query = null, Mode = AssessMode.Form });

    public static AssessState BackToForm(AssessState state) =>
        state with { Mode = AssessMode.Form, Aside = null, Query = null, Status = "Nothing was taken yet." };

    public static Step<AssessState> Leave(AssessState state)
    {
        return Step.To(state, new LeaveScreen(new AssessmentLeft(state.IsTouched ? state : null)));
    }

    public static AssessState AskReason(AssessState state) => state with
    {
        Mode = AssessMode.Reason,
        Aside = AssessAside.AskReason(state.Standing!, state.Form.TextOf(AssessLines.Rater)),
    };

    private static Step<AssessState> Judge(AssessState state, Assessment visit)
    {
        ImmutableArray<EntryQuery> queries = state.Desk.QueriesOn(AssessVisits.Without(state), visit);
        return queries.FirstOrDefault(query => !query.IsNote && !state.Confirmed.Contains(query)) is { } odd
            ? Step.To(state with { Mode = AssessMode.Query, Query = odd, Form = state.Form.To(odd.Field) })
            : Step.To(state with { Status = "" }, new AssessmentReady(AssessVisits.With(state, visit), visit, [.. queries.Where(query => query.IsNote)]));
    }

    private static bool MustAskSign(FormLine line, AssessState state) => state.Sign is null && AssessLines.IsExtension(line.Id) && line.Text.Length > 0 && line.IsTouched;
}
