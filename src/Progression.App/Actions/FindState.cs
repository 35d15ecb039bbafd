namespace Progression.App.Actions;

/// <summary>The line that finds an action, over the screen whose action it is.</summary>
/// <param name="Below">The screen.</param>
public sealed record FindState(Frame Below)
{
    /// <summary>What is typed.</summary>
    public LineEntry Line { get; init; } = LineEntry.Empty;

    /// <summary>Which of the actions found is chosen, from 0.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public FindMode Mode { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told.</summary>
    public string Status { get; init; } = "";

    /// <summary>The actions that fit, best first. A letter that leaves or saves by custom comes first where the screen can.</summary>
    public IReadOnlyList<ActionChoice> Found
    {
        get
        {
            IEnumerable<ActionChoice> best = ActionSearch.Best(Below.Choices, Line.Text).Select(match => match.Choice).Where(choice => choice.Name != "find-action");
            return ActionSearch.Short(Below.Choices, Line.Text.Trim()) is { } meant ? [.. best.Where(choice => choice != meant).Prepend(meant)] : [.. best];
        }
    }

    /// <summary>The action chosen; null when none fits.</summary>
    public ActionChoice? Chosen => Found is { Count: > 0 } found ? found[Math.Clamp(Index, 0, found.Count - 1)] : null;

    /// <summary>The state with another action chosen; stays at the ends.</summary>
    public FindState To(int index) => this with { Index = Math.Clamp(index, 0, Math.Max(0, Found.Count - 1)), Status = "" };

    /// <summary>The state with the line changed.</summary>
    public FindState With(Func<LineEntry, LineEntry> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return this with { Line = change(Line), Index = 0, Status = "" };
    }
}
