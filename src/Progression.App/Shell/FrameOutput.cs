using System.Text;
using Microsoft.Win32.SafeHandles;
using Terminal.Gui.Drivers;

namespace Progression.App.Shell;

/// <summary>
/// Sends each change of the screen in one piece and in few bytes, and the cursor only when it moved; the library sends every
/// run of cells by itself, and its cursor with every turn of its loop.
/// </summary>
internal sealed class FrameOutput : AnsiOutput, IOutput
{
    private const int Screen = 1;
    private readonly FileStream? _screen;
    private Cursor _cursor = new();
    private bool _cursorIsElsewhere = true;

    public FrameOutput() => _screen = IsAttachedToTerminal ? new(new SafeFileHandle(Screen, ownsHandle: false), FileAccess.Write, bufferSize: 0) : null;

    /// <inheritdoc/>
    public override void Write(IOutputBuffer buffer)
    {
        string frame = FrameText.Of(buffer, Force16Colors);
        if (frame.Length > 0)
        {
            Send(frame);
            _cursorIsElsewhere = true;
        }
    }

    /// <inheritdoc/>
    Cursor IOutput.GetCursor() => _cursor;

    /// <inheritdoc/>
    void IOutput.SetCursor(Cursor cursor)
    {
        if (!cursor.IsVisible)
        {
            Send(_cursor.IsVisible ? "\e[?25l" : "");
        }
        else if (cursor != _cursor || _cursorIsElsewhere)
        {
            string style = cursor.Style == _cursor.Style ? "" : $"\e[{(int)cursor.Style} q";
            Send($"{style}\e[{cursor.Position!.Value.Y + 1};{cursor.Position.Value.X + 1}H{(_cursor.IsVisible ? "" : "\e[?25h")}");
            _cursorIsElsewhere = false;
        }
        _cursor = cursor;
    }

    // When the line is gone nobody sees the picture; the end of the session is somebody else's business.
    private void Send(string text)
    {
        try
        {
            _screen?.Write(Encoding.UTF8.GetBytes(text));
        }
        catch (IOException)
        {
        }
    }
}
