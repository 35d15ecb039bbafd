using System.Collections.Immutable;

namespace Progression.App.Actions;

/// <summary>What an effect came to.</summary>
/// <typeparam name="TState">The screen's state.</typeparam>
/// <param name="State">The state from now on.</param>
/// <param name="Moves">What becomes of the stack of screens, in this order.</param>
public sealed record Turn<TState>(TState State, ImmutableArray<Move> Moves);

/// <summary>Makes turns.</summary>
public static class Turn
{
    /// <summary>The screen stays, in a state that tells what came of it.</summary>
    public static Turn<TState> Stay<TState>(TState state) => new(state, []);

    /// <summary>Another screen comes on top.</summary>
    public static Turn<TState> Open<TState>(TState state, params ImmutableArray<Frame> frames) => new(state, [.. frames.Select(frame => new Move.Open(frame))]);

    /// <summary>The screen goes.</summary>
    public static Turn<TState> Leave<TState>(TState state, ScreenEffect? telling = null) => new(state, [new Move.Leave(telling)]);
}
