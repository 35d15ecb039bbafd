using Progression.App.Grid;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

public sealed class CellWordsTests
{
    [Fact]
    public void A_dose_that_is_cut_says_so_and_loses_its_least_telling_part_first() => Assert.Equal(
        [
            "3x10 hold 5 s load 2 kg 2/day mon wed fri",
            "3x10 5s 2/d 3d 2 kg",
            "3x10 5s 2/d 3d…",
            "3x10 5s 2/d…",
            "3x10 5s…",
            "3x10…",
        ],
        Words("quads-strength", "leg-raise 3x10 hold 5 s load 2 kg 2/day mon wed fri").Lower);

    [Fact]
    public void A_dose_in_minutes_is_told_in_minutes() =>
        Assert.Equal(["15 min 2/day", "15min 2/d", "15min…"], Words("walking", "walk 15 min 2/day").Lower);

    [Fact]
    public void Stim_tells_its_rung_above_and_its_dose_below()
    {
        CellWords words = Words(Lanes.Stim, "reduced 12x2 mon wed fri");
        Assert.Equal(["Reduced", "Reduced"], words.Upper);
        Assert.Equal(["12x2 mon wed fri", "12x2 3d", "12x2…"], words.Lower);
        Assert.Equal("Reduced 12x2 mon wed fri", words.Whole[0]);
    }

    [Fact]
    public void A_stopped_week_shows_no_dose() => Assert.Equal([""], Words(Lanes.Stim, "stopped").Lower);

    [Fact]
    public void A_goal_is_never_rounded_and_shows_what_was_measured_where_there_is_room() =>
        Assert.Equal(["94.5 deg, measured 78", "94.5 (78)", "94.5(78)", "94.5…"], Words("flexion", "94.5").Whole);

    [Fact]
    public void A_goal_without_a_reading_shows_no_reading() => Assert.Equal(["4 deg", "4"], CellWords.Of(Sample.State, Lane("extension"), 4).Whole);

    [Fact]
    public void What_was_measured_shows_even_without_a_goal() => Assert.Equal(["measured 8", "(8)"], CellWords.Of(Sample.State, Lane("lag"), 3).Whole);

    [Fact]
    public void An_empty_cell_is_empty_and_not_zero() => Assert.Equal([""], CellWords.Of(Sample.State, Lane("lag"), 5).Whole);

    private static CellWords Words(string lane, string text)
    {
        GridState typed = Sample.Type(Sample.Press(Sample.At(Sample.State, lane, 3), "Enter"), text);
        return CellWords.Of(Sample.Press(typed, "Enter"), Lane(lane), 3);
    }

    private static Lane Lane(string id) => Sample.State.Plan.LaneOf(id)!;
}
