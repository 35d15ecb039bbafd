using System.Collections.Immutable;
using Progression.App.Actions;

namespace Progression.App.Grid;

/// <summary>Rows of the grid's table of keys: <see cref="ActionRow"/> with the grid's state and modes.</summary>
internal static class GridRow
{
    public static ScreenAction<GridState> Shows(string id, ImmutableArray<string> keys, string help, Func<GridState, GridState> show) =>
        ActionRow.Shows(id, keys, help, show);

    public static ScreenAction<GridState> Does(string id, ImmutableArray<string> keys, string help, Func<GridState, Step<GridState>> act) =>
        ActionRow.Does(id, keys, help, act);

    /// <summary>The rows in a mode; those of the grid itself keep their bare ids.</summary>
    public static IEnumerable<ScreenAction<GridState>> In(this IEnumerable<ScreenAction<GridState>> rows, GridMode mode, string group) =>
        mode == GridMode.Grid ? rows.Select(row => row with { Mode = mode.ToString(), Group = group }) : rows.In(mode.ToString(), group);
}
