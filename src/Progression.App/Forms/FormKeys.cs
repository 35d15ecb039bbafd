using Progression.App.Actions;

namespace Progression.App.Forms;

/// <summary>The keys that every form has, as rows for a screen's table; their order in the hint line leaves room for the screen's own.</summary>
public static class FormKeys
{
    private const int LineRank = 8;

    /// <summary>Moving over the lines and typing in one.</summary>
    /// <param name="form">Where the form is in the state.</param>
    /// <param name="put">The state with another form.</param>
    /// <param name="handIn">Hands the present line in.</param>
    public static IEnumerable<ScreenAction<TState>> Lines<TState>(Func<TState, Form> form, Func<TState, Form, TState> put, Func<TState, Step<TState>> handIn) =>
    [
        ActionRow.Does("take", ["Enter", "Tab", "Down"], "take the line and go on", handIn).Hinted(2, "take line"),
        ActionRow.Shows<TState>("above", ["Up", "Shift+Tab"], "the line above", state => put(state, form(state).By(-1))).Hinted(7, "line above"),
        ActionRow.Shows<TState>("next-part", ["Ctrl+N", "PgDn"], "the next part of the form", state => put(state, form(state).ByGroup(1))).Hinted(5, "next part")
            .Unless(state => form(state).HasParts ? null : "This form has one part only."),
        ActionRow.Shows<TState>("part-before", ["PgUp"], "the part before", state => put(state, form(state).ByGroup(-1))),
        ActionRow.Shows<TState>("as-opened", ["Ctrl+D"], "everything as it was opened; again brings it back", state => put(state, form(state).Turned()))
            .Unless(state => form(state).CanTurn ? null : "Nothing has been typed yet."),
        .. CommonRows.Typing<TState>((state, change) => put(state, form(state).With(change)), LineRank),
    ];
}
