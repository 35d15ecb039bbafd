using Progression.Records.Storage;

namespace Progression.App.Commands;

/// <summary>
/// Tells on standard error how far a long work is: nothing for the first half second, then a line every two seconds. The work may be broken off by Ctrl+C
/// wherever it stands; a store makes its index again the next time.
/// </summary>
/// <param name="output">Where the lines go.</param>
/// <param name="clock">Measures the time.</param>
internal sealed class ProgressLines(CommandOutput output, TimeProvider clock) : IProgress<WorkDone>
{
    private static readonly TimeSpan First = TimeSpan.FromMilliseconds(500);
    private static readonly TimeSpan Then = TimeSpan.FromSeconds(2);

    private string? _task;
    private long _since;
    private TimeSpan _wait;

    /// <summary>Hears it instead while a screen is shown, over which no line may be written; null while none is.</summary>
    internal IProgress<WorkDone>? Screen { get; set; }

    /// <inheritdoc/>
    public void Report(WorkDone value)
    {
        if (Screen is { } screen)
        {
            screen.Report(value);
            return;
        }

        if (value.Task != _task)
        {
            (_task, _since, _wait) = (value.Task, clock.GetTimestamp(), First);
        }

        if (clock.GetElapsedTime(_since) >= _wait)
        {
            (_since, _wait) = (clock.GetTimestamp(), Then);
            output.Message($"progression: {value.Task}{(value.Amount is { Length: > 0 } amount ? $", {amount}" : "")}; Ctrl+C breaks it off, and nothing is lost.");
        }
    }
}
