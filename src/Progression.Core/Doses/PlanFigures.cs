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
        Dictionary<MuscleGroup, MuscleWork> work = [];
        List<DateOnly> stimDays = [], lonely = [];
        (int planned, double longest, bool anyWork) = (0, 0, false);
        List<(Exercise Exercise, ExerciseDose Dose, Lane Lane, MuscleWork Work)> actives = Actives(plan, week, library);
        foreach (DateOnly date in plan.PlannedDays(week))
        {
            planned++;
            double seconds = 0;
            bool quads = false;
            bool stimulated = stim is not null && stim.Days.Contains(date.DayOfWeek);
            foreach ((Exercise exercise, ExerciseDose dose, Lane lane, MuscleWork ofDay) in actives)
            {
                if (!dose.Days.Contains(date.DayOfWeek))
                {
                    continue;
                }

                anyWork = true;
                work[exercise.Muscle] = work.GetValueOrDefault(exercise.Muscle, MuscleWork.None).Plus(ofDay);
                quads |= exercise.Muscle == MuscleGroup.Quadriceps && ofDay.Contractions > 0;
                // The contraction along with stim is made inside the session, so its time is counted there.
                seconds += lane.Slot == ActiveSlot.QuadsWithStim && stimulated
                    ? 0
                    : ActiveDose.SecondsOfDay(exercise, dose, library.Limit(LimitIds.RestBetweenSets).Value);
            }

            if (stimulated)
            {
                stimDays.Add(date);
                seconds += (session ?? 0) * stim!.SessionsPerDay;
                if (!quads)
                {
                    lonely.Add(date);
                }
            }

            longest = Math.Max(longest, seconds / 60);
        }

        int sessions = stimDays.Count * (stim?.SessionsPerDay ?? 0);
        return new WeekFigures
        {
            Week = week,
            PlannedDays = planned,
            StimSessions = sessions,
            StimContractions = sessions * (stim?.Contractions ?? 0),
            StimMinutes = stim is null ? 0 : session * sessions / 60,
            StimDays = [.. stimDays],
            StimDaysWithoutQuads = [.. lonely],
            Work = work.Where(pair => pair.Value != MuscleWork.None).ToImmutableSortedDictionary(),
            AnyActiveWork = anyWork,
            MinutesOnLongestDay = longest,
        };
    }

    private static List<(Exercise, ExerciseDose, Lane, MuscleWork)> Actives(PlanRevision plan, int week, ClinicalLibrary library)
    {
        List<(Exercise, ExerciseDose, Lane, MuscleWork)> actives = [];
        foreach (Lane lane in plan.Lanes)
        {
            if (lane.Band == Band.Active && plan.ContentAt(lane.Id, week) is ActiveCell cell
                && library.Exercises.TryGetValue(cell.Exercise, out Exercise? exercise))
            {
                actives.Add((exercise, cell.Dose, lane, ActiveDose.OfDay(exercise, cell.Dose)));
            }
        }

        return actives;
    }

    private static double? Change(WeekFigures? before, WeekFigures now)
    {
        if (before is null || before.PlannedDays == 0 || now.PlannedDays == 0 || before.Quads.Seconds == 0)
        {
            return null;
        }

        double was = before.Quads.Seconds / before.PlannedDays;
        return 100 * ((now.Quads.Seconds / now.PlannedDays) - was) / was;
    }
}
