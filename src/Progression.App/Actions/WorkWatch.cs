using Progression.Records.Storage;

namespace Progression.App.Actions;

/// <summary>Hears how far a long work is and tells whoever does it to stop; the screen's thread asks, the working one reports.</summary>
public sealed class WorkWatch : IProgress<WorkDone>
{
    /// <summary>What is told of a work that was stopped.</summary>
    public const string Stopped = "Stopped. Nothing is lost; what you asked for can be asked for again.";

    private WorkDone? _last;
    private bool _isStopping;

    /// <summary>Whether it was asked to stop.</summary>
    public bool IsStopping => Volatile.Read(ref _isStopping);

    /// <summary>How far it is, in words: "making the index again: 42 %".</summary>
    public string Words => Volatile.Read(ref _last) is not { } last ? "Working" : Capital(last.Task) + (last.Amount is { Length: > 0 } amount ? $": {amount}" : "");

    /// <summary>Another work begins.</summary>
    public void Begin()
    {
        Volatile.Write(ref _last, null);
        Volatile.Write(ref _isStopping, false);
    }

    /// <summary>Asks it to stop at the next place where it reports.</summary>
    public void Stop() => Volatile.Write(ref _isStopping, true);

    /// <inheritdoc/>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public void Report(WorkDone value)
    {
        Volatile.Write(ref _last, value);
        if (IsStopping)
        {
            throw new OperationCanceledException(Stopped);
        }
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
