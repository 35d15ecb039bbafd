using Progression.App.Actions;
using Progression.App.Forms;
using Progression.App.Grid;

namespace Progression.App.Trying;

/// <summary>Walk the scratch grid to change doses by hand.</summary>
/// <param name="Grid">The grid as it would be.</param>
public sealed record WalkScratch(GridState Grid) : ScreenEffect;

/// <summary>The one table of the try-out's keys.</summary>
public static class TryActions
{
    /// <summary>The table.</summary>
    public static ActionTable<TryState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Readings().In(nameof(TryMode.Readings), "Trying readings"),
            .. CommonRows.Help<TryState>(state => state with { Mode = TryMode.Readings, Scroll = 0 }, Scrolled).In(nameof(TryMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<TryState>> Readings() =>
    [
        ActionRow.Shows<TryState>("help", ["F1"], "this page", state => state with { Mode = TryMode.Help, Scroll = 0 }).Hinted(1, "help"),
        .. FormKeys.Lines<TryState>(state => state.Form, (state, form) => state.With(form), HandIn),
        ActionRow.Does<TryState>("doses", ["F2", "Ctrl+G"], "walk the scratch grid and change doses by hand; Esc comes back here", state => Step.To(state, new WalkScratch(state.Grid))).Hinted(3, "change doses"),
        ActionRow.Shows<TryState>("reset", ["Ctrl+R"], "everything as it was measured", state => state.Reset()).Hinted(4, "as measured"),
        ActionRow.Shows<TryState>("week-before", ["F5"], "the grid a week back", state => state with { Grid = GridMoves.By(state.Grid, 0, -1) }),
        ActionRow.Shows<TryState>("week-after", ["F6"], "the grid a week on", state => state with { Grid = GridMoves.By(state.Grid, 0, 1) }),
        ActionRow.Shows<TryState>("band-before", ["F7"], "the grid a band up", state => state with { Grid = GridMoves.ToBand(state.Grid, down: false) }),
        ActionRow.Shows<TryState>("band-after", ["F8"], "the grid a band down", state => state with { Grid = GridMoves.ToBand(state.Grid, down: true) }).Hinted(6, "grid down"),
        ActionRow.Does<TryState>("leave", ["Esc", "Ctrl+Q"], "leave; nothing of it is kept", state => Step.To(state, new LeaveScreen())).Hinted(2, "leave, keep nothing").AsBack(),
        CommonRows.Repaint<TryState>(),
    ];

    private static Step<TryState> HandIn(TryState state) => Step.To(state with { Form = state.Form.HandIn(state.Wrong) });

    private static TryState Scrolled(TryState state, int lines) =>
        state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, TryPicture.HelpLines().Count - 1)) };
}
