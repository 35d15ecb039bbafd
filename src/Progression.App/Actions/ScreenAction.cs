using System.Collections.Immutable;

namespace Progression.App.Actions;

/// <summary>
/// One thing a person can do on a screen. Key handling, the hint line and the help page are all made from these rows, so they
/// cannot disagree.
/// </summary>
/// <typeparam name="TState">The screen's state.</typeparam>
public sealed record ScreenAction<TState>
{
    /// <summary>Permanent name within the screen, lower case with hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>The mode of the screen in which the keys mean this; a key may mean something else in another mode.</summary>
    public required string Mode { get; init; }

    /// <summary>Names of the keys, the one to show first: <c>Up</c>, <c>Ctrl+S</c>, <c>F1</c>, <c>j</c>.</summary>
    public required ImmutableArray<string> Keys { get; init; }

    /// <summary>Heading on the help page under which the action stands.</summary>
    public required string Group { get; init; }

    /// <summary>One or two words for the hint line; empty for an action that never stands there.</summary>
    public string Hint { get; init; } = "";

    /// <summary>A short sentence for the help page.</summary>
    public required string Help { get; init; }

    /// <summary>Place in the hint line, 1 first; null keeps it out of the line.</summary>
    public int? HintRank { get; init; }

    /// <summary>Whether the hint is shown; a key that answers with a refusal which is written down need not be offered. Default: always.</summary>
    public Func<TState, bool> Offered { get; init; } = static _ => true;

    /// <summary>Whether it is the way back out of its mode; where there are several, the first that can be done is.</summary>
    public bool IsBack { get; init; }

    /// <summary>Why the action cannot be done now, as a sentence; null when it can.</summary>
    public Func<TState, string?> WhyNot { get; init; } = _ => null;

    /// <summary>Does it; called only when <see cref="WhyNot"/> gives null.</summary>
    public required Func<TState, Step<TState>> Do { get; init; }
}
