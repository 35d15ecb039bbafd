using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Doses;

/// <summary>The weekly sums of a plan.</summary>
public static class PlanFigures
{
    /// <summary>The figures of every week, first to last. An exercise the library does not know adds nothing; the check names it.</summary>
    public static ImmutableArray<WeekFigures> Of(PlanRevision plan, ClinicalLibrary library)
    {
        ImmutableArray<WeekFigures>.Builder weeks = ImmutableArray.CreateBuilder<WeekFigures>(plan.Weeks);
        for (int week = 1; week <= plan.Weeks; week++)
        {
            WeekFigures figures = OfWeek(plan, week, library);
            weeks.Add(figures with { QuadsChange = Change(week > 1 ? weeks[week - 2] : null, figures) });
        }

        return weeks.MoveToImmutable();
    }

    /// <summary>Seconds one stim session takes by the clock, the last rest counted; null when the regimen leaves its timing open.</summary>
    public static double? SessionSeconds(Regimen? regimen, int contractions)
    {
        if (regimen is null || regimen.On.IsOpen || regimen.Off.IsOpen)
        {
            return null;
        }

        bool outside = !regimen.Ramps.IsOpen && regimen.Ramps.Value == RampPlacement.Outside;
        double ramps = outside
            ? (regimen.RampUp.IsOpen ? 0 : regimen.RampUp.Value.Seconds) + (regimen.RampDown.IsOpen ? 0 : regimen.RampDown.Value.Seconds)
            : 0;
        return contractions * (regimen.On.Value.Seconds + regimen.Off.Value.Seconds + ramps);
    }

    private static WeekFigures OfWeek(PlanRevision plan, int week, ClinicalLibrary library)
    {
        StimCell? stim = plan.ContentAt(Lanes.Stim, week) as StimCell;
        double? session = stim is null ? null : SessionSeconds(library.Regimens.GetValueOrDefault(plan.Regimen), stim.Contractions);
        ImmutableArray<ActiveItem> actives = Actives(plan, week, library);
        ImmutableArray<DateOnly> planned = [.. plan.PlannedDays(week)];
        ImmutableArray<DateOnly> stimDays = stim is null ? [] : [.. planned.Where(date => stim.Days.Contains(date.DayOfWeek))];
        int sessions = stimDays.Length * (stim?.SessionsPerDay ?? 0);
        double stimMinutesOfDay = (session ?? 0) * (stim?.SessionsPerDay ?? 0) / 60;
        return new WeekFigures
        {
            Week = week,
            PlannedDays = planned.Length,
            StimSessions = sessions,
            StimContractions = sessions * (stim?.Contractions ?? 0),
            StimMinutes = stim is null ? 0 : session * sessions / 60,
            StimDays = stimDays,
            StimDaysWithoutQuads = [.. stimDays.Where(date => !actives.Any(item => item.WorksQuadsOn(date)))],
            Work = Sum(actives, planned),
            QuadsAlone = actives.Where(item => item.Muscle == MuscleGroup.Quadriceps && !item.AlongWithStim)
                .Aggregate(MuscleWork.None, (sum, item) => sum.Plus(item.OfDay.Times(item.Days.Count))),
            AnyActiveWork = actives.Any(item => item.DaysIn(planned) > 0),
            MinutesOnLongestDay = planned.Select(date => actives.Sum(item => item.MinutesOn(date, stimDays.Contains(date))) + (stimDays.Contains(date) ? stimMinutesOfDay : 0))
                .DefaultIfEmpty(0).Max(),
        };
    }

    private static ImmutableSortedDictionary<MuscleGroup, MuscleWork> Sum(ImmutableArray<ActiveItem> actives, ImmutableArray<DateOnly> planned) =>
        actives.GroupBy(item => item.Muscle)
            .Select(group => KeyValuePair.Create(group.Key, Total(group, planned)))
            .Where(pair => pair.Value != MuscleWork.None)
            .ToImmutableSortedDictionary();

    private static MuscleWork Total(IEnumerable<ActiveItem> items, ImmutableArray<DateOnly> planned) =>
        items.Aggregate(MuscleWork.None, (sum, item) => sum.Plus(item.OfDay.Times(item.DaysIn(planned))));

    private static ImmutableArray<ActiveItem> Actives(PlanRevision plan, int week, ClinicalLibrary library)
    {
        double rest = library.Limit(LimitIds.RestBetweenSets).Value;
        ImmutableArray<ActiveItem>.Builder actives = ImmutableArray.CreateBuilder<ActiveItem>();
        foreach (Lane lane in plan.Lanes)
        {
            if (lane.Band == Band.Active && plan.ContentAt(lane.Id, week) is ActiveCell cell
                && library.Exercises.TryGetValue(cell.Exercise, out Exercise? exercise))
            {
                actives.Add(new ActiveItem(
                    exercise.Muscle, cell.Dose.Days, ActiveDose.OfDay(exercise, cell.Dose),
                    ActiveDose.SecondsOfDay(exercise, cell.Dose, rest), lane.Slot == ActiveSlot.QuadsWithStim));
            }
        }

        return actives.ToImmutable();
    }

    private static double? Change(WeekFigures? before, WeekFigures now)
    {
        if (before is null || before.PlannedDays == 0 || now.PlannedDays == 0 || before.QuadsAlone.Seconds == 0)
        {
            return null;
        }

        return 100 * (now.QuadsAlone.Seconds - before.QuadsAlone.Seconds) / before.QuadsAlone.Seconds;
    }

    /// <summary>One exercise of a week.</summary>
    private sealed record ActiveItem(MuscleGroup Muscle, DaysOfWeek Days, MuscleWork OfDay, double SecondsOfDay, bool AlongWithStim)
    {
        internal int DaysIn(ImmutableArray<DateOnly> planned) => planned.Count(date => Days.Contains(date.DayOfWeek));

        internal bool WorksQuadsOn(DateOnly date) => Muscle == MuscleGroup.Quadriceps && OfDay.Contractions > 0 && Days.Contains(date.DayOfWeek);

        /// <summary>The contraction along with stim is made inside the session, so its time is counted there.</summary>
        internal double MinutesOn(DateOnly date, bool stimulated) =>
            !Days.Contains(date.DayOfWeek) || (AlongWithStim && stimulated) ? 0 : SecondsOfDay / 60;
    }
}
