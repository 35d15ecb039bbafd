namespace Progression.App.Caseload;

/// <summary>Which cases of a list are shown.</summary>
public enum CaseFilter
{
    /// <summary>All of them.</summary>
    All,

    /// <summary>Those for which something is due.</summary>
    Due,

    /// <summary>Those behind their milestones.</summary>
    Behind,

    /// <summary>Those whose plan is not signed.</summary>
    Unsigned,

    /// <summary>Those with an open red flag or barred stim.</summary>
    Blocked,

    /// <summary>Those this account saved.</summary>
    Mine,

    /// <summary>Those with a kept draft.</summary>
    Drafts,
}
