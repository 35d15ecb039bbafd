using Progression.App.Actions;
using Progression.App.Forms;

namespace Progression.App.Logs;

/// <summary>What the keys of the session log do.</summary>
internal static class LogFlow
{
    public static Step<LogState> HandIn(LogState state)
    {
        LogReading reading = new(state);
        Form form = state.Form.HandIn(reading.Wrong, reading.Settled);
        if (form.Problem is not null)
        {
            return Step.To(state with { Form = form, Status = "" });
        }

        bool anotherDay = state.Form.Current is { Id: LogLines.Date, IsTouched: true };
        return Step.To(state with
        {
            Form = anotherDay ? LogLines.For(form, state.Desk, reading.Day!.Value) : form,
            Status = anotherDay ? "Filled in with what was planned for that day." : state.Form.IsLast ? "That was the last line: Ctrl+S takes the session." : "",
        });
    }

    /// <summary>Takes the session, or goes to what stands in the way.</summary>
    public static Step<LogState> Finish(LogState state)
    {
        LogReading reading = new(state);
        if (state.Form.FirstWrong(reading.Wrong) is { } refused)
        {
            return Step.To(state with { Form = refused, Status = "This line has to be put right first." });
        }

        if (!state.IsAgain && state.Desk.Case.Sessions.Any(session => session.Date == reading.Day))
        {
            return Step.To(state with { Mode = LogMode.Again });
        }

        return Step.To(state with { Status = "" }, new SessionReady(reading.Case(), reading.Session()));
    }

    public static Step<LogState> Leave(LogState state) => Step.To(state, new LeaveScreen(new SessionLeft(state.Form.IsTouched ? state : null)));
}
