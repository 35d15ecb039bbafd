using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Intake;

/// <summary>The form of a case, ready for the shell.</summary>
public static class IntakeScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<IntakeState> Definition { get; } = new()
    {
        Actions = IntakeActions.Table,
        Draw = IntakePicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == IntakeMode.Form ? state with { Form = state.Form.With(line => line.Put(text)) } : null,
        Aloud = IntakeAloud.Words,
    };

    internal static ScreenPlace Where(IntakeState state) => state.Desk.Case is { } patient
        ? new("The data of a case") { Whose = CaseTitle.Of(patient), Kept = state.Form.IsTouched ? "not saved yet" : "", IsUnsaved = state.Form.IsTouched }
        : new("A new case") { What = "1 of 3: case, screening, first readings", Kept = state.Form.IsTouched ? "not saved yet" : "", IsUnsaved = state.Form.IsTouched };
}
