using System.Collections.Immutable;
using Progression.App.Pictures;

namespace Progression.App.Actions;

/// <summary>A screen with its present state, as the stack of screens holds it. Immutable: every key gives another one.</summary>
public abstract class Frame
{
    private protected Frame()
    {
    }

    /// <summary>Its picture.</summary>
    public abstract Picture Draw(PictureSize size);

    /// <summary>The frame after a key, and what becomes of the stack.</summary>
    public abstract (Frame Frame, ImmutableArray<Move> Moves) Press(string key, string? text);

    /// <summary>The frame after a paste.</summary>
    public abstract Frame Paste(string text);

    /// <summary>The frame after the screen above has left and told something.</summary>
    public abstract (Frame Frame, ImmutableArray<Move> Moves) Hear(ScreenEffect told);

    /// <summary>Writes unsaved work to a draft because the session ends from outside; any thread.</summary>
    public abstract void Keep();

    /// <summary>Says that the screen is left for good, or still stood there when the session ended.</summary>
    public abstract void Close();
}

/// <summary>The frame of a screen.</summary>
/// <typeparam name="TState">The screen's state, an immutable record.</typeparam>
/// <param name="screen">The screen.</param>
/// <param name="state">Its state.</param>
public sealed class Frame<TState>(ScreenDefinition<TState> screen, TState state) : Frame
    where TState : class
{
    /// <summary>The state now.</summary>
    public TState State { get; } = state;

    /// <summary>Does an effect that is the screen's own, or takes what the screen above has told.</summary>
    public Func<TState, ScreenEffect, Turn<TState>> Perform { get; init; } = (same, _) => Turn.Stay(same);

    /// <summary>Writes unsaved work to a draft; any thread.</summary>
    public Action<TState> KeepWork { get; init; } = _ => { };

    /// <summary>What the screen below is told when this one leaves without a word of its own; null for nothing.</summary>
    public Func<TState, ScreenEffect?> Parting { get; init; } = _ => null;

    /// <summary>Called once when the screen is gone.</summary>
    public Action<TState> Closed { get; init; } = _ => { };

    /// <inheritdoc/>
    public override Picture Draw(PictureSize size) => screen.Draw(State, size);

    /// <inheritdoc/>
    public override (Frame Frame, ImmutableArray<Move> Moves) Press(string key, string? text)
    {
        Step<TState> step = screen.Press(State, key, text);
        return After(step.State, step.Effects);
    }

    /// <inheritdoc/>
    public override Frame Paste(string text) => With(screen.Paste(State, text));

    /// <inheritdoc/>
    public override (Frame Frame, ImmutableArray<Move> Moves) Hear(ScreenEffect told) => After(State, [told]);

    /// <inheritdoc/>
    public override void Keep() => KeepWork(State);

    /// <inheritdoc/>
    public override void Close() => Closed(State);

    private (Frame, ImmutableArray<Move>) After(TState next, ImmutableArray<ScreenEffect> effects)
    {
        ImmutableArray<Move>.Builder moves = ImmutableArray.CreateBuilder<Move>();
        foreach (ScreenEffect effect in effects)
        {
            switch (effect)
            {
                case LeaveScreen leave:
                    moves.Add(new Move.Leave(leave.Telling ?? Parting(next)));
                    break;
                case Repaint:
                    moves.Add(new Move.Redraw());
                    break;
                default:
                    Turn<TState> turn = Perform(next, effect);
                    next = turn.State;
                    moves.AddRange(turn.Moves);
                    break;
            }
        }

        return (With(next), moves.ToImmutable());
    }

    private Frame<TState> With(TState next) => ReferenceEquals(next, State)
        ? this
        : new(screen, next) { Perform = Perform, KeepWork = KeepWork, Parting = Parting, Closed = Closed };
}
