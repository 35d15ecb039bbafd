using System.Runtime.ExceptionServices;
using Progression.App.Pictures;

namespace Progression.App.Actions;

/// <summary>
/// The screens as a view uses them. What a key asks of the world is done beside the view's thread; when it takes long the picture stands, its status line tells
/// how far the work is, Esc stops it, and whatever else is typed waits for its end. All members are for the view's thread.
/// </summary>
/// <param name="screens">The screens.</param>
/// <param name="watch">Hears how far a work is.</param>
/// <param name="patience">How long the view waits for a work before it is shown as one; most are done long before.</param>
public sealed class WorkingScreens(ScreenStack screens, WorkWatch watch, TimeSpan? patience = null)
{
    private const int MostWaiting = 1000;
    private static readonly TimeSpan Usual = TimeSpan.FromMilliseconds(500);
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(250);
    private readonly Queue<Action> _waiting = new();
    private Task<bool>? _work;
    private Frame? _standing;
    private bool _redraw;
    private Action _moved = () => { };

    /// <summary>Whether a work is shown.</summary>
    public bool IsAtWork => _work is not null;

    /// <summary>Whether all screens are left.</summary>
    public bool IsOver => _work is null && screens.Top is null;

    /// <summary>What the picture is made of; another one when there is something else to draw.</summary>
    public object? Shown => _work is null ? screens.Top : watch.IsStopping ? "stopping" : watch.Words;

    /// <summary>The picture.</summary>
    public Picture Draw(PictureSize size)
    {
        if (_work is null)
        {
            return screens.Draw(size);
        }

        // What is under way may open and leave screens; the one the person acted on stands until it has ended.
        Picture standing = (_standing?.Draw(size) ?? new Picture([])).Fit(size);
        return WaitingPicture.AtWork(standing, watch.IsStopping ? "Stopping." : $"{watch.Words}, Esc stops waiting.");
    }

    /// <summary>Has somebody called, on any thread, when <see cref="Look"/> would find something new.</summary>
    public void WhenMoved(Action call) => _moved = call;

    /// <summary>Gives a key to the screen in use.</summary>
    public void Press(string key, string? text)
    {
        if (_work is not null && key == "Esc")
        {
            _waiting.Clear();
            watch.Stop();
        }
        else
        {
            Do(() => Rest(screens.Begin(key, text)));
        }
    }

    /// <summary>Gives pasted text to the screen in use.</summary>
    public void Paste(string text) => Do(() => screens.Paste(text));

    /// <summary>Shows what others have saved, after the work that is under way.</summary>
    public void Take(ScreenNews news) => Do(() => screens.Take(news));

    /// <summary>Keeps the unsaved work of every screen; any thread.</summary>
    public void Keep() => screens.Keep();

    /// <summary>Looks whether the work has ended, and if so goes on with what was typed meanwhile.</summary>
    public void Look()
    {
        if (_work is { IsCompleted: true } ended)
        {
            End(ended);
        }
    }

    /// <summary>Whether the whole picture has to be sent again; asked once.</summary>
    public bool TakeRedraw()
    {
        (bool redraw, _redraw) = (_redraw, false);
        return redraw;
    }

    /// <summary>The session ends: stops a work and waits for it, but not long.</summary>
    public void Finish(TimeSpan patience)
    {
        watch.Stop();
        _waiting.Clear();
        _work?.ContinueWith(static _ => { }, TaskScheduler.Default).Wait(patience);
    }

    private void Do(Action act)
    {
        if (_work is null)
        {
            act();
        }
        else if (_waiting.Count < MostWaiting)
        {
            _waiting.Enqueue(act);
        }
    }

    private void Rest(Func<bool>? rest)
    {
        if (rest is null)
        {
            return;
        }

        watch.Begin();
        _standing = screens.Top;
        Task<bool> work = Task.Run(rest);
        if (((IAsyncResult)work).AsyncWaitHandle.WaitOne(patience ?? Usual))
        {
            _redraw |= work.GetAwaiter().GetResult();
            return;
        }

        _work = work;
        Timer clock = new(_ => _moved(), null, Often, Often);
        _ = work.ContinueWith(
            _ =>
            {
                clock.Dispose();
                _moved();
            },
            TaskScheduler.Default);
    }

    private void End(Task<bool> ended)
    {
        (_work, _standing) = (null, null);
        watch.Begin(); // What was asked to stop has stopped; others who report are not meant.
        if (ended.Exception?.InnerException is { } fault)
        {
            ExceptionDispatchInfo.Throw(fault);
        }

        _redraw |= ended.Result;
        while (_work is null && _waiting.TryDequeue(out Action? next))
        {
            next();
        }
    }
}
