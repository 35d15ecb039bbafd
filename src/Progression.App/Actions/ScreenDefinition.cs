using Progression.App.Pictures;

namespace Progression.App.Actions;

/// <summary>A screen without a terminal: its actions, its picture, and what typed text does.</summary>
/// <typeparam name="TState">The screen's state, an immutable record.</typeparam>
public sealed record ScreenDefinition<TState>
    where TState : class
{
    /// <summary>The screen's one table of keys.</summary>
    public required ActionTable<TState> Actions { get; init; }

    /// <summary>Draws a state into a given room.</summary>
    public required Func<TState, PictureSize, Picture> Draw { get; init; }

    /// <summary>Where the person is.</summary>
    public Func<TState, ScreenPlace> Where { get; init; } = _ => ScreenPlace.NotSaid;

    /// <summary>The sentence in the status line; empty for none.</summary>
    public Func<TState, string> Told { get; init; } = _ => "";

    /// <summary>What is said of a state where nothing is drawn.</summary>
    public ScreenAloud<TState> Aloud { get; init; } = new();

    /// <summary>The state with a sentence in its status line.</summary>
    public required Func<TState, string, TState> Say { get; init; }

    /// <summary>The state after text was typed or pasted; null where the present mode takes no text.</summary>
    public Func<TState, string, TState?> Type { get; init; } = (_, _) => null;

    /// <summary>What pressing a key does: an action, typed text, or a sentence that says why nothing happened.</summary>
    /// <param name="state">The state before.</param>
    /// <param name="key">Name of the key, as in <see cref="ScreenAction{TState}.Keys"/>.</param>
    /// <param name="text">What the key types; null for a key that types nothing.</param>
    public Step<TState> Press(TState state, string key, string? text = null)
    {
        if (Actions.For(state, key) is { } action)
        {
            return action.WhyNot(state) is { } reason ? Step.To(Say(state, reason)) : action.Do(state);
        }
        if (text is not null && Type(state, text) is { } typed)
        {
            return Step.To(typed);
        }
        return Step.To(Say(state, $"{key} does nothing here; F1 lists the keys."));
    }

    /// <summary>What doing an action of the present mode comes to; an action of another mode does nothing.</summary>
    public Step<TState> Do(TState state, string id) => Actions.ById(state, id) is not { } action ? Step.To(state)
        : action.WhyNot(state) is { } reason ? Step.To(Say(state, reason))
        : action.Do(state);

    /// <summary>What pasted text does: it is typed where text is taken, and is never read as keys.</summary>
    public TState Paste(TState state, string text) =>
        Type(state, text) ?? Say(state, "Pasted text was ignored: nothing here takes text.");
}
