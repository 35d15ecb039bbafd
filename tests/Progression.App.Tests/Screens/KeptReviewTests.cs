using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.Clinic;
using Progression.Core.Reviews;

namespace Progression.App.Tests.Screens;

/// <summary>What is being said about a plan when a session is killed.</summary>
public sealed class KeptReviewTests : IDisposable
{
    private static readonly ClinicPerson Anna = new("1001", "anna", [ClinicRole.Therapist]);
    private static readonly ClinicPerson Sue = new("1003", "sue", [ClinicRole.Supervisor]);
    private readonly TempStore _temp = new();

    public KeptReviewTests()
    {
        Assert.True(DemoStore.Prepare(_temp.Open(_temp.Demo), fresh: false).Ready);
        Keys(Plan(Anna, ended: false), "o a Enter");
    }

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData("g End C", GridMode.Comment, "comment on Flexion, week 6")]
    [InlineData("o c", GridMode.Remark, "comment on the plan")]
    [InlineData("o r", GridMode.Return, "why the plan is returned")]
    [InlineData("o s Down", GridMode.Sign, "with the signature")]
    public void What_is_half_said_is_offered_compared_and_goes_on_where_it_was(string keys, GridMode mode, string place)
    {
        ScreenStack before = Plan(Sue, ended: true);
        Keys(before, keys);
        before.Paste("not past 90");
        before.Keep();

        ScreenStack after = Plan(Sue, ended: false);
        DraftOffer offer = Assert.Single(Grid(after).Offers);
        Assert.Equal((place, "not past 90"), (Assert.Single(offer.Lines).Place, offer.Lines[0].Draft));
        Keys(after, "r");
        Assert.Equal((mode, "not past 90", "As it was left."), (Grid(after).Mode, Grid(after).Entry!.Line.Text, Grid(after).Status));
        Assert.Equal(mode == GridMode.Sign ? SignatureMeaning.AgreedWithComments : SignatureMeaning.Agreed, Grid(after).Review!.Meaning);
        Assert.Equal((SignatureState.Unsigned, "anna"), (Grid(after).Review!.Standing.State, Grid(after).Review!.Standing.Request!.By.Name));
        Keys(after, "Esc");
        after.Keep();
        Assert.Empty(Files());
    }

    [Fact]
    public void A_signature_killed_at_the_last_question_is_asked_for_again_and_signs_only_then()
    {
        ScreenStack before = Plan(Sue, ended: true);
        Keys(before, "o s");
        before.Paste("fine");
        Keys(before, "Enter");
        Assert.Equal(GridMode.Confirm, Grid(before).Mode);
        before.Keep();

        ScreenStack after = Plan(Sue, ended: false);
        Keys(after, "r");
        Assert.Equal((GridMode.Sign, "fine"), (Grid(after).Mode, Grid(after).Entry!.Line.Text));
        Keys(after, "Enter y");
        Assert.StartsWith("Signed by sue", after.Top!.Told, StringComparison.Ordinal);
        after.Keep();
        Assert.Empty(Files());
    }

    [Fact]
    public void Words_for_a_step_that_cannot_be_done_any_more_are_told()
    {
        ScreenStack before = Plan(Sue, ended: true);
        Keys(before, "o r");
        before.Paste("less in week 5");
        before.Keep();
        Keys(Plan(Anna, ended: false), "o b");

        ScreenStack after = Plan(Sue, ended: false);
        Keys(after, "r");
        Assert.Equal((GridMode.Grid, "It cannot be said here any more; this was typed: less in week 5"), (Grid(after).Mode, Grid(after).Status));
    }

    private ScreenStack Plan(ClinicPerson person, bool ended)
    {
        OpenStore store = _temp.Open(_temp.Demo, person: person, ended: ended);
        return new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Plan(DemoStore.Showcase).Frame!);
    }

    private string[] Files() => Directory.Exists(Path.Combine(_temp.Demo, "drafts")) ? Directory.GetFiles(Path.Combine(_temp.Demo, "drafts")) : [];

    private static GridState Grid(ScreenStack screens) => ((Frame<GridState>)screens.Top!).State;

    private static void Keys(ScreenStack screens, string keys)
    {
        foreach (string key in keys.Split(' '))
        {
            screens.Press(key, key.Length == 1 ? key : null);
        }
    }
}
