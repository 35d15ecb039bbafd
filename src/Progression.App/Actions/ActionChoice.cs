using System.Collections.Immutable;

namespace Progression.App.Actions;

/// <summary>An action of the present mode as it can be told to a person, whatever the screen.</summary>
/// <param name="Id">Its permanent name within the screen.</param>
/// <param name="Name">Its name as a person types it: the id without the mode.</param>
/// <param name="Keys">Its keys, the one to show first.</param>
public sealed record ActionChoice(string Id, string Name, ImmutableArray<string> Keys)
{
    /// <summary>One or two words; empty for none.</summary>
    public string Hint { get; init; } = "";

    /// <summary>What it does.</summary>
    public string Help { get; init; } = "";

    /// <summary>The heading under which it stands.</summary>
    public string Group { get; init; } = "";

    /// <summary>Whether it is the way back.</summary>
    public bool IsBack { get; init; }

    /// <summary>Why it cannot be done now, as a sentence; null when it can.</summary>
    public string? WhyNot { get; init; }
}
