using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Drafting;

/// <summary>The active lanes: in each week the hardest exercise of the lane whose needs are met, its dose grown by its own method.</summary>
internal static class ActiveDraft
{
    internal static IEnumerable<KeyValuePair<CellAddress, PlanCell>> Cells(PlanRevision plan, DraftFacts facts)
    {
        Admission admission = new(facts.Case, facts.Expected);
        foreach (Lane lane in plan.Lanes.Where(lane => lane.Band == Band.Active && lane.Slot != ActiveSlot.QuadsWithStim))
        {
            ImmutableArray<Exercise> ranked = [.. facts.Library.Exercises.Values.Where(one => one.Slot == lane.Slot).OrderByDescending(one => one.Rank)];
            (Exercise? current, int since, double loadBefore) = (null, 0, 0);
            foreach (int week in facts.PlannedWeeks)
            {
                Exercise? exercise = ranked.FirstOrDefault(one => admission.Truth(one, week) == Truth.Holds);
                if (exercise is null)
                {
                    (current, loadBefore) = (null, 0);
                    continue;
                }

                (current, since) = exercise == current ? (current, since) : (exercise, week);
                bool eased = facts.Irritated && week == facts.FirstWeek;
                ExerciseDose dose = eased ? Eased(exercise.Start) : Grown(exercise, week - since);
                (dose, bool held) = Bounded(exercise, dose, loadBefore, facts.Library);
                loadBefore = WeeklySeconds(exercise, dose);
                yield return DraftFacts.Cell(lane.Id, week, new ActiveCell(exercise.Id, dose), Why(exercise, admission.Judge(exercise, week), (week - since, eased, held), Next(ranked, exercise, admission, week)));
            }
        }
    }

    private static Basis Why(Exercise exercise, ImmutableArray<Judged> needs, (int WeeksGiven, bool Eased, bool Held) state, string next) => new(
        "ACTIVE-ADMITTED",
        $"{exercise.Title}: the hardest exercise of this lane whose needs are met. {exercise.Purpose}. "
            + (state.Eased ? "The knee is irritated: one set less this week." : GrowthWords(exercise.Progression, state.WeeksGiven))
            + (state.Held ? " Held back so that the load does not rise too fast." : ""),
        [
            .. needs.Select(need => new Input($"Needs {need.Words}", string.Join("; ", need.Inputs.Select(input => input.Value)))),
            new Input("Position", exercise.Position),
            new Input("For the patient", exercise.PatientName),
        ],
        [],
        exercise.Source,
        next);

    private static string Next(ImmutableArray<Exercise> ranked, Exercise exercise, Admission admission, int week)
    {
        Exercise? harder = ranked.LastOrDefault(one => one.Rank > exercise.Rank);
        return harder is null
            ? "It is the hardest exercise of its lane."
            : $"Next is {harder.Title.ToLowerInvariant()}, once: {string.Join("; ", admission.Judge(harder, week).Where(need => need.Truth != Truth.Holds).Select(need => need.Words))}.";
    }

    private static string GrowthWords(DoseProgression growth, int weeksGiven) => growth.Method switch
    {
        ProgressionMethod.Steady => "The dose stays.",
        ProgressionMethod.LoadWhenEarned => "Load rises when it is earned in logged sets: two repetitions over the goal in the last set, twice in a row.",
        _ => $"The dose grows by {Number.Text(growth.Step)} {Unit(growth.Method)} every {growth.EveryWeeks} week{(growth.EveryWeeks == 1 ? "" : "s")} up to {Number.Text(growth.Ceiling)}; given for {weeksGiven} week{(weeksGiven == 1 ? "" : "s")} before.",
    };

    private static string Unit(ProgressionMethod method) => method switch
    {
        ProgressionMethod.Repetitions => "repetitions",
        ProgressionMethod.Sets => "sets",
        ProgressionMethod.Hold => "s of hold",
        _ => "minutes",
    };

    private static ExerciseDose Grown(Exercise exercise, int weeksGiven)
    {
        (ExerciseDose start, DoseProgression growth) = (exercise.Start, exercise.Progression);
        double grown = growth.Step * (weeksGiven / growth.EveryWeeks);
        return growth.Method switch
        {
            ProgressionMethod.Repetitions when start.Repetitions is int repetitions =>
                With(start, start.Sets, (int)Math.Max(repetitions, Math.Min(growth.Ceiling, repetitions + grown))),
            ProgressionMethod.Sets when start.Repetitions is int repetitions =>
                With(start, (int)Math.Max(start.Sets, Math.Min(growth.Ceiling, start.Sets + grown)), repetitions),
            ProgressionMethod.Hold when start.Hold is { } hold =>
                start with { Hold = Duration.FromSeconds(Math.Max(hold.Seconds, Math.Min(growth.Ceiling, hold.Seconds + grown))) },
            ProgressionMethod.Minutes when start.Bout is { } bout =>
                ExerciseDose.InTime(Duration.FromSeconds(Math.Max(bout.Seconds, Math.Min(growth.Ceiling * 60, bout.Seconds + (grown * 60)))), start.TimesPerDay) with { Days = start.Days, Load = start.Load },
            _ => start,
        };
    }

    private static ExerciseDose Eased(ExerciseDose dose) =>
        dose.Repetitions is int repetitions && dose.Sets > 1 ? With(dose, dose.Sets - 1, repetitions) : dose;

    /// <summary>A harder exercise starts with fewer sets where its full dose would raise the lane's load faster than the limit.</summary>
    private static (ExerciseDose Dose, bool Held) Bounded(Exercise exercise, ExerciseDose dose, double before, ClinicalLibrary library)
    {
        if (exercise.Muscle != MuscleGroup.Quadriceps || before <= 0)
        {
            return (dose, false);
        }

        double most = before * (1 + (library.Limit(LimitIds.LoadRise).Value / 100));
        bool held = false;
        while (dose.Repetitions is int repetitions && dose.Sets > 1 && WeeklySeconds(exercise, dose) > most)
        {
            (dose, held) = (With(dose, dose.Sets - 1, repetitions), true);
        }

        return (dose, held);
    }

    private static double WeeklySeconds(Exercise exercise, ExerciseDose dose) => ActiveDose.OfDay(exercise, dose).Seconds * dose.Days.Count;

    private static ExerciseDose With(ExerciseDose dose, int sets, int repetitions) =>
        ExerciseDose.InRepetitions(sets, repetitions, dose.TimesPerDay) with { Hold = dose.Hold, Load = dose.Load, Days = dose.Days };
}
