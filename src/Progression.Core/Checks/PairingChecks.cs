using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Checks;

/// <summary>Stim against active work: each stim session wants voluntary work of the same muscle, on the same day, in the same contraction.</summary>
internal static class PairingChecks
{
    private static readonly Source Adjunct = new(
        "Stim is an addition to active work, not a substitute for it", Standing.CommonPractice);

    internal static IEnumerable<Finding> Of(PlanFacts facts)
    {
        foreach (WeekFigures week in facts.OpenWeeks.Where(week => week.StimContractions > 0))
        {
            if (week.Quads.Contractions == 0)
            {
                yield return NoVoluntaryWork(facts, week);
            }
            else
            {
                foreach (Finding finding in LonelyDays(facts, week).Concat(TooFew(facts, week)))
                {
                    yield return finding;
                }
            }

            foreach (Finding finding in OtherMuscleOnly(facts, week).Concat(Dropped(facts, week)).Concat(Moving(facts, week)))
            {
                yield return finding;
            }
        }
    }

    private static Finding NoVoluntaryWork(PlanFacts facts, WeekFigures week) =>
        Unpaired(facts, week, "PAIR-NONE", $"Week {week.Week}: {week.StimContractions} stimulated contractions and no voluntary quadriceps work.")
            with
        { Severity = Severity.Severe };

    private static IEnumerable<Finding> LonelyDays(PlanFacts facts, WeekFigures week)
    {
        if (!week.StimDaysWithoutQuads.IsEmpty)
        {
            string days = string.Join(", ", week.StimDaysWithoutQuads.Select(date => date.ToString("ddd d MMM", System.Globalization.CultureInfo.InvariantCulture)));
            yield return Unpaired(facts, week, "PAIR-DAY", $"Week {week.Week}: stim without voluntary quadriceps work on {days}.");
        }
    }

    private static IEnumerable<Finding> TooFew(PlanFacts facts, WeekFigures week)
    {
        Limit ratio = facts.Library.Limit(LimitIds.PairingRatio);
        if (week.StimContractions > ratio.Value * week.Quads.Contractions)
        {
            string text = $"Week {week.Week}: {week.StimContractions} stimulated to {week.Quads.Contractions} voluntary quadriceps contractions; at most {ratio.Text} to 1 is asked for.";
            yield return Unpaired(facts, week, "PAIR-RATIO", text) with { Limits = [ratio], Source = ratio.Source };
        }
    }

    private static IEnumerable<Finding> OtherMuscleOnly(PlanFacts facts, WeekFigures week)
    {
        if (week.Quads.Contractions == 0 && !week.Work.IsEmpty)
        {
            string muscles = string.Join(", ", week.Work.Keys.Select(muscle => muscle.ToString().ToLowerInvariant()));
            yield return Unpaired(facts, week, "PAIR-OTHER-MUSCLE", $"Week {week.Week}: stim of the quadriceps, but the voluntary work is only of: {muscles}.")
                with
            { Cells = [PlanFacts.Stim(week.Week), .. facts.ActiveCells(week.Week)] };
        }
    }

    /// <summary>A warning on stim that lacks its voluntary partner, with the cure that adds one.</summary>
    private static Finding Unpaired(PlanFacts facts, WeekFigures week, string rule, string text) => new()
    {
        Rule = rule,
        Severity = Severity.Warning,
        Text = text,
        Inputs = Inputs(week),
        Source = Adjunct,
        Cells = [PlanFacts.Stim(week.Week), PlanFacts.WithStim(week.Week)],
        Cure = facts.CureWithQuads(week.Week),
    };

    private static IEnumerable<Finding> Dropped(PlanFacts facts, WeekFigures week)
    {
        WeekFigures? before = week.Week > 1 ? facts.Figures[week.Week - 2] : null;
        if (week.AnyActiveWork || before is not { AnyActiveWork: true })
        {
            yield break;
        }

        yield return new Finding
        {
            Rule = "PAIR-DROPPED",
            Severity = Severity.Severe,
            Text = $"Week {week.Week}: the active work of week {before.Week} is dropped while stim stays ({week.StimSessions} sessions).",
            Inputs = Inputs(week),
            Source = Adjunct,
            Cells = [PlanFacts.Stim(week.Week), .. facts.ActiveCells(before.Week).Select(cell => cell with { Week = week.Week })],
            Cure = new Cure(
                $"Carry the exercises of week {before.Week} on into week {week.Week}",
                [.. facts.ActiveCells(before.Week).Select(cell => new CellChange(cell with { Week = week.Week }, facts.Plan.At(cell)?.Content))]),
        };
    }

    /// <summary>A contraction that should be held still is paired with one that moves.</summary>
    private static IEnumerable<Finding> Moving(PlanFacts facts, WeekFigures week)
    {
        Regimen? regimen = facts.Library.Regimens.GetValueOrDefault(facts.Plan.Regimen);
        bool still = regimen is not null && !regimen.Isometric.IsOpen && regimen.Isometric.Value;
        if (!still || facts.ExerciseAt(PlanFacts.WithStim(week.Week)) is not { Contraction: ContractionType.Dynamic } exercise)
        {
            yield break;
        }

        yield return new Finding
        {
            Rule = "PAIR-MOVING",
            Severity = Severity.Warning,
            Text = $"Week {week.Week}: the regimen asks for a contraction held still, but \"{exercise.Title}\" moves the knee ({exercise.Position}).",
            Inputs = [new Input("Regimen", regimen!.Title), new Input("Contraction with stim", exercise.Contraction.ToString().ToLowerInvariant())],
            Source = regimen.Source,
            Cells = [PlanFacts.WithStim(week.Week)],
            Cure = facts.CureWithQuads(week.Week),
        };
    }

    private static ImmutableArray<Input> Inputs(WeekFigures week) =>
    [
        new("Stim sessions", $"{week.StimSessions}"),
        new("Stimulated contractions", $"{week.StimContractions}"),
        new("Voluntary quadriceps contractions", $"{week.Quads.Contractions}"),
        new("Voluntary quadriceps time", $"{Number.Text(week.Quads.Seconds / 60, 1)} min"),
    ];
}
