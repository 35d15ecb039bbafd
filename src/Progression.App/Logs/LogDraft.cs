using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Records.Caseload;

namespace Progression.App.Logs;

/// <summary>The form of a session as texts on disk, and back.</summary>
public static class LogDraft
{
    /// <summary>Names the form among those of a case.</summary>
    public const string FormName = "session";

    private const string Again = "again";

    /// <summary>What was typed; null when nothing was.</summary>
    public static KeptForm? Of(LogState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return !state.Form.IsTouched ? null : new KeptForm(state.Desk.Case.Code, FormName)
        {
            At = state.Form.Current.Id,
            // The day also where it was not typed: on another day the form would open with that day.
            Fields = state.Form.Texts.ById.SetItem(LogLines.Date, state.Form.TextOf(LogLines.Date)),
            Further = FormTexts.Of([(Again, state.IsAgain ? "yes" : null)]),
        };
    }

    /// <summary>The form as it was left, on the case and the plan as they are now.</summary>
    /// <param name="desk">What the form reads.</param>
    /// <param name="kept">What was kept of it.</param>
    public static LogState Restored(LogDesk desk, KeptForm kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        LogState open = LogState.Open(desk);
        Form dated = open.Form.With(line => line.Id == LogLines.Date ? line with { Entry = LineEntry.Of(kept.Fields.GetValueOrDefault(LogLines.Date, line.Given)) } : line);
        Form planned = new LogReading(open with { Form = dated }).Day is { } day ? LogLines.For(dated, desk, day) : dated;
        return open with
        {
            Form = planned.With(new FormTexts(kept.Fields, kept.At ?? "")),
            IsAgain = kept.Further.ContainsKey(Again),
            Status = FormTexts.Told(kept.Fields, planned),
        };
    }

    /// <summary>What was typed, line by line, each with its name and what stood there before.</summary>
    public static IEnumerable<(string Place, string Before, string Draft)> Lines(LogState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Form.Lines.Where(line => line.IsTouched).Select(line => (line.Title, line.Given, line.Text));
    }
}
