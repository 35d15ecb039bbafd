using System.Collections.Immutable;
using Progression.App.Actions;

namespace Progression.App.Grid;

/// <summary>Writes rows of the grid's table of keys briefly; mode and group are put on a whole block at a time.</summary>
internal static class GridRow
{
    public static ScreenAction<GridState> Shows(string id, ImmutableArray<string> keys, string help, Func<GridState, GridState> show) =>
        Does(id, keys, help, state => Step.To(show(state)));

    public static ScreenAction<GridState> Does(string id, ImmutableArray<string> keys, string help, Func<GridState, Step<GridState>> act) =>
        new() { Id = id, Mode = nameof(GridMode.Grid), Group = "", Keys = keys, Help = help, Do = act };

    public static ScreenAction<GridState> Hinted(this ScreenAction<GridState> row, int rank, string hint) => row with { HintRank = rank, Hint = hint };

    public static ScreenAction<GridState> Unless(this ScreenAction<GridState> row, Func<GridState, string?> whyNot) => row with { WhyNot = whyNot };

    /// <summary>The rows in a mode; their ids become its own by its name in front.</summary>
    public static IEnumerable<ScreenAction<GridState>> In(this IEnumerable<ScreenAction<GridState>> rows, GridMode mode, string group) =>
        rows.Select(row => row with
        {
            Id = mode == GridMode.Grid ? row.Id : $"{mode.ToString().ToLowerInvariant()}-{row.Id}",
            Mode = mode.ToString(),
            Group = group,
        });
}
