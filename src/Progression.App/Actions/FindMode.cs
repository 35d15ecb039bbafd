namespace Progression.App.Actions;

/// <summary>What the keys mean in the finder.</summary>
public enum FindMode
{
    /// <summary>Typing words.</summary>
    Line,

    /// <summary>Reading the help.</summary>
    Help,
}
