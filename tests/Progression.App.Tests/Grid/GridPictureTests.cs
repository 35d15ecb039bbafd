using Progression.App.Grid;
using Progression.App.Pictures;

namespace Progression.App.Tests.Grid;

public sealed class GridPictureTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(200, 60)]
    public void The_grid_looks_as_reviewed(int width, int height) =>
        Snapshot.Match(Draw(Sample.At(Sample.State, "stim", 3), width, height).Text, $"grid-{width}x{height}");

    [Fact]
    public void The_printed_grid_looks_as_reviewed() => Snapshot.Match(GridSheet.Whole(Sample.State, 100).Text, "printed-100");

    [Fact]
    public void The_other_pages_look_as_reviewed_at_the_smallest_size()
    {
        GridState state = Sample.Press(Sample.At(Sample.State, "quads-strength", 3), "x");
        Snapshot.Match(Draw(state, 80, 24).Text, "reason-80x24");
        state = Sample.Press(Sample.Type(state, "rest week after a fall"), "Enter");
        Snapshot.Match(Draw(state, 80, 24).Text, "pinned-80x24");
        Snapshot.Match(Draw(Sample.Press(state, "f"), 80, 24).Text, "findings-80x24");
        Snapshot.Match(Draw(Sample.Press(state, "w"), 80, 24).Text, "why-80x24");
        Snapshot.Match(Draw(Sample.Press(state, "?"), 80, 24).Text, "help-80x24");
        Snapshot.Match(Draw(Sample.Press(Sample.Type(Sample.Press(state, "Enter"), "quad-set 99x1"), "Enter"), 80, 24).Text, "refused-80x24");
    }

    public static Picture Draw(GridState state, int width, int height) => GridScreen.Definition.Draw(state, new(width, height)).Fit(new(width, height));
}
