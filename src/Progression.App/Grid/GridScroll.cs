namespace Progression.App.Grid;

/// <summary>Reading on and back in a text that is longer than its room.</summary>
public static class GridScroll
{
    /// <summary>The width at which a text has the most lines, so that its end can always be reached.</summary>
    private const int Narrowest = 40;

    /// <summary>The state scrolled by so many lines; it stops at both ends.</summary>
    public static GridState By(GridState state, int lines)
    {
        ArgumentNullException.ThrowIfNull(state);
        int last = state.Mode switch
        {
            GridMode.Help => GridPages.HelpLines(state, GridActions.Table).Count(),
            GridMode.Findings => GridFindings.Chosen(state) is { } chosen ? AnswerText.WholeFinding(chosen, Narrowest).Count() : 0,
            GridMode.Days => GridDays.Lines(state, Narrowest).Count,
            GridMode.Why => AnswerText.Lines(state, 78).Count,
            _ => AnswerText.Lines(state, Narrowest).Count,
        };
        return state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, last - 1)) };
    }
}
