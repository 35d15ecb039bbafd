using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Caseload;

/// <summary>
/// What a list keeps of a case, so that thousands can be judged without opening one: days, counts, answers and readings. Never a verdict, because limits,
/// milestones and the present day may be others tomorrow.
/// </summary>
public sealed record CaseFacts
{
    /// <summary>The day of the operation.</summary>
    public required DateOnly Operation { get; init; }

    /// <summary>What was answered before stim was planned; cases with the same answers may share it.</summary>
    public Screening Screening { get; init; } = Screening.NotDone;

    /// <summary>The ids of the signs that were asked at any visit, in ordinal order.</summary>
    public ImmutableArray<string> Signs { get; init; } = [];

    /// <summary>The assessments since the operation, oldest first.</summary>
    public ImmutableArray<VisitFacts> Visits { get; init; } = [];

    /// <summary>The notes that closed red flags: flag and day; who wrote what is not kept here.</summary>
    public ImmutableArray<FlagNote> Notes { get; init; } = [];

    /// <summary>The first day of treatment: of the first logged session; null when none was logged.</summary>
    public DateOnly? FirstTreated { get; init; }

    /// <summary>The days of treatment after the latest assessment, each once however many sessions it had; days since the operation, oldest first.</summary>
    public ImmutableArray<int> TreatedSince { get; init; } = [];

    /// <summary>Whether any session had stim in it.</summary>
    public bool Stimulated { get; init; }

    /// <summary>What is kept of the plan; null when there is none.</summary>
    public PlanOutline? Plan { get; init; }

    /// <summary>The day of the latest assessment; null when there is none.</summary>
    public DateOnly? LastAssessed => Visits.IsEmpty ? null : Operation.AddDays(Visits[^1].Day);

    /// <summary>The facts of a case, without its plan.</summary>
    public static CaseFacts Of(Case patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ImmutableArray<string> signs = [.. patient.Assessments.SelectMany(one => one.SignsSeen.Keys).Distinct().Order(StringComparer.Ordinal)];
        DateOnly seen = patient.Assessments.IsEmpty ? DateOnly.MinValue : patient.Assessments[^1].Date;
        return new CaseFacts
        {
            Operation = patient.Operation.Date,
            Screening = patient.Screening,
            Signs = signs,
            Visits = [.. patient.Assessments.Select(one => Visit(patient, one, signs))],
            Notes = [.. patient.FlagNotes.Select(note => note with { By = "", Text = "" })],
            FirstTreated = patient.Sessions.IsEmpty ? null : patient.Sessions[0].Date,
            TreatedSince = [.. patient.Sessions.Where(log => log.Date > seen).Select(log => PostOpWeek.DayOf(patient.Operation.Date, log.Date)).Distinct()],
            Stimulated = patient.StimSessions.Any(),
        };
    }

    private static VisitFacts Visit(Case patient, Assessment one, ImmutableArray<string> signs)
    {
        KneeState state = KneeState.At(one, patient);
        return new VisitFacts(PostOpWeek.DayOf(patient.Operation.Date, one.Date))
        {
            FlexionActive = one.Value(MeasureIds.FlexionActive),
            FlexionPassive = one.Value(MeasureIds.FlexionPassive),
            ExtensionActive = one.Value(MeasureIds.ExtensionActive),
            ExtensionPassive = one.Value(MeasureIds.ExtensionPassive),
            StraightLegRaises = one.Value(MeasureIds.StraightLegRaises),
            PreOpShare = state.PreOpShare?.Percent,
            Index = state.Index?.Percent,
            Answers = string.Concat(signs.Select(sign => Letter(one, sign))),
        };
    }

    private static char Letter(Assessment one, string sign) => !one.SignsSeen.TryGetValue(sign, out Answer answer) ? '-'
        : answer switch { Answer.Yes => 'y', Answer.No => 'n', _ => 'u' };
}
