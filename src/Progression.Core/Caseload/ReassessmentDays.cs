using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Caseload;

/// <summary>When a case is to be assessed again by the clinic's settings: two checkpoints after the operation, then a number of days after each visit.</summary>
public static class ReassessmentDays
{
    /// <summary>The days to come, each counted from the one before as if that was kept, the last of them not after the end.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="library">Holds the settings.</param>
    /// <param name="end">The last day that counts.</param>
    public static ImmutableArray<DateOnly> Until(Case patient, ClinicalLibrary library, DateOnly end)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        ImmutableArray<DateOnly>.Builder days = ImmutableArray.CreateBuilder<DateOnly>();
        DateOnly operation = patient.Operation.Date;
        DateOnly? last = patient.Assessments.IsEmpty ? null : patient.Assessments[^1].Date;
        for (DateOnly next = Next(operation, last, library).On; next <= end && next > (last ?? DateOnly.MinValue); next = Next(operation, last, library).On)
        {
            days.Add(next);
            last = next;
        }

        return days.ToImmutable();
    }

    /// <summary>Which reassessment after the operation falls on a day, from 1, by the settings alone: the same for a day that moved a little.</summary>
    public static int NumberOf(DateOnly operation, DateOnly day, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        (double first, double second, double every) = (library.Limit(LimitIds.FirstReassessment).Value, library.Limit(LimitIds.SecondReassessment).Value, library.Limit(LimitIds.ReassessmentEvery).Value);
        int since = PostOpWeek.DayOf(operation, day);
        return since <= (first + second) / 2 ? 1 : 2 + (int)Math.Round(Math.Max(0, since - second) / every, MidpointRounding.AwayFromZero);
    }

    /// <summary>The first checkpoint that no visit has met, else a number of days after the last visit. A visit a little early meets a checkpoint.</summary>
    internal static (DateOnly On, Limit Limit) Next(DateOnly operation, DateOnly? last, ClinicalLibrary library)
    {
        (Limit first, Limit second) = (library.Limit(LimitIds.FirstReassessment), library.Limit(LimitIds.SecondReassessment));
        double met = last is { } day ? PostOpWeek.DayOf(operation, day) + library.Limit(LimitIds.ReassessmentEarly).Value : double.MinValue;
        Limit every = library.Limit(LimitIds.ReassessmentEvery);
        return met < first.Value ? (operation.AddDays((int)first.Value), first)
            : met < second.Value ? (operation.AddDays((int)second.Value), second)
            : (last!.Value.AddDays((int)every.Value), every);
    }
}
