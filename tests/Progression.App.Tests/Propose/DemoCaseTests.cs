using Progression.App.Chart;
using Progression.App.Compare;
using Progression.App.Pictures;
using Progression.App.Propose;
using Progression.App.Stores;
using Progression.App.Tests.Pictures;
using Progression.App.Tests.Stores;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Propose;

/// <summary>The three screens on a whole case of the demo, with the shipped library and every rule.</summary>
public sealed class DemoCaseTests
{
    private static readonly PictureSize[] Windows = [new(80, 24), new(200, 50)];
    private static readonly (Case Case, PlanRevision Plan, ClinicalLibrary Library, DateOnly Today) Demo = OfStore();

    [Fact]
    public void All_visits_of_the_showcase_can_be_compared()
    {
        CompareState state = CompareState.Open(Demo.Case, Found.Comparison);
        Assert.NotEmpty(state.Comparison.Rows);
        Assert.All(Enumerable.Range(0, state.Comparison.Rows.Length), row => AnySize.Fits(size => ComparePicture.Draw(state.To(row), size), Windows));
    }

    [Fact]
    public void Every_measure_of_the_showcase_can_be_charted()
    {
        ChartState state = ChartState.Open(ChartDesk.For(Demo.Case, Demo.Library, (Found.Comparison, Found.Forecasts), Demo.Today), MeasureIds.Lag);
        Assert.Equal(MeasureIds.Lag, state.Subject!.Measure.Id);
        Assert.All(Enumerable.Range(0, state.Subjects.Length), index => AnySize.Fits(size => ChartPicture.Draw(state.To(index), size), Windows));
        Assert.All(Enumerable.Range(0, state.Subjects.Length), index => AnySize.Fits(size => ChartPicture.Draw(state.To(index) with { IsWhole = true, Mode = ChartMode.Numbers }, size), Windows));
    }

    [Fact]
    public void The_proposal_for_the_showcase_can_be_read_and_what_it_asks_to_save_can_be_made()
    {
        ProposeState state = ProposeState.Open(ProposeDesk.Of(Demo.Case, Found, Demo.Library));
        foreach (ProposeMode mode in Enum.GetValues<ProposeMode>().Except([ProposeMode.Reason]))
        {
            AnySize.Fits(size => ProposePicture.Draw(state with { Mode = mode }, size), Windows);
        }

        ProposeState all = Taking.All(state);
        Assert.NotNull(Found.Proposal.Value!.Accept(all.Taken, all.Taken.IsEmpty ? "Nothing can be taken." : null).Decision);
    }

    private static Reassessment Found { get; } = Reassessment.Of(Demo.Plan, Demo.Case, Demo.Library);

    private static (Case, PlanRevision, ClinicalLibrary, DateOnly) OfStore()
    {
        using TempStore temp = new();
        OpenStore store = temp.Open(temp.Demo);
        Assert.True(DemoStore.Prepare(store, fresh: false).Ready);
        OpenedCase opened = store.Book.Open(DemoStore.Showcase)!;
        return (opened.Case, opened.Plan!, store.Library, store.Today);
    }
}
