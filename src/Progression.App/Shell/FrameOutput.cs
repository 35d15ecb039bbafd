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

    // A longer change may be seen coming, and the cursor running about in it.
    private const int SeenComing = 1000;

    private readonly FileStream? _screen;
    private Cursor _cursor = new();

    public FrameOutput() => _screen = IsAttachedToTerminal ? new(new SafeFileHandle(Screen, ownsHandle: false), FileAccess.Write, bufferSize: 0) : null;

    // A hidden cursor waits at home, so that what something else writes does not move the picture up.
    private string Home => _cursor.IsVisible ? $"\e[{_cursor.Position!.Value.Y + 1};{_cursor.Position.Value.X + 1}H" : "\e[H";

    /// <inheritdoc/>
    public override void Write(IOutputBuffer buffer)
    {
        string frame = FrameText.Of(buffer, Force16Colors);
        bool hide = frame.Length > SeenComing && _cursor.IsVisible;
        Send(frame.Length == 0 ? "" : hide ? $"\e[?25l{frame}{Home}\e[?25h" : frame + Home);
    }

    /// <inheritdoc/>
    Cursor IOutput.GetCursor() => _cursor;

    /// <inheritdoc/>
    void IOutput.SetCursor(Cursor cursor)
    {
        // Before each frame the library hides the cursor by taking its place and leaving its style; a frame does so itself.
        bool onlyForTheFrame = !cursor.IsVisible && cursor.Style != CursorStyle.Hidden;
        if (cursor == _cursor || onlyForTheFrame)
        {
            return;
        }
        (Cursor before, _cursor) = (_cursor, cursor);
        string style = cursor.IsVisible && cursor.Style != before.Style ? $"\e[{(int)cursor.Style} q" : "";
        string show = (before.IsVisible, cursor.IsVisible) switch
        {
            (false, true) => "\e[?25h",
            (true, false) => "\e[?25l",
            _ => "",
        };
        Send(style + Home + show);
    }

    // When the line is gone nobody sees the picture; the end of the session is somebody else's business.
    private void Send(string text)
    {
        if (text.Length == 0)
        {
            return;
        }
        try
        {
            _screen?.Write(Encoding.UTF8.GetBytes(text));
        }
        catch (IOException)
        {
        }
    }
}
