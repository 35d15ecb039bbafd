using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Progression.App.Actions;

/// <summary>All actions of one screen: the only place where its keys stand.</summary>
/// <typeparam name="TState">The screen's state.</typeparam>
public sealed class ActionTable<TState>
{
    private const int LastRank = 99;
    private readonly Func<TState, string> _modeOf;
    private readonly FrozenDictionary<(string Mode, string Key), ScreenAction<TState>> _byKey;

    /// <summary>Builds the table.</summary>
    /// <param name="modeOf">The mode a state is in.</param>
    /// <param name="actions">The rows, in the order of the help page; the row that finds an action is added to every mode.</param>
    /// <param name="isFound">Whether its actions can be found by their words; the finder itself is the one screen that is not.</param>
    /// <exception cref="ArgumentException">A key means two things in one mode, or an id stands twice.</exception>
    public ActionTable(Func<TState, string> modeOf, ImmutableArray<ScreenAction<TState>> actions, bool isFound = true)
    {
        _modeOf = modeOf;
        All = isFound ? [.. actions, .. actions.Select(action => action.Mode).Distinct().Select(mode => Find(mode, actions))] : actions;
        _byKey = All.SelectMany(action => action.Keys.Select(key => ((action.Mode, key), action)))
            .GroupBy(pair => pair.Item1, pair => pair.action)
            .ToFrozenDictionary(same => same.Key, same => Single(same));
        if (All.GroupBy(action => action.Id).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"The action id {twice.Key} stands twice.", nameof(actions));
        }
    }

    /// <summary>The rows, in the order of the help page.</summary>
    public ImmutableArray<ScreenAction<TState>> All { get; }

    /// <summary>The action a key means now, whether or not it can be done; null when the key means nothing here.</summary>
    public ScreenAction<TState>? For(TState state, string key) => _byKey.GetValueOrDefault((_modeOf(state), key));

    /// <summary>The action of the present mode with this id; null for none.</summary>
    public ScreenAction<TState>? ById(TState state, string id) => All.FirstOrDefault(action => action.Id == id && action.Mode == _modeOf(state));

    /// <summary>The actions of the present mode as they can be told to a person.</summary>
    public IReadOnlyList<ActionChoice> Choices(TState state)
    {
        string mode = _modeOf(state);
        return [.. All.Where(action => action.Mode == mode).Select(action => new ActionChoice(action.Id, Name(action), action.Keys)
        {
            Hint = action.Hint,
            Help = action.Help,
            Group = action.Group,
            IsBack = action.IsBack,
            WhyNot = action.WhyNot(state),
        })];
    }

    /// <summary>At most six actions that can be done now, those most needed first and the help always among them.</summary>
    public IReadOnlyList<ScreenAction<TState>> Hints(TState state)
    {
        string mode = _modeOf(state);
        return [.. All.Where(action => action.Mode == mode && action.HintRank is not null && action.WhyNot(state) is null && action.Offered(state))
            .OrderBy(action => action.HintRank)
            .Take(MostHints)];
    }

    /// <summary>The most hints shown at a time; help ranks first in every table, so it is never the one left out.</summary>
    public const int MostHints = 6;

    /// <summary>The hint line in at most this many columns: whole hints only, as many as fit.</summary>
    public string HintLine(TState state, int width)
    {
        string line = "";
        foreach (ScreenAction<TState> action in Hints(state))
        {
            string hint = (line.Length > 0 ? "  " : "") + $"{action.Keys[0]} {action.Hint}";
            if (line.Length + hint.Length > width)
            {
                break;
            }
            line += hint;
        }
        return line;
    }

    /// <summary>The help page of a mode: a heading per group, then each action with all its keys.</summary>
    public IReadOnlyList<string> HelpPage(string mode)
    {
        List<string> lines = [];
        foreach (IGrouping<string, ScreenAction<TState>> group in All.Where(action => action.Mode == mode).GroupBy(action => action.Group))
        {
            lines.Add(group.Key);
            lines.AddRange(group.Select(action => $"  {string.Join(", ", action.Keys),-24}{action.Help}"));
        }
        return lines;
    }

    // Where text is typed, a colon and a question mark are text.
    private static ScreenAction<TState> Find(string mode, ImmutableArray<ScreenAction<TState>> actions) => new()
    {
        Id = $"{mode.ToLowerInvariant()}-find-action",
        Mode = mode,
        Keys = actions.Any(action => action.Mode == mode && action.Keys.Contains("?")) ? [":", "Ctrl+P"] : ["Ctrl+P"],
        Group = "Everywhere",
        Hint = "actions",
        HintRank = LastRank,
        Help = "find an action by its words, and do it",
        Do = state => Step.To(state, new FindAction()),
    };

    private static string Name(ScreenAction<TState> action) =>
        action.Id.StartsWith(action.Mode.ToLowerInvariant() + "-", StringComparison.Ordinal) ? action.Id[(action.Mode.Length + 1)..] : action.Id;

    private static ScreenAction<TState> Single(IGrouping<(string Mode, string Key), ScreenAction<TState>> same) =>
        same.Count() == 1
            ? same.First()
            : throw new ArgumentException($"{same.Key.Key} means {string.Join(" and ", same.Select(action => action.Id))} in {same.Key.Mode}.");
}
