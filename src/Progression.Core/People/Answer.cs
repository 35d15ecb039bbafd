namespace Progression.Core.People;

/// <summary>An answer to a question asked of the person or seen at the knee. A question not asked has no answer at all (null), which is not the same as unknown.</summary>
public enum Answer
{
    /// <summary>Asked, and the answer is not known.</summary>
    Unknown,

    /// <summary>No.</summary>
    No,

    /// <summary>Yes.</summary>
    Yes,
}
