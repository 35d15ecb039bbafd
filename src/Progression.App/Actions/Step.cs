using System.Collections.Immutable;

namespace Progression.App.Actions;

/// <summary>What a key led to.</summary>
/// <typeparam name="TState">The screen's state.</typeparam>
/// <param name="State">The state from now on.</param>
/// <param name="Effects">What the world has to do, in this order.</param>
public sealed record Step<TState>(TState State, ImmutableArray<ScreenEffect> Effects);

/// <summary>Makes steps.</summary>
public static class Step
{
    /// <summary>A step to a state, and what the world has to do for it.</summary>
    public static Step<TState> To<TState>(TState state, params ImmutableArray<ScreenEffect> effects) => new(state, effects);
}
