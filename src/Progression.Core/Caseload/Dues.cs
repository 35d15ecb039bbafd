using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Caseload;

/// <summary>What is due for a case, by the clinic's settings. Days are counted from the operation, as everywhere.</summary>
internal static class Dues
{
    /// <summary>Everything that is due or will be, the earliest first; what falls after the end of the plan is left out.</summary>
    internal static ImmutableArray<Due> Of(CaseFacts facts, ClinicalLibrary library, DateOnly today)
    {
        DateOnly end = End(facts);
        return [.. All(facts, library, today).Where(due => due.On <= end).OrderBy(due => due.On)];
    }

    /// <summary>The last day of the plan; without a plan there is no end.</summary>
    internal static DateOnly End(CaseFacts facts) => facts.Plan is { } plan ? PostOpWeek.End(facts.Operation, plan.Weeks) : DateOnly.MaxValue;

    private static IEnumerable<Due> All(CaseFacts facts, ClinicalLibrary library, DateOnly today)
    {
        yield return Reassessment(facts, library);
        Limit report = library.Limit(LimitIds.TreatmentDays);
        if (facts.TreatedSince.Length >= report.Value)
        {
            yield return new Due(DueKind.TreatmentDays, facts.Operation.AddDays(facts.TreatedSince[(int)report.Value - 1]), report);
        }

        foreach ((DueKind kind, string week) in new[] { (DueKind.StimReview, LimitIds.StimReviewWeek), (DueKind.HardReview, LimitIds.HardReviewWeek) })
        {
            if (Review(kind, library.Limit(week), facts) is { } review)
            {
                yield return review;
            }
        }

        if (Certification(facts, library, today) is { } certification)
        {
            yield return certification;
        }

        if (facts.FirstTreated is DateOnly start && library.OptionalLimit(LimitIds.ReportEvery) is { Value: >= 1 } note)
        {
            yield return new Due(DueKind.Report, Period(start, note, Still(library, today)), note);
        }
    }

    private static Due Reassessment(CaseFacts facts, ClinicalLibrary library)
    {
        (DateOnly on, Limit limit) = ReassessmentDays.Next(facts.Operation, facts.Visits.IsEmpty ? null : facts.LastAssessed, library);
        return new Due(DueKind.Reassessment, on, limit);
    }

    /// <summary>A review of stim is due from the start of its week while stim is planned in that week or later; an assessment in or after the week is the review.</summary>
    private static Due? Review(DueKind kind, Limit week, CaseFacts facts)
    {
        DateOnly start = PostOpWeek.Start(facts.Operation, (int)week.Value);
        return facts.Plan?.HasStimFrom((int)week.Value) == true && !(facts.LastAssessed >= start) ? new Due(kind, start, week) : null;
    }

    /// <summary>
    /// The next date by which the plan of care is to be certified, where the clinic has set them. Nobody tells the program that it was done, so a date is
    /// forgotten once it has been past for the time of notice.
    /// </summary>
    private static Due? Certification(CaseFacts facts, ClinicalLibrary library, DateOnly today)
    {
        if (facts.FirstTreated is not DateOnly start || library.OptionalLimit(LimitIds.CertifyWithin) is not { } within)
        {
            return null;
        }

        DateOnly on = start.AddDays((int)within.Value);
        DateOnly still = Still(library, today);
        if (on >= still)
        {
            return new Due(DueKind.Certification, on, within);
        }

        return library.OptionalLimit(LimitIds.CertifyEvery) is { Value: >= 1 } every ? new Due(DueKind.Certification, Period(start, every, still), every) : null;
    }

    /// <summary>The first day that a date nobody can report as done is still told.</summary>
    private static DateOnly Still(ClinicalLibrary library, DateOnly today) => today.AddDays(-(int)library.Limit(LimitIds.DueNotice).Value);

    /// <summary>The first end of a period, counted from the first treatment, that does not lie before a day.</summary>
    private static DateOnly Period(DateOnly start, Limit every, DateOnly still) =>
        start.AddDays((int)(Math.Max(1, (int)Math.Ceiling((still.DayNumber - start.DayNumber) / every.Value)) * every.Value));
}
