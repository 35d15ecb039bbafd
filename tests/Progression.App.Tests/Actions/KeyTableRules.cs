using Progression.App.Actions;

namespace Progression.App.Tests.Actions;

/// <summary>What holds of every screen's table of keys.</summary>
internal static class KeyTableRules
{
    /// <summary>Help and a way out in each mode, and help lines that fit the smallest window.</summary>
    public static void Hold<TState>(ActionTable<TState> table)
    {
        Assert.All(table.All.GroupBy(action => action.Mode), mode =>
        {
            Assert.Contains(mode, action => action.Keys.Contains("F1") && action.HintRank == 1);
            Assert.Contains(mode, action => action.Keys.Contains("Esc"));
        });
        Assert.All(table.All, action =>
        {
            Assert.InRange(action.Help.Length, 1, 80 - 26);
            Assert.True(string.Join(", ", action.Keys).Length <= 23, action.Id);
        });
    }

    /// <summary>Four to six hints, all of them seen in the smallest window.</summary>
    public static void HintsFit<TState>(ActionTable<TState> table, TState state)
    {
        Assert.InRange(table.Hints(state).Count, 4, 6);
        Assert.EndsWith(table.Hints(state)[^1].Hint, table.HintLine(state, 80), StringComparison.Ordinal);
    }
}
