using System.Collections.Concurrent;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace Progression.App.Shell;

/// <summary>The library's driver for ANSI terminals with keyboard, keys and output of ours.</summary>
internal sealed class WokenDriver(WokenInput keyboard, FrameOutput output) : AnsiComponentFactory(keyboard, output)
{
    /// <inheritdoc/>
    public override IInputProcessor CreateInputProcessor(ConcurrentQueue<char> inputBuffer, ITimeProvider? timeProvider = null) => new WokenKeys(inputBuffer, timeProvider);
}
