using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
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
    private const int FewestRepetitions = 3;

    internal static IEnumerable<KeyValuePair<CellAddress, PlanCell>> Cells(PlanRevision plan, DraftFacts facts)
    {
        Admission admission = new(facts.Case, facts.Expected);
        ImmutableArray<LanePath> paths =
        [
            .. plan.Lanes.Where(lane => lane.Band == Band.Active && lane.Slot != ActiveSlot.QuadsWithStim)
                .Select(lane => new LanePath(lane, [.. facts.Library.Exercises.Values.Where(one => one.Slot == lane.Slot).OrderByDescending(one => one.Rank)], facts)),
        ];
        double quadsBefore = paths.Sum(path => path.QuadsBefore(facts));
        foreach (int week in facts.PlannedWeeks)
        {
            double quads = 0;
            foreach (LanePath path in paths)
            {
                if (!path.Take(path.Ranked.FirstOrDefault(one => path.MayTake(one, facts) && admission.Truth(one, week) == Truth.Holds), week, out Exercise? exercise))
                {
                    continue;
                }

                bool eased = facts.Irritated && week == facts.FirstWeek;
                int given = facts.Locked ? Math.Max(0, facts.FirstWeek - 1 - path.Since) : week - path.Since;
                (ExerciseDose dose, bool held) = Bounded(exercise, eased ? Eased(exercise.Start) : Grown(exercise, given), MostQuads(quadsBefore, facts.Library) - quads);
                LoadAdvice? load = exercise.Progression.IsByLog ? LoadDraft.Of(exercise, path.LoadBefore(exercise), week, facts) : null;
                dose = dose with { Days = facts.Within(week, dose.Days), Load = load is null ? dose.Load : load.Load };
                quads += exercise.Muscle == MuscleGroup.Quadriceps ? WeeklySeconds(exercise, dose) : 0;
                string growth = eased ? "The knee is irritated: one set less this week." : facts.Locked ? "A red flag is open: nothing is advanced." : GrowthWords(exercise.Progression, given);
                growth += (held ? " Held back so that the load does not rise too fast." : "") + (load is null ? "" : $" {load.Why}");
                Basis basis = Why(exercise, admission.Judge(exercise, week), (growth, load), Next(path.Ranked, exercise, admission, week));
                yield return DraftFacts.Cell(path.Lane.Id, week, new ActiveCell(exercise.Id, dose), basis);
            }

            quadsBefore = quads;
        }
    }

    /// <summary>Most quadriceps contraction time a week may have after one that had some; no bound after one that had none.</summary>
    private static double MostQuads(double before, ClinicalLibrary library) =>
        before > 0 ? before * (1 + (library.Limit(LimitIds.LoadRise).Value / 100)) : double.PositiveInfinity;

    private static Basis Why(Exercise exercise, ImmutableArray<Judged> needs, (string Growth, LoadAdvice? Load) dose, string next) => new(
        "ACTIVE-ADMITTED",
        $"{exercise.Title}: the hardest exercise of this lane whose needs are met. {exercise.Purpose}. {dose.Growth}",
        [
            .. needs.Select(need => new Input($"Needs {need.Words}", string.Join("; ", need.Inputs.Select(input => input.Value)))),
            new Input("Position", exercise.Position),
            new Input("For the patient", exercise.PatientName),
            .. dose.Load is null ? ImmutableArray<Input>.Empty : [new Input("Rule of the load", $"{dose.Load.Source}")],
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
        ProgressionMethod.Dapre => "Load follows the repetitions done in the third set.",
        ProgressionMethod.Delorme => "Load is the ten-repetition maximum as last tested.",
        _ => $"The dose grows by {Number.Text(growth.Step)} {Unit(growth.Method)} every {(growth.EveryWeeks == 1 ? "week" : $"{growth.EveryWeeks} weeks")} up to {Number.Text(growth.Ceiling)}{(weeksGiven == 0 ? "" : $"; given for {weeksGiven} week{(weeksGiven == 1 ? "" : "s")} before")}.",
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

    /// <summary>An exercise starts with fewer sets, then fewer repetitions, where its full dose would raise the week's quadriceps load faster than the limit.</summary>
    private static (ExerciseDose Dose, bool Held) Bounded(Exercise exercise, ExerciseDose dose, double most)
    {
        bool held = false;
        while (exercise.Muscle == MuscleGroup.Quadriceps && Less(dose) is { } less && WeeklySeconds(exercise, dose) > most)
        {
            (dose, held) = (less, true);
        }

        return (dose, held);
    }

    /// <summary>One set less, or one repetition less where there is only one set; null where little enough is left.</summary>
    private static ExerciseDose? Less(ExerciseDose dose) =>
        dose.Repetitions is not int repetitions ? null
        : dose.Sets > 1 ? With(dose, dose.Sets - 1, repetitions)
        : repetitions > FewestRepetitions ? With(dose, 1, repetitions - 1)
        : null;

    private static double WeeklySeconds(Exercise exercise, ExerciseDose dose) => ActiveDose.OfDay(exercise, dose).Seconds * dose.Days.Count;

    private static ExerciseDose With(ExerciseDose dose, int sets, int repetitions) =>
        ExerciseDose.InRepetitions(sets, repetitions, dose.TimesPerDay) with { Hold = dose.Hold, Load = dose.Load, Days = dose.Days };

    /// <summary>Where a lane has got to while its weeks are filled.</summary>
    private sealed class LanePath
    {
        private readonly ActiveCell? _before;
        private Exercise? _current;

        /// <summary>Starts where the standing plan had got to in the week before the draft.</summary>
        internal LanePath(Lane lane, ImmutableArray<Exercise> ranked, DraftFacts facts)
        {
            (Lane, Ranked) = (lane, ranked);
            _before = CellBefore(facts, 1);
            _current = ranked.FirstOrDefault(one => one.Id == _before?.Exercise);
            int back = 1;
            while (CellBefore(facts, back) is { } cell && cell.Exercise == _before?.Exercise)
            {
                back++;
            }

            Since = facts.FirstWeek - back + 1;
        }

        internal Lane Lane { get; }

        /// <summary>The exercises of the lane, hardest first.</summary>
        internal ImmutableArray<Exercise> Ranked { get; }

        /// <summary>The week in which the present exercise was first given.</summary>
        internal int Since { get; private set; }

        /// <summary>Quadriceps contraction time of the lane in the week before the draft.</summary>
        internal double QuadsBefore(DraftFacts facts) =>
            _current is { Muscle: MuscleGroup.Quadriceps } && CellBefore(facts, 1) is { } cell ? WeeklySeconds(_current, cell.Dose) : 0;

        private ActiveCell? CellBefore(DraftFacts facts, int weeks) => facts.Standing?.ContentAt(Lane.Id, facts.FirstWeek - weeks) as ActiveCell;

        /// <summary>While a red flag is open nothing harder than the present exercise is taken.</summary>
        internal bool MayTake(Exercise next, DraftFacts facts) => !facts.Locked || _current is null || next.Rank <= _current.Rank;

        /// <summary>The load of an exercise in the week before the draft; its starting load where it was not given then.</summary>
        internal ExerciseLoad? LoadBefore(Exercise exercise) => _before?.Exercise == exercise.Id ? _before.Dose.Load : exercise.Start.Load;

        /// <summary>Goes on with an exercise; false when there is none this week.</summary>
        internal bool Take(Exercise? next, int week, [NotNullWhen(true)] out Exercise? exercise)
        {
            Since = next == _current ? Since : week;
            _current = exercise = next;
            return next is not null;
        }
    }
}
