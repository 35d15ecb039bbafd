using static Progression.App.Actions.ActionRow;

namespace Progression.App.Actions;

/// <summary>Rows that mean the same on every screen that has them.</summary>
public static class CommonRows
{
    private const int Page = 15;

    /// <summary>Draws the screen again.</summary>
    public static ScreenAction<TState> Repaint<TState>() => Does<TState>("repaint", ["Ctrl+L"], "draw the screen again", state => Step.To(state, new Repaint()));

    /// <summary>Reading a text that is longer than its room.</summary>
    /// <param name="by">The state scrolled by so many lines; it stops at both ends.</param>
    public static IEnumerable<ScreenAction<TState>> Reading<TState>(Func<TState, int, TState> by) =>
    [
        Shows<TState>("on", ["Down", "j", "]"], "read on", state => by(state, 1)).Hinted(2, "read on"),
        Shows<TState>("up", ["Up", "k", "["], "read back", state => by(state, -1)).Hinted(3, "read back"),
        Shows<TState>("page-on", ["PgDn", "Space"], "a page on", state => by(state, Page)).Hinted(4, "page"),
        Shows<TState>("page-back", ["PgUp"], "a page back", state => by(state, -Page)),
        Shows<TState>("top", ["Home"], "the start", state => by(state, -int.MaxValue)).Hinted(5, "start"),
    ];

    /// <summary>Reading the help page.</summary>
    /// <param name="close">Back to where the person was.</param>
    /// <param name="by">The page scrolled by so many lines; it stops at both ends.</param>
    public static IEnumerable<ScreenAction<TState>> Help<TState>(Func<TState, TState> close, Func<TState, int, TState> by) =>
    [
        Shows("close", ["F1", "?", "Esc", "q"], "back to where you were", close).Hinted(1, "close help").AsBack(),
        .. Reading(by),
        Repaint<TState>(),
    ];

    /// <summary>Typing a line.</summary>
    /// <param name="with">The state with its line changed.</param>
    /// <param name="rank">Place in the hint line of the first of its hints.</param>
    public static IEnumerable<ScreenAction<TState>> Typing<TState>(Func<TState, Func<LineEntry, LineEntry>, TState> with, int rank = 4) =>
    [
        Shows<TState>("empty", ["Ctrl+U"], "empty the line", state => with(state, _ => LineEntry.Empty)).Hinted(rank, "empty line"),
        Shows<TState>("start", ["Home", "Ctrl+A"], "the start of the line", state => with(state, line => line.Start())).Hinted(rank + 1, "start"),
        Shows<TState>("end", ["End", "Ctrl+E"], "the end of the line", state => with(state, line => line.End())).Hinted(rank + 2, "end"),
        Shows<TState>("left", ["Left"], "one letter left", state => with(state, line => line.Left())),
        Shows<TState>("right", ["Right"], "one letter right", state => with(state, line => line.Right())),
        Shows<TState>("rub-out", ["Backspace"], "rub out the letter before", state => with(state, line => line.RubOut())),
        Shows<TState>("delete", ["Delete"], "delete the letter at the cursor", state => with(state, line => line.Delete())),
    ];
}
