namespace Progression.App.Trying;

/// <summary>What the keys of the try-out mean.</summary>
public enum TryMode
{
    /// <summary>Typing readings.</summary>
    Readings,

    /// <summary>Reading the help page.</summary>
    Help,
}
