using Progression.App.Grid;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

public sealed class GridChangesTests
{
    [Fact]
    public void Goes_over_the_cells_that_differ_from_the_saved_plan_and_round()
    {
        Assert.Equal("No cell differs from the saved plan.", Sample.Press(Sample.State, ".").Status);
        GridState state = Sample.Press(Sample.Type(Sample.Press(Sample.At(Sample.State, "flexion", 5), "Enter"), "95"), "Enter");
        state = Sample.Press(Sample.At(state, "bend", 3), "x");
        GridState first = Sample.Press(Sample.At(state, "flexion", 1), ".");
        Assert.Equal((new CellAddress("flexion", 5), "Changed cell 1 of 2: was 110 deg, is 95 deg, pinned."), (first.Cursor, first.Status));
        GridState second = Sample.Press(first, ".");
        Assert.Equal((new CellAddress("bend", 3), "Changed cell 2 of 2: was heel-slide 3x11 2/day, is empty, pinned."), (second.Cursor, second.Status));
        Assert.Equal(first.Cursor, Sample.Press(second, ".").Cursor);
        Assert.Equal(second.Cursor, Sample.Press(first, ",").Cursor);
    }

    [Fact]
    public void Can_compare_with_any_revision()
    {
        PlanRevision signed = PlanEdit.Set(Sample.Plan(), new("walking", 4), null);
        GridState there = GridChanges.To(Sample.State, signed, forward: true);
        Assert.Equal(new CellAddress("walking", 4), there.Cursor);
        Assert.Equal("Changed cell 1 of 1: was empty, pinned, is walk 20 min 2/day.", there.Status);
    }
}
