namespace Progression.Core.Clinic;

/// <summary>What somebody may or may not do with the records. <see cref="Permission"/> says who may.</summary>
public enum ClinicAct
{
    /// <summary>Open a case, its plan and everything that was saved of it; see the list of cases.</summary>
    ViewCase,

    /// <summary>Change a case or its plan: data, screening, visits, sessions, notes, the grid.</summary>
    ChangeCase,

    /// <summary>Ask for a review of a plan, or take the request back.</summary>
    RequestReview,

    /// <summary>Comment on a plan or its cells.</summary>
    Comment,

    /// <summary>Give a plan back to be changed.</summary>
    ReturnPlan,

    /// <summary>Sign a plan that others made.</summary>
    SignPlan,

    /// <summary>Print what a plan says, for patient or record.</summary>
    PrintPlan,

    /// <summary>Take a case out in a format of another program.</summary>
    ExportCase,

    /// <summary>Search who did what.</summary>
    ReadAudit,

    /// <summary>Look whether the records are whole.</summary>
    CheckRecords,

    /// <summary>Make the index again from the records.</summary>
    RebuildRecords,

    /// <summary>Copy all records to a file.</summary>
    BackUpRecords,

    /// <summary>Put records back from a file.</summary>
    RestoreRecords,

    /// <summary>Write journal lines out, to be taken in elsewhere.</summary>
    ExportRecords,

    /// <summary>Take journal lines in.</summary>
    ImportRecords,

    /// <summary>See the clinic's figures: what rests on many cases and tells of none.</summary>
    SeeFigures,
}
