namespace Progression.Core.People;

/// <summary>How an extension deficit is written down where the person is treated. Stored values are always flexion-positive.</summary>
public enum DeficitSign
{
    /// <summary>5 is 5 degrees short of straight, -3 is 3 degrees beyond it.</summary>
    Positive,

    /// <summary>-5 is 5 degrees short of straight, 3 is 3 degrees beyond it.</summary>
    Negative,
}
