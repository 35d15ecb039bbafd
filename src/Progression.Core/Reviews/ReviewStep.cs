namespace Progression.Core.Reviews;

/// <summary>What can be done about the review of a plan.</summary>
/// <remarks>The name, in lower case, is written to the journal: a name in use is never changed or given a new meaning.</remarks>
public enum ReviewStep
{
    /// <summary>A review was asked for.</summary>
    Requested,

    /// <summary>The request was taken back.</summary>
    Withdrawn,

    /// <summary>Something was said about the plan or its cells.</summary>
    Commented,

    /// <summary>The plan was given back to be changed.</summary>
    Returned,

    /// <summary>The plan was signed.</summary>
    Signed,
}
