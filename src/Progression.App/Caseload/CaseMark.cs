namespace Progression.App.Caseload;

/// <summary>What a line of the list shows as a letter, so that it is seen without colour.</summary>
public enum CaseMark
{
    /// <summary>Something is due.</summary>
    Due,

    /// <summary>A reading is behind its milestones.</summary>
    Behind,

    /// <summary>The plan's latest revision is not signed.</summary>
    Unsigned,

    /// <summary>A red flag is open, or stim is barred.</summary>
    Blocked,

    /// <summary>Unsaved work on the plan is kept as a draft.</summary>
    Draft,
}
