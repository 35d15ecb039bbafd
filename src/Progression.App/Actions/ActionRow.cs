using System.Collections.Immutable;

namespace Progression.App.Actions;

/// <summary>Writes rows of a table of keys briefly; mode and group are put on a whole block at a time.</summary>
public static class ActionRow
{
    /// <summary>A row that only shows something else.</summary>
    public static ScreenAction<TState> Shows<TState>(string id, ImmutableArray<string> keys, string help, Func<TState, TState> show) =>
        Does<TState>(id, keys, help, state => Step.To(show(state)));

    /// <summary>A row that may ask the world for something.</summary>
    public static ScreenAction<TState> Does<TState>(string id, ImmutableArray<string> keys, string help, Func<TState, Step<TState>> act) =>
        new() { Id = id, Mode = "", Group = "", Keys = keys, Help = help, Do = act };

    /// <summary>The row with its place in the hint line.</summary>
    public static ScreenAction<TState> Hinted<TState>(this ScreenAction<TState> row, int rank, string hint) => row with { HintRank = rank, Hint = hint };

    /// <summary>The row with the reason why it cannot be done at times.</summary>
    public static ScreenAction<TState> Unless<TState>(this ScreenAction<TState> row, Func<TState, string?> whyNot) => row with { WhyNot = whyNot };

    /// <summary>The row as the way back out of its mode.</summary>
    public static ScreenAction<TState> AsBack<TState>(this ScreenAction<TState> row) => row with { IsBack = true };

    /// <summary>The rows in a mode; the mode's name stands before their ids.</summary>
    public static IEnumerable<ScreenAction<TState>> In<TState>(this IEnumerable<ScreenAction<TState>> rows, string mode, string group) =>
        rows.Select(row => row with { Id = $"{mode.ToLowerInvariant()}-{row.Id}", Mode = mode, Group = group });
}
