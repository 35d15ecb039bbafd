using Progression.Core.Plots;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Plots;

/// <summary>The plots are counted by hand; no source is needed.</summary>
public sealed class DosePlotTests
{
    // Week 2: 5 x 2 x 15 = 150 stimulated, the same along with stim and 2 x 10 x 3 x 7 = 420 quad sets: 570 voluntary.
    private static readonly PlanRevision Plan = Grid.Empty().Put("stim", 2, "high 15x2 5d").Put("with-stim", 2, "quad-set-with-stim 1x15 2/day 5d")
        .Put("quads-strength", 2, "quad-set 2x10 hold 5 s 3/day");

    [Fact]
    public void Stimulated_and_voluntary_contractions_stand_side_by_side()
    {
        PlotPart.Columns[] columns = Columns(Of());

        Assert.Equal([(PlotFilling.Grey, 150d), (PlotFilling.Hatched, 570d)], columns.Where(one => !one.Bars.IsEmpty).Select(one => (one.Filling, one.Bars.Single().Y)));
        Assert.True(columns[0].Bars[0].X + (columns[0].Width / 2) <= columns[1].Bars[0].X - (columns[1].Width / 2) + 1e-9);
    }

    [Fact] // 15 + 12 stimulated; 10 + 8 quad sets and 15 along with stim; the heel raises are no work of the quadriceps, the set without a count is not known.
    public void What_was_logged_stands_in_the_bar_of_its_plan()
    {
        SessionLog first = new(Knee.Day(8), 15) { Exercises = [Sets("quad-set", 10, 8, null), Sets("heel-raise", 20)] };
        PlotPart.Columns[] columns = Columns(Of(first, new SessionLog(Knee.Day(9), 12) { Exercises = [Sets("quad-set-with-stim", 15)] }));

        Assert.Equal([(columns[0].Bars[0].X, 27d), (columns[1].Bars[0].X, 33d)], columns[2..].Select(one => (one.Bars.Single().X, one.Bars.Single().Y)));
        Assert.All(columns[2..], one => Assert.Equal(PlotFilling.Black, one.Filling));
    }

    [Fact]
    public void Its_words_tell_every_week_and_what_is_not_known()
    {
        string words = Of(new SessionLog(Knee.Day(8), 15)).Words;

        Assert.Contains("Week 1: 0 stimulated and 0 voluntary planned; nothing logged.", words, StringComparison.Ordinal);
        Assert.Contains("Week 2: 150 stimulated and 570 voluntary planned; 15 stimulated logged.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_plan_has_axes_and_no_bar()
    {
        PlotContent content = DosePlot.Of(Grid.Empty(), Knee.Well.Case, Knee.Library);

        Assert.All(Columns(content), one => Assert.Empty(one.Bars));
        Assert.Equal([0, 1], content.Up.Ticks.Take(2));
    }

    private static PlotContent Of(params SessionLog[] logs) => DosePlot.Of(Plan, Knee.Well.Case with { Sessions = [.. logs] }, Knee.Library);

    private static PlotPart.Columns[] Columns(PlotContent content) => [.. content.Parts.OfType<PlotPart.Columns>()];

    private static ExerciseDone Sets(string exercise, params int?[] repetitions) => new(exercise, [.. repetitions.Select(count => new SetDone(count, null))]);
}
