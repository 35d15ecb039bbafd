using System.Collections.Immutable;
using Progression.App.Pictures;

namespace Progression.App.Actions;

/// <summary>A screen with its present state, as the stack of screens holds it. Immutable: every key gives another one.</summary>
public abstract class Frame
{
    private protected Frame()
    {
    }

    /// <summary>Where the person is.</summary>
    public abstract ScreenPlace Where { get; }

    /// <summary>What was told last; empty for nothing.</summary>
    public abstract string Told { get; }

    /// <summary>The actions of the present mode.</summary>
    public abstract IReadOnlyList<ActionChoice> Choices { get; }

    /// <summary>Whether text can be typed now.</summary>
    public abstract bool TakesText { get; }

    /// <summary>What is asked now, where text is taken; null where nothing is.</summary>
    public abstract ScreenQuestion? Asks { get; }

    /// <summary>What is said on coming to the screen.</summary>
    public abstract IReadOnlyList<string> Opening { get; }

    /// <summary>What is said of the place under the cursor, a fact a line.</summary>
    public abstract IReadOnlyList<string> Here { get; }

    /// <summary>All that stands on the screen, a fact a line; null where a part of that name is not there.</summary>
    /// <param name="part">The part; empty for all.</param>
    public abstract IReadOnlyList<string>? Read(string part);

    /// <summary>The frame with the cursor on what the words name; null where they name nothing.</summary>
    public abstract Frame? Go(string words);

    /// <summary>Its picture.</summary>
    public abstract Picture Draw(PictureSize size);

    /// <summary>The frame after a key, and what it asks of the world; the world is not touched.</summary>
    public abstract (Frame Frame, ImmutableArray<ScreenEffect> Asked) Press(string key, string? text);

    /// <summary>Does what a key asked of the world, and says what becomes of the stack. A work that was stopped is told.</summary>
    public abstract (Frame Frame, ImmutableArray<Move> Moves) Do(ImmutableArray<ScreenEffect> asked);

    /// <summary>The frame after a paste.</summary>
    public abstract Frame Paste(string text);

    /// <summary>The frame after the screen above has left and told something.</summary>
    public abstract (Frame Frame, ImmutableArray<Move> Moves) Hear(ScreenEffect told);

    /// <summary>Writes unsaved work to a draft; any thread. Gives null, or why it could not be kept.</summary>
    public abstract string? Keep();

    /// <summary>Looks whether others have saved what the screen shows; any thread. Gives what the screen is to be told then; null for nothing.</summary>
    public abstract ScreenEffect? Look();

    /// <summary>The same in every state of one screen, and another for every other screen.</summary>
    public object Self { get; private protected init; } = new();

    /// <summary>The frame with a sentence in its status line.</summary>
    public abstract Frame Tell(string sentence);

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

    /// <summary>Writes unsaved work to a draft; any thread, and an older state may come after a newer one was dealt with. Gives null, or why it could not be kept.</summary>
    public Func<TState, string?> KeepWork { get; init; } = _ => null;

    /// <summary>What the screen below is told when this one leaves without a word of its own; null for nothing.</summary>
    public Func<TState, ScreenEffect?> Parting { get; init; } = _ => null;

    /// <summary>Looks whether others have saved what the screen shows, cheaply, about once a second; any thread. Gives what is then told to <see cref="Perform"/>; null for nothing.</summary>
    public Func<TState, ScreenEffect?> Others { get; init; } = _ => null;

    /// <summary>Called once when the screen is gone.</summary>
    public Action<TState> Closed { get; init; } = _ => { };

    /// <inheritdoc/>
    public override ScreenPlace Where => screen.Where(State);

    /// <inheritdoc/>
    public override string Told => screen.Told(State);

    /// <inheritdoc/>
    public override IReadOnlyList<ActionChoice> Choices => screen.Actions.Choices(State);

    /// <inheritdoc/>
    public override bool TakesText => screen.Type(State, "") is not null;

    /// <inheritdoc/>
    public override ScreenQuestion? Asks => screen.Aloud.Asks(State);

    /// <inheritdoc/>
    public override IReadOnlyList<string> Opening => [.. screen.Aloud.Opening(State)];

    /// <inheritdoc/>
    public override IReadOnlyList<string> Here => [.. screen.Aloud.Here(State) ?? PictureAloud.Here(screen.Draw(State, PictureAloud.Room))];

    /// <inheritdoc/>
    public override IReadOnlyList<string>? Read(string part) => screen.Aloud.Read(State, part) is { } lines ? [.. lines]
        : part.Length == 0 ? PictureAloud.Whole(screen.Draw(State, PictureAloud.Room))
        : null;

    /// <inheritdoc/>
    public override Frame? Go(string words) => screen.Aloud.Go(State, words) is { } there ? With(there) : null;

    /// <inheritdoc/>
    public override Picture Draw(PictureSize size) => screen.Draw(State, size);

    /// <inheritdoc/>
    public override (Frame Frame, ImmutableArray<ScreenEffect> Asked) Press(string key, string? text)
    {
        Step<TState> step = screen.Press(State, key, text);
        return (With(step.State), step.Effects);
    }

    /// <inheritdoc/>
    public override (Frame Frame, ImmutableArray<Move> Moves) Do(ImmutableArray<ScreenEffect> asked)
    {
        ImmutableArray<Move>.Builder moves = ImmutableArray.CreateBuilder<Move>();
        return (With(Gathered(State, asked, moves)), moves.ToImmutable());
    }

    /// <inheritdoc/>
    public override Frame Paste(string text) => With(screen.Paste(State, text));

    /// <inheritdoc/>
    public override (Frame Frame, ImmutableArray<Move> Moves) Hear(ScreenEffect told) => Do([told]);

    /// <inheritdoc/>
    public override string? Keep() => KeepWork(State);

    /// <inheritdoc/>
    public override ScreenEffect? Look() => Others(State);

    /// <inheritdoc/>
    public override Frame Tell(string sentence) => With(screen.Say(State, sentence));

    /// <inheritdoc/>
    public override void Close() => Closed(State);

    private TState Gathered(TState next, ImmutableArray<ScreenEffect> effects, ImmutableArray<Move>.Builder moves)
    {
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
                case FindAction:
                    moves.Add(new Move.Open(ActionFinder.Over(With(next))));
                    break;
                case DoAction wanted:
                    Step<TState> step = screen.Do(next, wanted.Id);
                    next = Gathered(step.State, step.Effects, moves);
                    break;
                default:
                    Turn<TState> turn = Performed(next, effect);
                    next = turn.State;
                    moves.AddRange(turn.Moves);
                    break;
            }
        }

        return next;
    }

    private Turn<TState> Performed(TState next, ScreenEffect effect)
    {
        try
        {
            return Perform(next, effect);
        }
        catch (OperationCanceledException stopped)
        {
            return Turn.Stay(screen.Say(next, stopped.Message));
        }
    }

    private Frame<TState> With(TState next) => ReferenceEquals(next, State)
        ? this
        : new(screen, next) { Perform = Perform, KeepWork = KeepWork, Parting = Parting, Others = Others, Closed = Closed, Self = Self };
}
