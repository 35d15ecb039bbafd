namespace Progression.Core.Reviews;

/// <summary>What somebody who signs a plan says by it.</summary>
/// <remarks>The name, in lower case, is written to the journal: a name in use is never changed or given a new meaning.</remarks>
public enum SignatureMeaning
{
    /// <summary>Reviewed, and agreed to.</summary>
    Agreed,

    /// <summary>Reviewed, and agreed to with what was commented.</summary>
    AgreedWithComments,

    /// <summary>Reviewed, agreed to, and answered for.</summary>
    AnsweredFor,
}
