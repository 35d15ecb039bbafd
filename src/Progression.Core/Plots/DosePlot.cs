using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Plots;

/// <summary>
/// Stim and active work side by side: stimulated and voluntary quadriceps contractions of each week as the plan has them, and in each bar a narrow one with
/// what was logged. A week without a log has no narrow bar; what was done at home and logged by nobody is in none.
/// </summary>
public static class DosePlot
{
    private const double Wide = 0.36;
    private const double Narrow = 0.12;
    private const int Labels = 8;

    /// <summary>The plot.</summary>
    public static PlotContent Of(PlanRevision plan, Case patient, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<(WeekFigures Plan, WeekDone Done)> weeks = [.. PlanFigures.Of(plan, library).Zip(DoneFigures.Of(plan, patient, library))];
        double most = weeks.SelectMany(week => new[] { week.Plan.StimContractions, week.Plan.Quads.Contractions, week.Done.ContractionsDone ?? 0, week.Done.QuadsDone ?? 0 }).Append(1).Max();
        double step = RoundStep.NotUnder(most / Labels);
        return new PlotContent
        {
            Title = $"Stimulated and voluntary quadriceps contractions by week, {plan.Code}",
            Words = Words(plan, weeks),
            Across = new PlotAxis("Post-op week (week 1 begins with the operation)", 0.4, plan.Weeks + 0.6, plan.Weeks > 14 ? 2 : 1),
            Up = new PlotAxis("Contractions in the week", 0, step * Math.Ceiling(most * 1.04 / step), Math.Max(1, step)),
            Parts =
            [
                Columns(weeks, Wide, -Wide / 2, week => week.Plan.StimContractions) with { Legend = "stimulated, planned" },
                Columns(weeks, Wide, Wide / 2, week => week.Plan.Quads.Contractions) with { Filling = PlotFilling.Hatched, Legend = "voluntary, planned" },
                Columns(weeks, Narrow, -Wide / 2, week => week.Done.ContractionsDone) with { Filling = PlotFilling.Black, Legend = "logged" },
                Columns(weeks, Narrow, Wide / 2, week => week.Done.QuadsDone) with { Filling = PlotFilling.Black },
            ],
            Note = "Voluntary: quadriceps repetitions, those made along with stim included. Work at home that nobody logged is not among the logged.",
        };
    }

    private static PlotPart.Columns Columns(ImmutableArray<(WeekFigures Plan, WeekDone Done)> weeks, double width, double shift, Func<(WeekFigures Plan, WeekDone Done), int?> of) =>
        new([.. from week in weeks let count = of(week) where count > 0 select new PlotPoint(week.Plan.Week + shift, count.Value)], width, PlotFilling.Grey);

    private static string Words(PlanRevision plan, ImmutableArray<(WeekFigures Plan, WeekDone Done)> weeks) =>
        $"Quadriceps contractions of {plan.Code} by post-op week. " + string.Join(" ", weeks.Select(week =>
            $"Week {week.Plan.Week}: {week.Plan.StimContractions} stimulated and {week.Plan.Quads.Contractions} voluntary planned; {Logged(week.Done)}."));

    private static string Logged(WeekDone done) => (done.ContractionsDone, done.QuadsDone) switch
    {
        (null, _) => "nothing logged",
        ({ } stim, null) => $"{stim} stimulated logged",
        ({ } stim, { } own) => $"{stim} stimulated and {own} voluntary logged",
    };
}
