using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Checks;

/// <summary>What the checks of a plan look at, worked out once.</summary>
internal sealed record PlanFacts(Case Case, PlanRevision Plan, ClinicalLibrary Library)
{
    internal ImmutableArray<WeekFigures> Figures { get; } = PlanFigures.Of(Plan, Library);

    /// <summary>The figures of the weeks that can still be changed; what is done is not judged again.</summary>
    internal IEnumerable<WeekFigures> OpenWeeks => Figures.Where(week => week.Week >= Plan.FirstOpenWeek);

    internal LadderCourse Course { get; } = LadderCourse.Of(Case, Library, AsOf(Case, Plan));

    internal ExpectedCourse Expected { get; } = new(Case, Library, AsOf(Case, Plan));

    internal static CellAddress Stim(int week) => new(Lanes.Stim, week);

    internal static CellAddress WithStim(int week) => new(Lanes.WithStim, week);

    /// <summary>The active cells of a week that hold something.</summary>
    internal IEnumerable<CellAddress> ActiveCells(int week) =>
        Plan.Lanes.Where(lane => lane.Band == Band.Active).Select(lane => new CellAddress(lane.Id, week)).Where(cell => Plan.At(cell)?.Content is not null);

    internal Exercise? ExerciseAt(CellAddress address) =>
        Plan.At(address)?.Content is ActiveCell active ? Library.Exercises.GetValueOrDefault(active.Exercise) : null;

    /// <summary>Puts the easiest contraction along with stim into the week, as often as there is stim.</summary>
    internal Cure? CureWithQuads(int week)
    {
        Exercise? exercise = Library.Exercises.Values.Where(one => one.Slot == ActiveSlot.QuadsWithStim).MinBy(one => one.Rank);
        return exercise is null || Plan.LaneOf(Lanes.WithStim) is null || Plan.ContentAt(Lanes.Stim, week) is not StimCell stim
            ? null
            : new Cure(
                $"Add \"{exercise.Title}\" to week {week}, once with every stimulated contraction",
                [new CellChange(WithStim(week), PairedWork.For(exercise, stim, Library.Regimens.GetValueOrDefault(Plan.Regimen)))]);
    }

    /// <summary>The day on which a plan is judged: its first open day, or the latest assessment where that is later.</summary>
    internal static DateOnly AsOf(Case patient, PlanRevision plan) =>
        patient.Assessments.IsEmpty || patient.Assessments[^1].Date < plan.OpenFrom ? plan.OpenFrom : patient.Assessments[^1].Date;
}
