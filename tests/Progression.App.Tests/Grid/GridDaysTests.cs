using System.Collections.Immutable;
using Progression.App.Grid;
using Progression.App.Tests.Pictures;
using Progression.Core.People;

namespace Progression.App.Tests.Grid;

public sealed class GridDaysTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void The_days_of_a_week_look_as_reviewed(int width, int height) =>
        Snapshot.Match(GridPictureTests.Draw(Sample.Press(Logged(), "d"), width, height).Text, $"days-{width}x{height}");

    [Fact]
    public void The_days_fit_windows_of_all_kinds() => AnySize.Fits(size => GridPictureTests.Draw(Sample.Press(Logged(), "d"), size.Width, size.Height));

    [Fact]
    public void Weeks_turn_and_esc_goes_back_to_that_week()
    {
        GridState days = Sample.Press(Sample.At(Sample.State, "bend", 3), "d", "Right", "Right", "Left");
        Assert.Equal((GridMode.Days, 4), (days.Mode, days.Week));
        Assert.Equal((GridMode.Days, 3), (Sample.Press(days, "t").Mode, Sample.Press(days, "t").Week));
        Assert.Equal((GridMode.Grid, 4, "bend"), (Sample.Press(days, "Esc").Mode, Sample.Press(days, "Esc").Week, Sample.Press(days, "Esc").Lane.Id));
    }

    [Fact]
    public void Says_done_of_due_and_not_known_where_nothing_is_logged()
    {
        string[] stim = Cells("High volume, 15 contractions");
        // Mon 16 with two sessions of stim, Tue 17 with nothing logged, Wed 18 is today.
        Assert.Equal(["2/2", "-/2", "2x", "2x", "2x", "2x", "2x"], stim);
        Assert.Equal(["1/2", "-/2", "2x", "2x", "2x", "2x", "2x"], Cells("Heel slide"));
    }

    [Fact]
    public void A_day_before_the_plan_has_nothing_due()
    {
        string[] stim = Cells("High volume, 15 contractions", week: 2);
        Assert.Equal(["·", "-/2", "-/2", "-/2", "-/2", "-/2", "-/2"], stim);
    }

    [Fact]
    public void A_session_without_exercises_says_nothing_of_them()
    {
        GridState state = Sample.State with { Desk = Sample.Desk with { Case = Sample.Desk.Case with { Sessions = [new(new(2026, 11, 16), 15)] } } };
        string[] rows = GridPictureTests.Draw(Sample.Press(state, "d"), 80, 24).Text.Split('\n');
        Assert.Contains("│1/2", rows.First(row => row.StartsWith("High volume", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("│-/2", rows.First(row => row.StartsWith("Heel slide", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    private static string[] Cells(string title, int week = 3)
    {
        string row = GridPictureTests.Draw(Sample.Press(Sample.At(Logged(), "bend", week), "d"), 80, 24).Text.Split('\n').First(line => line.StartsWith(title, StringComparison.Ordinal));
        return [.. row.Split('│').Skip(1).Select(cell => cell.Trim())];
    }

    private static GridState Logged()
    {
        DateOnly monday = new(2026, 11, 16);
        ImmutableArray<SessionLog> sessions =
        [
            new(monday, 15) { Exercises = [new ExerciseDone("heel-slide", [new SetDone(10, null)])] },
            new(monday, 15),
        ];
        return GridState.Open(Sample.Desk with { Case = Sample.Desk.Case with { Sessions = sessions } }, Sample.Plan());
    }
}
