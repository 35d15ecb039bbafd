namespace Progression.App.Actions;

/// <summary>
/// A screen for the ear and for the plainest terminal: the same state told in words, a fact a line, no abbreviation where the
/// word has room. What a screen leaves out here is taken from its picture.
/// </summary>
/// <typeparam name="TState">The screen's state.</typeparam>
public sealed record ScreenAloud<TState>
    where TState : class
{
    /// <summary>What a person should hear on coming to the screen, before what is under the cursor.</summary>
    public Func<TState, IEnumerable<string>> Opening { get; init; } = _ => [];

    /// <summary>What is under the cursor, or the page that is open; said whenever it is another one. Null takes it from the picture.</summary>
    public Func<TState, IEnumerable<string>?> Here { get; init; } = _ => null;

    /// <summary>All that stands on the screen, or a part by its name; null for a part that is not there, and for all where the picture is read.</summary>
    public Func<TState, string, IEnumerable<string>?> Read { get; init; } = (_, _) => null;

    /// <summary>What is asked where text is taken; null takes the line with the caret.</summary>
    public Func<TState, ScreenQuestion?> Asks { get; init; } = _ => null;

    /// <summary>The state with the cursor on what the words name, or a status line that says why not; null where they name nothing.</summary>
    public Func<TState, string, TState?> Go { get; init; } = (_, _) => null;
}
