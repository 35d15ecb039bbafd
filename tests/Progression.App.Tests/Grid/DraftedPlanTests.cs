using System.Collections.Immutable;
using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Library;

namespace Progression.App.Tests.Grid;

/// <summary>The grid with the shipped library, a drafted plan and every rule of the program.</summary>
public sealed class DraftedPlanTests
{
    private static readonly ClinicalLibrary Library = LibraryReader.Default();
    private static readonly DateOnly Operated = new(2026, 11, 2);

    [Theory]
    [InlineData(6, 80, 24)]
    [InlineData(6, 120, 40)]
    [InlineData(26, 80, 24)]
    [InlineData(26, 200, 60)]
    [InlineData(1, 80, 24)]
    public void Every_cell_can_be_reached_drawn_and_explained(int weeks, int width, int height)
    {
        GridState state = Drafted(weeks);
        for (int lane = 0; lane < state.Plan.Lanes.Length; lane++)
        {
            for (int week = 1; week <= weeks; week += 5)
            {
                state = GridMoves.To(state, lane, week);
                Picture picture = GridPictureTests.Draw(state, width, height);
                Assert.Equal(height, picture.Rows.Length);
                Assert.All(picture.Rows, row => Assert.Equal(width, row.Width));
                Assert.InRange(picture.Caret!.Row, 3, height - 3);
                Assert.Contains($"week {week}", state.Answer.Heading, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(132)]
    [InlineData(300)]
    public void The_text_grid_keeps_to_its_width_and_shows_every_week(int width)
    {
        string text = GridText.Of(Desk(), Drafted(26).Plan, width);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= width, line));
        Assert.All(Enumerable.Range(1, 26), week => Assert.Matches($@"│week {week}\b", text));
        Assert.All(GridText.Of(Desk(), Drafted(6).Plan, width, sevenBit: true), letter => Assert.InRange(letter, '\n', '~'));
    }

    [Fact]
    public void Where_stim_is_barred_the_grid_says_so_in_place_of_the_stim_band()
    {
        Case unscreened = Patient() with { Screening = Screening.NotDone };
        PlanDesk desk = PlanDesk.For(unscreened, Library, new DateOnly(2026, 11, 6));
        GridState state = GridState.Open(desk, PlanDraft.Draft(unscreened, Library).Value!);

        string[] rows = [.. GridPictureTests.Draw(state, 80, 24).Rows.Select(row => row.Text)];

        int barred = Array.FindIndex(rows, row => row.StartsWith("STIM X barred. No stim:", StringComparison.Ordinal));
        Assert.StartsWith("ACTIVE WORK ", rows[barred + 1], StringComparison.Ordinal);
        Assert.DoesNotContain("barred", GridText.Of(Desk(), Drafted(6).Plan, 80), StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_editor_prefills_is_read_back_as_the_same_content()
    {
        GridState state = Drafted(6);
        foreach ((CellAddress address, PlanCell cell) in state.Plan.Cells)
        {
            Lane lane = state.Plan.LaneOf(address.Lane)!;
            Assert.Equal(cell.Content, CellNotation.Read(lane, CellNotation.Text(lane, cell.Content, Library), Library).Value!.Content);
        }
    }

    private static PlanDesk Desk() => PlanDesk.For(Patient(), Library, new DateOnly(2027, 6, 1));

    private static GridState Drafted(int weeks) =>
        GridState.Open(Desk(), PlanDraft.Draft(Patient(), Library, new DraftOrder { Weeks = weeks }).Value!);

    private static Case Patient() => new()
    {
        Code = CaseCode.Parse("K-014")!,
        Operation = new(Operated, Side.Right, "total knee replacement"),
        WeightBearing = WeightBearing.AsTolerated,
        Screening = new(Operated.AddDays(1), Library.Screening.ToImmutableSortedDictionary(
            item => item.Id, item => new ScreeningAnswer(item.Id, Answer.No, null), StringComparer.Ordinal)),
        Assessments =
        [
            new(
                Operated.AddDays(3),
                new[] { new Reading(MeasureIds.FlexionActive, 55), new Reading(MeasureIds.ExtensionActive, 20), new Reading(MeasureIds.ExtensionPassive, 8) }
                    .ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal),
                new Dictionary<string, Answer> { [Signs.ContractionVisible] = Answer.Yes, [Signs.SensationNormal] = Answer.Yes }
                    .ToImmutableSortedDictionary(StringComparer.Ordinal)),
        ],
    };
}
