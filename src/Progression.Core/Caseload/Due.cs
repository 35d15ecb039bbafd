using Progression.Core.Library;

namespace Progression.Core.Caseload;

/// <summary>Something that is to be done for a case by a day.</summary>
/// <param name="Kind">What.</param>
/// <param name="On">The day; it is due from then on.</param>
/// <param name="Limit">The setting the day comes from.</param>
public sealed record Due(DueKind Kind, DateOnly On, Limit Limit)
{
    /// <summary>What is to be done, in two or three words.</summary>
    public string Words => Kind switch
    {
        DueKind.Reassessment => "reassess",
        DueKind.TreatmentDays => $"reassess: {Limit.Text} treatment days",
        DueKind.StimReview => "stim review",
        DueKind.HardReview => "hard stim review",
        DueKind.Report => "progress note",
        _ => "certify",
    };
}
