using System.Collections.Concurrent;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Time;

namespace Progression.App.Shell;

/// <summary>
/// Makes keys of what is typed. The library's parser throws at a sequence that looks like a key and is none it knows (F13 is one);
/// such a sequence is dropped here. An error of a screen that got its key passes.
/// </summary>
internal sealed class WokenKeys(ConcurrentQueue<char> typed, ITimeProvider? time) : AnsiInputProcessor(typed, time)
{
    private bool _handedOn;

    /// <inheritdoc/>
    protected override void Process(char input)
    {
        _handedOn = false;
        try
        {
            base.Process(input);
        }
        catch (Exception) when (!_handedOn)
        {
            // The parser holds on to the sequence and lets it go by itself, with the next one or after 50 ms.
        }
    }

    /// <inheritdoc/>
    protected override Key OnKeyboardEventParsed(Key keyEvent)
    {
        Key key = base.OnKeyboardEventParsed(keyEvent);
        _handedOn = true;
        return key;
    }

    /// <inheritdoc/>
    protected override void ProcessAfterParsing(char input)
    {
        _handedOn = true;
        base.ProcessAfterParsing(input);
    }
}
