using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

/// <summary>Two people changed one plan: both sides are shown, and nothing is lost.</summary>
public sealed class GridConflictsTests
{
    private static readonly CellAddress Third = new("bend", 3);
    private static readonly CellAddress Fourth = new("bend", 4);
    private static readonly CellAddress Walk = new("walking", 5);

    [Fact]
    public void What_only_one_changed_is_taken_unasked_and_what_both_changed_must_be_chosen()
    {
        GridState state = SampleReview.Conflicted();
        Assert.Equal([(Third, ForkSide.Both), (Fourth, ForkSide.Mine), (Walk, ForkSide.Theirs)], GridConflicts.Cells(state).Select(cell => (cell.Address, cell.Side)));
        Assert.Equal([null, true, false], GridConflicts.Cells(state).Select(cell => GridConflicts.IsMine(state.Conflict!, cell)));
        Assert.Equal("1 cell was changed by both of you: Space chooses for each.", Sample.Press(state, "Ctrl+S").Status);
    }

    [Fact]
    public void Mine_is_put_into_theirs_and_saved_over_it()
    {
        PlanRevision merged = Merged(Sample.Press(SampleReview.Conflicted(), "Space"));
        Assert.Null(merged.ContentAt("bend", 3));
        Assert.Null(merged.ContentAt("bend", 4));
        Assert.Equal("snow", merged.At(Walk)!.Pin!.Reason);
    }

    [Fact]
    public void Theirs_stays_where_it_is_chosen()
    {
        PlanRevision merged = Merged(Sample.Press(SampleReview.Conflicted(), "Space", "Space"));
        Assert.Equal(Sample.Plan().ContentAt("bend", 2), merged.ContentAt("bend", 3));
        Assert.Null(merged.ContentAt("bend", 4));
        Assert.Same(SampleReviewTheirs(out GridState all), Merged(all));
    }

    [Fact]
    public void Leaving_keeps_what_was_changed()
    {
        GridState left = Sample.Press(SampleReview.Conflicted(), "Esc");
        Assert.True(left.IsUnsaved);
        Assert.Null(left.Plan.ContentAt("bend", 4));
        Assert.Equal((GridMode.Grid, null), (left.Mode, left.Conflict));
    }

    [Fact]
    public void Looks_as_reviewed()
    {
        foreach (PictureSize size in new PictureSize[] { new(80, 24), new(200, 60) })
        {
            Faces.Match(GridScreen.Definition.Draw(SampleReview.Conflicted(), size).Fit(size), $"conflict-{size.Width}x{size.Height}");
        }
    }

    private static PlanRevision SampleReviewTheirs(out GridState all)
    {
        all = Sample.Press(SampleReview.Conflicted(), "t");
        return all.Conflict!.Theirs;
    }

    private static PlanRevision Merged(GridState state) => Assert.IsType<SaveMerged>(Assert.Single(GridScreen.Definition.Press(state, "Ctrl+S").Effects)).Plan;
}
