using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Checks;

/// <summary>Exercises against what they need, and against the library.</summary>
internal static class NeedsChecks
{
    private static readonly Source Needs = new("Each exercise asks for what its position and load ask of the knee; see the exercise in the library", Standing.CommonPractice);

    internal static IEnumerable<Finding> Of(PlanFacts facts)
    {
        Admission admission = new(facts.Case, facts.Expected);
        for (int week = facts.Plan.FirstOpenWeek; week <= facts.Plan.Weeks; week++)
        {
            bool stim = facts.Figures[week - 1].StimContractions > 0;
            foreach (CellAddress cell in facts.ActiveCells(week))
            {
                if (facts.ExerciseAt(cell) is not { } exercise)
                {
                    yield return Unknown(facts, cell);
                }
                else if (Failing(facts, admission.Judge(exercise, week), (exercise, cell), stim) is { } finding)
                {
                    yield return finding;
                }
            }
        }
    }

    private static Finding Unknown(PlanFacts facts, CellAddress cell) => new()
    {
        Rule = "ACTIVE-UNKNOWN",
        Severity = Severity.Warning,
        Text = $"Week {cell.Week}: the library in use does not know the exercise \"{((ActiveCell)facts.Plan.At(cell)!.Content!).Exercise}\"; nothing is counted for it.",
        Inputs = [new Input("Library drafted from", facts.Plan.LibraryVersion), new Input("Library in use", facts.Library.Version)],
        Source = Needs,
        Cells = [cell],
    };

    private static Finding? Failing(PlanFacts facts, ImmutableArray<Judged> needs, (Exercise Exercise, CellAddress Cell) at, bool stim)
    {
        ImmutableArray<Judged> failing = [.. needs.Where(need => need.Truth == Truth.DoesNotHold)];
        ImmutableArray<Judged> open = [.. needs.Where(need => need.Truth == Truth.NotKnown)];
        if (failing.IsEmpty && open.IsEmpty)
        {
            return null;
        }

        ImmutableArray<Judged> told = failing.IsEmpty ? open : failing;
        string what = failing.IsEmpty ? "what it needs is not known" : stim ? "it is planned with stim, but what it needs is not met" : "what it needs is not met";
        return new Finding
        {
            Rule = failing.IsEmpty ? "ACTIVE-NEEDS-OPEN" : stim ? "PAIR-NEEDS" : "ACTIVE-NEEDS",
            Severity = failing.IsEmpty ? Severity.Note : Severity.Warning,
            Text = $"Week {at.Cell.Week}, {at.Exercise.Title}: {what}: {string.Join("; ", told.Select(need => need.Words))}.",
            Inputs = [.. told.SelectMany(need => need.Inputs)],
            Source = Needs,
            Cells = [at.Cell],
            Cure = failing.IsEmpty ? null : Easier(facts, at),
        };
    }

    /// <summary>The hardest exercise of the same lane whose needs are met.</summary>
    private static Cure? Easier(PlanFacts facts, (Exercise Exercise, CellAddress Cell) at)
    {
        Admission admission = new(facts.Case, facts.Expected);
        Exercise? easier = facts.Library.Exercises.Values
            .Where(one => one.Slot == at.Exercise.Slot && one.Rank < at.Exercise.Rank && admission.Truth(one, at.Cell.Week) == Truth.Holds)
            .MaxBy(one => one.Rank);
        return easier is null
            ? new Cure($"Take \"{at.Exercise.Title}\" out of week {at.Cell.Week}", [new CellChange(at.Cell, null)])
            : new Cure($"Take \"{easier.Title}\" instead", [new CellChange(at.Cell, new ActiveCell(easier.Id, easier.Start))]);
    }
}
