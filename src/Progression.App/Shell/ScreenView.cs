using System.Drawing;
using Progression.App.Actions;
using Progression.App.Pictures;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Progression.App.Shell;

/// <summary>
/// The one terminal view: it holds a screen's present state, turns keys into steps and draws the picture. It fills the window
/// and has a fixed frame, so that no text that changes can make the library lay out or clear the screen.
/// </summary>
/// <typeparam name="TState">The screen's state.</typeparam>
public sealed class ScreenView<TState> : Runnable
    where TState : class
{
    private readonly ScreenDefinition<TState> _screen;
    private readonly TerminalLook _look;
    private readonly Func<TState, ScreenEffect, TState> _perform;

    /// <summary>Makes the view.</summary>
    /// <param name="screen">The screen to show.</param>
    /// <param name="start">The state it begins with.</param>
    /// <param name="look">What the terminal can show.</param>
    /// <param name="perform">Does an effect, and gives the state that tells what came of it.</param>
    public ScreenView(ScreenDefinition<TState> screen, TState start, TerminalLook look, Func<TState, ScreenEffect, TState> perform)
    {
        (_screen, State, _look, _perform) = (screen, start, look, perform);
        CanFocus = true;
        X = 0;
        Y = 0;
        Width = Dim.Fill();
        Height = Dim.Fill();
    }

    /// <summary>The state now. Another thread may read it: it is immutable.</summary>
    public TState State { get; private set; }

    /// <summary>Does what the shell does itself; false for an effect that is the screen's own.</summary>
    private bool Fulfil(ScreenEffect effect)
    {
        switch (effect)
        {
            case LeaveScreen:
                RequestStop();
                return true;
            case Repaint:
                App!.ClearScreenNextIteration = true;
                return true;
            default:
                return false;
        }
    }

    /// <summary>Takes a paste as text.</summary>
    public void Paste(string text) => Show(_screen.Paste(State, text));

    /// <inheritdoc/>
    /// <remarks>Every key ends here, also Esc: the library would close the program with it.</remarks>
    protected override bool OnKeyDown(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (key.IsModifierOnly)
        {
            return true;
        }
        // A terminal sends Alt with a key as Esc and the key, and a quick Esc and key arrive just so: take it as the two.
        if (key.IsAlt)
        {
            Press(Key.Esc);
        }
        Press(key.NoAlt);
        return true;
    }

    private void Press(Key key)
    {
        Step<TState> step = _screen.Press(State, KeyNames.Of(key), KeyNames.TextOf(key));
        Show(step.State);
        foreach (ScreenEffect effect in step.Effects)
        {
            if (!Fulfil(effect))
            {
                Show(_perform(State, effect));
            }
        }
    }

    /// <inheritdoc/>
    /// <remarks>The picture covers every cell, so clearing first would only make work.</remarks>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        PictureSize size = new(Viewport.Width, Viewport.Height);
        Picture picture = (size.IsEnough ? _screen.Draw(State, size) : TooSmall.Picture(size)).Fit(size);
        for (int row = 0; row < picture.Rows.Length; row++)
        {
            Move(0, row);
            foreach (TextSpan span in picture.Rows[row].Spans)
            {
                SetAttribute(InkColours.Of(span.Ink, _look.Colours));
                AddStr(_look.SevenBitOnly ? SevenBit.Of(span.Text) : span.Text);
            }
        }
        PlaceCaret(picture.Caret);
        return true;
    }

    private void PlaceCaret(CaretAt? caret)
    {
        Cursor wanted = caret is null
            ? new Cursor { Position = null }
            : new Cursor { Position = ViewportToScreen(new Point(caret.Column, caret.Row)), Style = CursorStyle.SteadyBlock };
        if (Cursor != wanted)
        {
            Cursor = wanted;
        }
    }

    private void Show(TState state)
    {
        if (!ReferenceEquals(state, State))
        {
            State = state;
            SetNeedsDraw();
        }
    }
}
