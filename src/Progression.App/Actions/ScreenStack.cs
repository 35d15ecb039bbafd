using System.Collections.Immutable;
using Progression.App.Pictures;

namespace Progression.App.Actions;

/// <summary>The screens that are open, the one in use on top. One thread at a time presses keys; any thread may ask to keep the work.</summary>
public sealed class ScreenStack
{
    private readonly Lock _keeping = new();
    private ImmutableStack<Frame> _frames;
    private ImmutableHashSet<Frame> _kept = [];
    private string? _trouble;
    private string? _untold;

    /// <summary>A stack of screens.</summary>
    /// <param name="frames">The screens, the lowest first; at least one.</param>
    /// <exception cref="ArgumentException">There is no screen.</exception>
    public ScreenStack(params ImmutableArray<Frame> frames)
    {
        _frames = frames.Aggregate(ImmutableStack<Frame>.Empty, (stack, frame) => stack.Push(frame));
        if (_frames.IsEmpty)
        {
            throw new ArgumentException("A stack begins with a screen.", nameof(frames));
        }
    }

    /// <summary>The screen in use; null when all are left.</summary>
    public Frame? Top => Volatile.Read(ref _frames) is { IsEmpty: false } frames ? frames.Peek() : null;

    /// <summary>The picture of the screen in use; an empty one when all are left.</summary>
    public Picture Draw(PictureSize size) => Top?.Draw(size) ?? new Picture([]);

    /// <summary>Gives a key to the screen in use.</summary>
    /// <param name="key">Name of the key.</param>
    /// <param name="text">What it types; null for nothing.</param>
    /// <returns>Whether the whole picture has to be sent again.</returns>
    public bool Press(string key, string? text) => Begin(key, text) is { } rest && rest();

    /// <summary>Gives a key to the screen in use, but leaves to the caller what it asks of the world, which may take long.</summary>
    /// <returns>Does the rest and says whether the whole picture has to be sent again, on any thread, before the next key; null when nothing is left to do.</returns>
    public Func<bool>? Begin(string key, string? text)
    {
        if (Top is not { } top)
        {
            return null;
        }

        (Frame after, ImmutableArray<ScreenEffect> asked) = top.Press(key, text);
        Show(_frames.Pop().Push(after));
        if (asked.IsEmpty)
        {
            TellTrouble();
            return null;
        }

        return () =>
        {
            bool redraw = false;
            Apply(after.Do(asked), ref redraw);
            TellTrouble();
            return redraw;
        };
    }

    /// <summary>Does an action of the screen in use.</summary>
    /// <param name="id">The id of the action.</param>
    public void Do(string id)
    {
        if (Top is { } top)
        {
            bool redraw = false;
            Apply(top.Hear(new DoAction(id)), ref redraw);
        }
    }

    /// <summary>Puts the screen in use into another state.</summary>
    /// <param name="frame">The same screen in that state.</param>
    public void Replace(Frame frame)
    {
        if (Top is not null)
        {
            Show(_frames.Pop().Push(frame));
        }
    }

    /// <summary>Looks whether others have saved what the screen in use shows; any thread. Null for nothing new.</summary>
    public ScreenNews? Look() => Top is { } top && top.Look() is { } told ? new(top.Self, told) : null;

    /// <summary>Tells a screen what others have saved, if it is still the one in use.</summary>
    public void Take(ScreenNews news)
    {
        ArgumentNullException.ThrowIfNull(news);
        bool redraw = false;
        if (Top is { } top && ReferenceEquals(top.Self, news.Of))
        {
            Apply(top.Hear(news.What), ref redraw);
        }
    }

    /// <summary>Whether any open screen has work that is not saved.</summary>
    public bool IsUnsaved => _frames.Any(frame => frame.Where.IsUnsaved);

    /// <summary>Gives pasted text to the screen in use.</summary>
    public void Paste(string text)
    {
        if (Top is { } top)
        {
            Show(_frames.Pop().Push(top.Paste(text)));
        }
    }

    /// <summary>Keeps the unsaved work of every open screen that changed since; any thread. What could not be kept is told at the next key and tried again.</summary>
    public void Keep()
    {
        lock (_keeping)
        {
            ImmutableHashSet<Frame> now = [.. Volatile.Read(ref _frames)];
            string? trouble = null;
            foreach (Frame frame in Volatile.Read(ref _frames).Where(frame => !_kept.Contains(frame)))
            {
                string? why = frame.Keep();
                trouble ??= why;
                now = why is null ? now : now.Remove(frame);
            }

            _kept = now;
            if (trouble is not null && trouble != _trouble)
            {
                Volatile.Write(ref _untold, trouble);
            }

            _trouble = trouble;
        }
    }

    /// <summary>Closes whatever is still open, the top first.</summary>
    public void Close()
    {
        for (; Top is { } top; Show(_frames.Pop()))
        {
            top.Close();
        }
    }

    private void Apply((Frame Frame, ImmutableArray<Move> Moves) after, ref bool redraw)
    {
        Show(_frames.Pop().Push(after.Frame));
        foreach (Move move in after.Moves)
        {
            switch (move)
            {
                case Move.Open open:
                    Show(_frames.Push(open.Frame));
                    break;
                case Move.Redraw:
                    redraw = true;
                    break;
                case Move.Leave leave when Top is { } top:
                    Show(_frames.Pop());
                    top.Close();
                    if (leave.Telling is { } told && Top is { } below)
                    {
                        Apply(below.Hear(told), ref redraw);
                    }

                    break;
            }
        }
    }

    private void TellTrouble()
    {
        if (Interlocked.Exchange(ref _untold, null) is { } trouble && Top is { } top)
        {
            Show(_frames.Pop().Push(top.Tell($"The draft could not be kept: {trouble}")));
        }
    }

    private void Show(ImmutableStack<Frame> frames) => Volatile.Write(ref _frames, frames);
}
