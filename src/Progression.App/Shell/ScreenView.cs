using System.Drawing;
using Progression.App.Actions;
using Progression.App.Pictures;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Progression.App.Shell;

/// <summary>
/// The one terminal view: it gives keys to the screen in use and draws its picture. It fills the window
/// and has a fixed frame, so that no text that changes can make the library lay out or clear the screen.
/// </summary>
public sealed class ScreenView : Runnable
{
    private readonly WorkingScreens _screens;
    private readonly Func<TerminalLook> _look;
    private readonly IdleWatch? _idle;
    private IdlePhase _phase;
    private object? _drawn;
    private Picture? _picture;
    private PictureSize? _pictureSize;

    /// <summary>Makes the view.</summary>
    /// <param name="screens">The screens to show.</param>
    /// <param name="look">What the terminal can show, as it is set now.</param>
    /// <param name="idle">Tells how long nobody has typed; null where that does not matter.</param>
    public ScreenView(WorkingScreens screens, Func<TerminalLook> look, IdleWatch? idle = null)
    {
        (_screens, _look, _idle) = (screens, look, idle);
        CanFocus = true;
        X = 0;
        Y = 0;
        Width = Dim.Fill();
        Height = Dim.Fill();
    }

    /// <summary>Called when the whole picture is sent again, for instance because the settings have changed.</summary>
    public Action Redrawn { get; init; } = () => { };

    /// <summary>Whether the session has ended because nobody typed.</summary>
    public bool HasTimedOut => _phase == IdlePhase.Over;

    /// <summary>Draws every row next time: the library has emptied its screen.</summary>
    public void Forget() => _picture = null;

    /// <summary>Shows what others have saved; nobody has typed by it.</summary>
    public void Take(ScreenNews news)
    {
        _screens.Take(news);
        Show();
    }

    /// <summary>Takes a paste as text.</summary>
    public void Paste(string text)
    {
        if (IsBack())
        {
            _screens.Paste(text);
            Show();
        }
    }

    /// <summary>Looks whether nobody has typed for too long: warns, blanks, or ends with the work kept.</summary>
    public void LookAtTime()
    {
        IdlePhase now = _idle?.Phase ?? IdlePhase.Open;
        if (now == _phase)
        {
            return;
        }

        _phase = now;
        SetNeedsDraw();
        if (now is IdlePhase.Blank or IdlePhase.Over)
        {
            _screens.Keep();
        }

        if (now == IdlePhase.Over)
        {
            RequestStop();
        }
    }

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

    /// <inheritdoc/>
    protected override bool OnMouseEvent(Mouse mouse)
    {
        ArgumentNullException.ThrowIfNull(mouse);
        Key? key = mouse.Flags.HasFlag(MouseFlags.WheeledUp) ? Key.CursorUp : mouse.Flags.HasFlag(MouseFlags.WheeledDown) ? Key.CursorDown : null;
        if (key is not null)
        {
            Press(key);
        }

        return true;
    }

    private void Press(Key key)
    {
        if (!IsBack())
        {
            return;
        }

        _screens.Press(KeyNames.Of(key), KeyNames.TextOf(key));
        Show();
    }

    /// <summary>Looks how far a long work is, and goes on when it has ended.</summary>
    public void LookAtWork()
    {
        _screens.Look();
        Show();
    }

    /// <inheritdoc/>
    /// <remarks>The picture covers every cell, and rows that stayed are not drawn again, so nothing may be cleared first.</remarks>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        PictureSize size = new(Viewport.Width, Viewport.Height);
        TerminalLook look = _look();
        Picture picture = Shown(size).Fit(size);
        for (int row = 0; row < picture.Rows.Length; row++)
        {
            if (size != _pictureSize || _picture?.Rows[row].Spans.SequenceEqual(picture.Rows[row].Spans) != true)
            {
                DrawRow(row, picture.Rows[row], look);
            }
        }
        (_picture, _pictureSize) = (picture, size);
        PlaceCaret(picture.Caret);
        return true;
    }

    private Picture Shown(PictureSize size) =>
        !size.IsEnough ? TooSmall.Picture(size)
        : _phase switch
        {
            IdlePhase.Warned => WaitingPicture.Warned(_screens.Draw(size)),
            IdlePhase.Blank or IdlePhase.Over => WaitingPicture.Blank(size),
            _ => _screens.Draw(size),
        };

    /// <summary>Whether what is typed counts: what brings a blank screen back does nothing else.</summary>
    private bool IsBack()
    {
        IdlePhase ended = _idle?.Touch() ?? IdlePhase.Open;
        bool wasBlank = _phase == IdlePhase.Blank || ended == IdlePhase.Blank;
        if (_phase != IdlePhase.Open)
        {
            _phase = IdlePhase.Open;
            SetNeedsDraw();
        }

        return !wasBlank;
    }

    private void DrawRow(int row, PictureRow content, TerminalLook look)
    {
        Move(0, row);
        foreach (TextSpan span in content.Spans)
        {
            SetAttribute(InkColours.Of(span.Ink, look.Colours, look.Background));
            AddStr(look.SevenBitOnly ? SevenBit.Of(span.Text) : span.Text);
        }
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

    // A key that changes nothing sends nothing.
    private void Show()
    {
        if (_screens.TakeRedraw())
        {
            Redrawn();
            App!.ClearScreenNextIteration = true;
        }

        if (_screens.IsOver)
        {
            RequestStop();
        }
        else if (!Equals(_drawn, _screens.Shown))
        {
            _drawn = _screens.Shown;
            SetNeedsDraw();
        }
    }
}
