using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Adherence;

/// <summary>
/// How far a person kept to the plan: the one definition there is. Counted are the post-op weeks that the plan fills and that are over; a week of which nothing
/// is logged is not known, never zero. Exercises are not counted, because those done at home are logged by nobody: for them stands what the person says.
/// </summary>
/// <remarks>Common practice, no source: sessions done of sessions prescribed.</remarks>
public sealed record PlanAdherence
{
    /// <summary>The definition, as it is printed beside the figures.</summary>
    public const string Definition =
        "Adherence is what was logged of what was planned, in the planned weeks that are over and of which anything is logged; a week counts up to its plan, "
        + "so more in one does not make up for less in another. Weeks without a log are not known: the share with them counted as nothing is told beside it. "
        + "A log may hold more than one session of a day, so contractions are the surer count. Home work is what the person said.";

    /// <summary>Planned weeks that are over.</summary>
    public required int WeeksOver { get; init; }

    /// <summary>Those of which anything is logged.</summary>
    public required int WeeksLogged { get; init; }

    /// <summary>Stim sessions.</summary>
    public required DoneShare StimSessions { get; init; }

    /// <summary>Stimulated contractions.</summary>
    public required DoneShare Contractions { get; init; }

    /// <summary>Share of the home work done, as the person said: the mean over the weeks in which somebody asked; null when nobody did.</summary>
    public required Percentage? HomeWork { get; init; }

    /// <summary>The adherence of a case to its plan.</summary>
    /// <param name="plan">The plan as it stands; its past weeks are what was planned for them.</param>
    /// <param name="patient">The case with its logs.</param>
    /// <param name="library">Adds up the plan.</param>
    /// <param name="today">A week is over when its last day lies before this day.</param>
    public static PlanAdherence Of(PlanRevision plan, Case patient, ClinicalLibrary library, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        ImmutableArray<WeekDone> over =
            [.. DoneFigures.Of(plan, patient, library).Where(week => week.Week >= plan.FirstWeek && PostOpWeek.End(plan.Operation, week.Week) < today)];
        ImmutableArray<double> told = [.. over.Select(week => week.Adherence).OfType<Percentage>().Select(share => share.Percent)];
        return new PlanAdherence
        {
            WeeksOver = over.Length,
            WeeksLogged = over.Count(week => week.IsLogged),
            StimSessions = Sum(over, week => DoneShare.OfWeek(week.StimSessionsPlanned, week.StimSessionsDone)),
            Contractions = Sum(over, week => DoneShare.OfWeek(week.ContractionsPlanned, week.ContractionsDone)),
            HomeWork = told.IsEmpty ? null : Percentage.FromPercent(told.Average()),
        };
    }

    private static DoneShare Sum(ImmutableArray<WeekDone> weeks, Func<WeekDone, DoneShare> of) => weeks.Aggregate(DoneShare.Nothing, (sum, week) => sum.Plus(of(week)));
}
