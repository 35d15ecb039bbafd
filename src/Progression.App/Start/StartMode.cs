namespace Progression.App.Start;

/// <summary>What the keys of the start screen mean at the moment.</summary>
public enum StartMode
{
    /// <summary>Going through the cases.</summary>
    List,

    /// <summary>Typing what to find.</summary>
    Find,

    /// <summary>Reading the help page.</summary>
    Help,
}
