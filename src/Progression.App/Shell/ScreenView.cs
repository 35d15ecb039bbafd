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
    private readonly ScreenStack _screens;
    private readonly TerminalLook _look;
    private Frame? _drawn;

    /// <summary>Makes the view.</summary>
    /// <param name="screens">The screens to show.</param>
    /// <param name="look">What the terminal can show.</param>
    public ScreenView(ScreenStack screens, TerminalLook look)
    {
        (_screens, _look) = (screens, look);
        CanFocus = true;
        X = 0;
        Y = 0;
        Width = Dim.Fill();
        Height = Dim.Fill();
    }

    /// <summary>Takes a paste as text.</summary>
    public void Paste(string text)
    {
        _screens.Paste(text);
        Show();
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

    private void Press(Key key)
    {
        if (_screens.Press(KeyNames.Of(key), KeyNames.TextOf(key)))
        {
            App!.ClearScreenNextIteration = true;
        }

        if (_screens.Top is null)
        {
            RequestStop();
            return;
        }

        Show();
    }

    /// <inheritdoc/>
    /// <remarks>The picture covers every cell, so clearing first would only make work.</remarks>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        PictureSize size = new(Viewport.Width, Viewport.Height);
        Picture picture = (size.IsEnough ? _screens.Draw(size) : TooSmall.Picture(size)).Fit(size);
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

    // A key that changes nothing sends nothing.
    private void Show()
    {
        if (!ReferenceEquals(_drawn, _screens.Top))
        {
            _drawn = _screens.Top;
            SetNeedsDraw();
        }
    }
}
