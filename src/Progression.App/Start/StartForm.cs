using Progression.App.Actions;

namespace Progression.App.Start;

/// <summary>Typing a new case, a line after the other.</summary>
public static class StartForm
{
    /// <summary>Opens a blank form.</summary>
    public static StartState Begin(StartState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = StartMode.Form, Form = NewCaseForm.Blank, Status = "" };
    }

    /// <summary>Reads the form against this list.</summary>
    public static NewCaseReading Reading(StartState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return new(state.Today, [.. state.Cases.Select(line => line.Code.Text)]);
    }

    /// <summary>Hands the line in: goes on to the next, or says what is wrong; after the last the case is made.</summary>
    public static Step<StartState> HandIn(StartState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        NewCaseForm form = state.Form!;
        NewCaseReading reading = Reading(state);
        if (reading.Wrong(form, form.Field) is { } problem)
        {
            return Step.To(state with { Form = form with { Problem = problem }, Status = problem.Wrong });
        }

        if (form.Field != NewCaseForm.Last)
        {
            return Step.To(state with { Form = form.At(form.Field + 1), Status = "" });
        }

        // A line above may have been left half done on the way up and down.
        foreach (NewCaseField field in Enum.GetValues<NewCaseField>())
        {
            if (reading.Wrong(form, field) is { } left)
            {
                return Step.To(state with { Form = form.At(field) with { Problem = left }, Status = left.Wrong });
            }
        }

        return Step.To(state with { Status = "" }, new MakeCase(reading.Case(form)));
    }

    /// <summary>The line above; stays at the first.</summary>
    public static StartState Up(StartState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        NewCaseForm form = state.Form!;
        return state with { Form = form.At((NewCaseField)Math.Max(0, (int)form.Field - 1)), Status = "" };
    }

    /// <summary>Leaves the form; nothing is saved.</summary>
    public static StartState Cancel(StartState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = StartMode.List, Form = null, Status = "No case was made." };
    }

    /// <summary>The state with the present line changed.</summary>
    public static StartState With(StartState state, Func<LineEntry, LineEntry> change)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Form = state.Form!.With(change) };
    }

    /// <summary>Typed or pasted text; null where none is taken.</summary>
    public static StartState? Type(StartState state, string text)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state is { Mode: StartMode.Form, Form: not null } ? With(state, line => line.Put(text)) : null;
    }
}
