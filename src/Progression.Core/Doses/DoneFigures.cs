using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>Planned against done, week by week. The logs are those of the case, so what was done at home stands only in what the person says of it.</summary>
public static class DoneFigures
{
    /// <summary>Every week of the plan, first to last.</summary>
    public static ImmutableArray<WeekDone> Of(PlanRevision plan, Case patient, ClinicalLibrary library)
    {
        ILookup<int, SessionLog> logs = patient.Sessions.ToLookup(log => PostOpWeek.Of(plan.Operation, log.Date));
        return [.. PlanFigures.Of(plan, library).Select(figures => OfWeek(plan, figures, [.. logs[figures.Week].Where(log => IsCompared(log, figures, plan))], library))];
    }

    /// <summary>In the week in which the plan begins only its planned days are compared; before it everything logged is told.</summary>
    private static bool IsCompared(SessionLog log, WeekFigures figures, PlanRevision plan) => figures.PlannedDays == 0 || log.Date >= plan.From;

    private static WeekDone OfWeek(PlanRevision plan, WeekFigures figures, ImmutableArray<SessionLog> logs, ClinicalLibrary library)
    {
        ImmutableArray<ExerciseDone> exercises = [.. logs.SelectMany(log => log.Exercises)];
        ImmutableArray<double> told = [.. logs.Select(log => log.Adherence).OfType<Percentage>().Select(share => share.Percent)];
        return new WeekDone
        {
            Week = figures.Week,
            StimSessionsPlanned = figures.StimSessions,
            StimSessionsDone = logs.IsEmpty ? null : logs.Count(log => log.Contractions > 0),
            ContractionsPlanned = figures.StimContractions,
            ContractionsDone = logs.IsEmpty ? null : logs.Sum(log => log.Contractions),
            ExercisesPlanned = ExercisesPlanned(plan, figures.Week),
            ExercisesDone = exercises.IsEmpty ? null : exercises.Count(done => library.Exercises.GetValueOrDefault(done.Exercise)?.Slot != ActiveSlot.QuadsWithStim),
            QuadsDone = QuadsDone(exercises, library),
            Adherence = told.IsEmpty ? null : Percentage.FromPercent(told.Average()),
        };
    }

    private static int? QuadsDone(ImmutableArray<ExerciseDone> exercises, ClinicalLibrary library)
    {
        ImmutableArray<int> counted =
        [
            .. from done in exercises
               where library.Exercises.GetValueOrDefault(done.Exercise) is { Muscle: MuscleGroup.Quadriceps, Contraction: not ContractionType.Passive }
               from repetitions in done.Sets.Select(set => set.Repetitions).OfType<int>()
               select repetitions,
        ];
        return counted.IsEmpty ? null : counted.Sum();
    }

    private static int ExercisesPlanned(PlanRevision plan, int week)
    {
        ImmutableArray<DateOnly> days = [.. plan.PlannedDays(week)];
        return plan.Lanes.Where(lane => lane.Band == Band.Active && lane.Id != Lanes.WithStim)
            .Select(lane => plan.ContentAt(lane.Id, week)).OfType<ActiveCell>()
            .Sum(cell => cell.Dose.TimesPerDay * days.Count(day => cell.Dose.Days.Contains(day.DayOfWeek)));
    }
}
