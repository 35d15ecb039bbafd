namespace Progression.App.Actions;

/// <summary>What becomes of the stack of screens after a key.</summary>
public abstract record Move
{
    private Move()
    {
    }

    /// <summary>Another screen comes on top.</summary>
    /// <param name="Frame">The screen.</param>
    public sealed record Open(Frame Frame) : Move;

    /// <summary>This screen goes, and the one below is told.</summary>
    /// <param name="Telling">What it is told; null for nothing.</param>
    public sealed record Leave(ScreenEffect? Telling) : Move;

    /// <summary>The whole picture is sent again.</summary>
    public sealed record Redraw : Move;
}
