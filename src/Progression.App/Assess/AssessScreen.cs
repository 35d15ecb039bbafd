using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Assess;

/// <summary>The assessment, ready for the shell.</summary>
public static class AssessScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<AssessState> Definition { get; } = new()
    {
        Actions = AssessActions.Table,
        Draw = AssessPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = Type,
        Aloud = AssessAloud.Words,
    };

    internal static ScreenPlace Where(AssessState state) => new((state.Standing, state.IsPreOp) switch
    {
        (not null, true) => "Correcting the measures before the operation",
        (not null, _) => "Correcting an assessment",
        (_, true) => "Measures before the operation",
        _ => "Assessment",
    })
    {
        Whose = CaseTitle.Of(state.Desk.Case),
        What = new AssessReading(state).Day is { } day ? CaseTitle.ShortDay(day) : "",
        Kept = state.IsTouched ? "not saved yet" : "",
        IsUnsaved = state.IsTouched,
    };

    private static AssessState? Type(AssessState state, string text) => state switch
    {
        { Aside: { } aside, Mode: AssessMode.Detail or AssessMode.Reason } => state with { Aside = aside.With(line => line.Put(text)) },
        // Whoever types quickly is on the next value already. Nothing is asked for here, so an empty text is not taken.
        { Mode: AssessMode.Sign } when text.Length > 0 => state with { TypedOn = LineEntry.Of(state.TypedOn).Put(text).Text },
        { Mode: AssessMode.Form } => state with { Form = state.Form.With(line => line.Put(text)) },
        _ => null,
    };
}
