using Progression.App.Actions;

namespace Progression.App.Assess;

/// <summary>The assessment, ready for the shell.</summary>
public static class AssessScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<AssessState> Definition { get; } = new()
    {
        Actions = AssessActions.Table,
        Draw = AssessPicture.Draw,
        Say = (state, text) => state with { Status = text },
        Type = Type,
    };

    private static AssessState? Type(AssessState state, string text) => state switch
    {
        { Aside: { } aside, Mode: AssessMode.Detail or AssessMode.Reason } => state with { Aside = aside.With(line => line.Put(text)) },
        { Mode: AssessMode.Form } => state with { Form = state.Form.With(line => line.Put(text)) },
        _ => null,
    };
}
