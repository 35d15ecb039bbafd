using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>What the keys of the form of a case do.</summary>
internal static class IntakeFlow
{
    public static IntakeState HandIn(IntakeState state)
    {
        IntakeReading reading = new(state);
        IntakeChecks checks = new(state.Desk, reading);
        Form form = state.Form.HandIn(checks.Wrong, checks.Settled);
        bool needed = form.Problem is null && state.Form.Current.Id == IntakeLines.Procedure;
        return state with
        {
            Form = form,
            Status = form.Problem is not null ? ""
                : needed && state.Desk.Case is null ? "That is all a plan needs: Ctrl+S goes on. The lines below may stay empty."
                : state.Form.IsLast ? "That was the last line: Ctrl+S goes on." : "",
        };
    }

    /// <summary>Takes the case, or goes to the line that stands in the way.</summary>
    public static Step<IntakeState> Finish(IntakeState state)
    {
        IntakeReading reading = new(state);
        if (state.Form.FirstWrong(new IntakeChecks(state.Desk, reading).Wrong) is { } refused)
        {
            return Step.To(state with { Form = refused, Status = "This line has to be put right first." });
        }

        Case typed = reading.Case();
        bool anew = state.Desk.Case is { } kept && (kept.Operation.Date, kept.Operation.Side) != (typed.Operation.Date, typed.Operation.Side);
        return state.Desk.Case == typed
            ? Step.To(state with { Status = "Nothing was changed." })
            : Step.To(state with { Status = "" }, new CaseTyped(typed, anew));
    }

    public static Step<IntakeState> Leave(IntakeState state) => Step.To(state, new LeaveScreen(new IntakeLeft(state.Form.IsTouched ? state : null)));

    public static ImmutableArray<Regimen> Regimens(IntakeState state) =>
        [.. state.Desk.Library.Regimens.Values.OrderBy(one => one.Id != state.Desk.Library.DefaultRegimen).ThenBy(one => !Core.Drafting.PlanDraft.LeftOpen(one).IsEmpty)];

    public static IntakeState Choose(IntakeState state)
    {
        int at = new IntakeReading(state).Regimen is { } named ? Regimens(state).IndexOf(named) : 0;
        return state with { Mode = IntakeMode.Regimens, Index = Math.Max(0, at), Scroll = 0, Status = "" };
    }

    public static IntakeState To(IntakeState state, int index) => state with { Index = Math.Clamp(index, 0, state.Desk.Library.Regimens.Count - 1), Scroll = 0, Status = "" };

    public static IntakeState Take(IntakeState state)
    {
        Form form = state.Form.To(IntakeLines.Regimen).With(_ => LineEntry.Of(Regimens(state)[state.Index].Id));
        return HandIn(state with { Mode = IntakeMode.Form, Form = form });
    }
}
