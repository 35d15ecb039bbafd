using Progression.App.Forms;
using Progression.Records.Caseload;

namespace Progression.App.Intake;

/// <summary>The form of a case as texts on disk, and back.</summary>
public static class IntakeDraft
{
    /// <summary>Names the form of a new case.</summary>
    public const string OfNew = "new-case";

    /// <summary>Names the form among those of a case.</summary>
    public const string OfCase = "data";

    /// <summary>What was typed; null when nothing was.</summary>
    public static KeptForm? Of(IntakeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return !state.Form.IsTouched ? null : new KeptForm(state.Desk.Case?.Code, state.Desk.Case is null ? OfNew : OfCase) { At = state.Form.Current.Id, Fields = state.Form.Texts.ById };
    }

    /// <summary>The form as it was left, on the case as it is now.</summary>
    /// <param name="desk">What the form reads.</param>
    /// <param name="kept">What was kept of it; null for nothing.</param>
    public static IntakeState Restored(IntakeDesk desk, KeptForm? kept)
    {
        IntakeState open = IntakeState.Open(desk);
        return kept is null ? open : open with { Form = open.Form.With(new FormTexts(kept.Fields, kept.At ?? "")), Status = FormTexts.Told(kept.Fields, open.Form) };
    }

    /// <summary>What was typed, line by line, each with its name and what stood there before.</summary>
    public static IEnumerable<(string Place, string Before, string Draft)> Lines(IntakeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Form.Lines.Where(line => line.IsTouched).Select(line => (line.Title, line.Given, line.Text));
    }
}
