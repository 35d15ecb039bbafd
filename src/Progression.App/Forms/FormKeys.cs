using Progression.App.Actions;

namespace Progression.App.Forms;

/// <summary>The keys that every form has, as rows for a screen's table; their order in the hint line leaves room for the screen's own.</summary>
public static class FormKeys
{
    /// <summary>Moving over the lines and typing in one.</summary>
    /// <param name="form">Where the form is in the state.</param>
    /// <param name="put">The state with another form.</param>
    /// <param name="handIn">Hands the present line in.</param>
    public static IEnumerable<ScreenAction<TState>> Lines<TState>(Func<TState, Form> form, Func<TState, Form, TState> put, Func<TState, Step<TState>> handIn) =>
    [
        ActionRow.Does("take", ["Enter", "Tab", "Down"], "take the line and go on", handIn).Hinted(2, "take line"),
        ActionRow.Shows<TState>("above", ["Up", "Shift+Tab"], "the line above", state => put(state, form(state).By(-1))).Hinted(5, "line above"),
        ActionRow.Shows<TState>("next-part", ["PgDn"], "the next part of the form", state => put(state, form(state).ByGroup(1))),
        ActionRow.Shows<TState>("part-before", ["PgUp"], "the part before", state => put(state, form(state).ByGroup(-1))),
        .. Typing<TState>((state, change) => put(state, form(state).With(change))),
    ];

    /// <summary>Typing in a line.</summary>
    /// <param name="with">The state with its line changed.</param>
    public static IEnumerable<ScreenAction<TState>> Typing<TState>(Func<TState, Func<LineEntry, LineEntry>, TState> with) =>
    [
        ActionRow.Shows<TState>("empty", ["Ctrl+U"], "empty the line", state => with(state, _ => LineEntry.Empty)).Hinted(7, "empty line"),
        ActionRow.Shows<TState>("start", ["Home", "Ctrl+A"], "the start of the line", state => with(state, line => line.Start())),
        ActionRow.Shows<TState>("end", ["End", "Ctrl+E"], "the end of the line", state => with(state, line => line.End())),
        ActionRow.Shows<TState>("left", ["Left"], "one letter left", state => with(state, line => line.Left())),
        ActionRow.Shows<TState>("right", ["Right"], "one letter right", state => with(state, line => line.Right())),
        ActionRow.Shows<TState>("rub-out", ["Backspace"], "rub out the letter before", state => with(state, line => line.RubOut())),
        ActionRow.Shows<TState>("delete", ["Delete"], "delete the letter at the cursor", state => with(state, line => line.Delete())),
    ];

    /// <summary>Reading the help page.</summary>
    /// <param name="close">Back to where the person was.</param>
    /// <param name="scroll">The page scrolled by so many lines.</param>
    public static IEnumerable<ScreenAction<TState>> Help<TState>(Func<TState, TState> close, Func<TState, int, TState> scroll) =>
    [
        ActionRow.Shows("close", ["F1", "?", "Esc", "q"], "back to where you were", close).Hinted(1, "close help"),
        ActionRow.Shows<TState>("on", ["Down", "j"], "read on", state => scroll(state, 1)).Hinted(2, "read on"),
        ActionRow.Shows<TState>("back", ["Up", "k"], "read back", state => scroll(state, -1)).Hinted(3, "read back"),
        Repaint<TState>(),
    ];

    /// <summary>Drawing the screen again.</summary>
    public static ScreenAction<TState> Repaint<TState>() => ActionRow.Does<TState>("repaint", ["Ctrl+L"], "draw the screen again", state => Step.To(state, new Repaint()));
}
