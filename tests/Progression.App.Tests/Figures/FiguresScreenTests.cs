using Progression.App.Actions;
using Progression.App.Figures;
using Progression.App.Pictures;
using Progression.App.Plain;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Actions;
using Progression.App.Tests.Stores;
using Progression.Core.Clinic;

namespace Progression.App.Tests.Figures;

/// <summary>The clinic's figures by keys, on a real store, on 25 November 2026.</summary>
public sealed class FiguresScreenTests : IDisposable
{
    private readonly TempStore _temp = new();

    public FiguresScreenTests() => Assert.True(DemoStore.Prepare(_temp.Open(_temp.Demo), fresh: false).Ready);

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void One_key_in_the_list_shows_them()
    {
        ScreenStack screens = List(_temp.Open(_temp.Demo));
        Keys(screens, "c");

        Assert.Equal("Clinic figures", screens.Top!.Where.Screen);
        Assert.Contains("Bends to 80 deg                           12    11  1.6 (0.7 to 1.7)      at least 82 %", screens.Draw(new(120, 40)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Groups_go_round_and_the_cases_are_not_read_again()
    {
        ScreenStack screens = List(_temp.Open(_temp.Demo));
        Keys(screens, "c f");
        Assert.Equal(["all", "strong-15-twice-daily"], State(screens).Summary.Groups.Select(group => group.Name));
        Keys(screens, "f");
        Assert.Equal(["all", "2026"], State(screens).Summary.Groups.Select(group => group.Name));
        Keys(screens, "f");
        Assert.Single(State(screens).Summary.Groups);
    }

    [Fact]
    public void The_curve_of_a_goal_is_written_as_a_picture_and_never_over_another()
    {
        ScreenStack screens = List(_temp.Open(_temp.Demo));
        Keys(screens, "c n Enter");

        string path = Path.Combine(_temp.Demo, "papers", "clinic-flexion-week-1-2026-11-25.svg");
        Assert.Equal($"Written: {path}", screens.Top!.Told);
        Assert.Contains("Bends to 80 deg: weeks from the operation", File.ReadAllText(path), StringComparison.Ordinal);
        Keys(screens, "Enter");
        Assert.StartsWith("Not written: ", screens.Top.Told, StringComparison.Ordinal);
    }

    [Fact] // The last goals of the shipped library are of measures that nobody in the demo was measured by.
    public void A_curve_that_is_withheld_is_not_drawn_and_says_why()
    {
        ScreenStack screens = List(_temp.Open(_temp.Demo));
        Keys(screens, "c p Enter");

        Assert.Equal("Not told: fewer than 5 people are behind it, or behind a group that could be reckoned from it.", screens.Top!.Told);
    }

    [Fact]
    public void A_therapist_of_a_clinic_stays_in_the_list_and_hears_who_may()
    {
        ScreenStack screens = List(_temp.Open(_temp.Demo, person: new ClinicPerson("1002", "theo", [ClinicRole.Therapist])));
        Keys(screens, "c");

        Assert.StartsWith("To see the clinic's figures takes a supervisor or lead", screens.Top!.Told, StringComparison.Ordinal);
        Assert.Equal("Demo scenario: invented cases", screens.Top.Where.Screen);
    }

    [Fact]
    public void It_can_be_said_in_line_mode()
    {
        PlainTalk talk = new(List(_temp.Open(_temp.Demo)));
        talk.Begin();

        Assert.Contains(talk.Hear("clinic's figures"), line => line.Contains("All cases on 2026-11-25: 12 cases", StringComparison.Ordinal));
    }

    [Fact]
    public void Its_keys_are_shown_and_told()
    {
        ScreenStack screens = List(_temp.Open(_temp.Demo));
        Keys(screens, "c");
        FiguresState page = State(screens);

        KeyTableRules.Hold(FiguresActions.Table);
        Assert.All([page, page with { Mode = FiguresMode.Help }], state => KeyTableRules.HintsFit(FiguresActions.Table, state));
        AnyKeys.Hold(FiguresScreen.Definition, page);
    }

    [Theory]
    [InlineData("figures", "c")]
    [InlineData("figures-groups", "c f PgDn PgDn")]
    [InlineData("figures-help", "c ?")]
    public void Looks_as_reviewed(string name, string keys)
    {
        ScreenStack screens = List(_temp.Open(_temp.Demo));
        Keys(screens, keys);
        foreach (PictureSize size in new PictureSize[] { new(80, 24), new(200, 60) })
        {
            Faces.Match(screens.Draw(size).Fit(size), $"{name}-{size.Width}x{size.Height}");
        }
    }

    private static ScreenStack List(OpenStore store) => new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Open());

    private static FiguresState State(ScreenStack screens) => Assert.IsType<Frame<FiguresState>>(screens.Top).State;

    private static void Keys(ScreenStack screens, string keys)
    {
        foreach (string key in keys.Split(' '))
        {
            screens.Press(key, key.Length == 1 ? key : null);
        }
    }
}
