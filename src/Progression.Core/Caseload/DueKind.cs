namespace Progression.Core.Caseload;

/// <summary>What can be due for a case.</summary>
public enum DueKind
{
    /// <summary>A reassessment by the calendar.</summary>
    Reassessment,

    /// <summary>A reassessment because of the days of treatment since the last.</summary>
    TreatmentDays,

    /// <summary>The look at whether stim can come down.</summary>
    StimReview,

    /// <summary>The hard review of stim.</summary>
    HardReview,

    /// <summary>The certification of the plan of care.</summary>
    Certification,

    /// <summary>A progress note by the calendar.</summary>
    Report,
}
