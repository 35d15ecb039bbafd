namespace Progression.App.Reviews;

/// <summary>What the keys of the queue mean at the moment.</summary>
public enum QueueMode
{
    /// <summary>Going through what waits.</summary>
    List,

    /// <summary>Reading the help page.</summary>
    Help,
}
