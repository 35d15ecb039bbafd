namespace Progression.App.Actions;

/// <summary>What a person is asked to type.</summary>
/// <param name="Title">The name of the field, with its unit.</param>
public sealed record ScreenQuestion(string Title)
{
    /// <summary>What stands in the field now; an empty answer keeps it.</summary>
    public string Now { get; init; } = "";

    /// <summary>What is allowed, as a sentence; empty where anything is.</summary>
    public string Allowed { get; init; } = "";

    /// <summary>What it was last time; empty for nothing.</summary>
    public string Last { get; init; } = "";

    /// <summary>The key that takes an answer with what stands in the field; it may hang on that.</summary>
    public string TakenBy { get; init; } = "Enter";

    /// <summary>Why the last answer was refused; empty when none was.</summary>
    public string Refused { get; init; } = "";
}
