using System.Collections.Immutable;
using Bogus;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Plans;

public sealed class CellNotationTests
{
    private static readonly PlanRevision Plan = Grid.Empty();

    [Theory]
    [InlineData("stim", "high 15x2 daily")]
    [InlineData("stim", "familiarise 1x1 sun")]
    [InlineData("stim", "low 600x6 mon wed fri")]
    [InlineData("stim", "stopped")]
    [InlineData("quads-strength", "straight-leg-raise 3x10 hold 5 s load 2 kg 2/day mon wed fri")]
    [InlineData("quads-strength", "straight-leg-raise 20x200 hold 600 s load 2.5 kg 12/day")]
    [InlineData("quads-strength", "machine-extension 3x8 load 70 % mon wed fri")]
    [InlineData("quads-strength", "long-arc-full 3x10 hold 0.5 s load effort 13")]
    [InlineData("walking", "walk-with-aid 5 min 3/day")]
    [InlineData("walking", "brisk-walk 240 min none")]
    [InlineData("flexion", "95 deg")]
    [InlineData("extension", "-3 deg")]
    [InlineData("strength", "48.2 %")]
    [InlineData("skills", "Stands up without hands; walks with one stick")]
    public void What_is_written_is_read_back(string lane, string text)
    {
        CellContent? content = Read(lane, text).Value?.Content;

        Assert.NotNull(content);
        Assert.Equal(text, CellNotation.Text(Plan.LaneOf(lane)!, content, Knee.Library));
    }

    [Theory]
    [InlineData("stim", " HIGH  15X2 ", "high 15x2 daily")]
    [InlineData("stim", "high 15x2 3d", "high 15x2 mon wed fri")]
    [InlineData("stim", "high 15x2 fri,mon", "high 15x2 mon fri")]
    [InlineData("quads-strength", "quad-set 2x10 hold 5s 2/day", "quad-set 2x10 hold 5 s 2/day")]
    [InlineData("quads-strength", "quad-set 2x10 mon hold 5 s wed", "quad-set 2x10 hold 5 s mon wed")]
    [InlineData("quads-strength", "straight-leg-raise 3x10 load 2kg 5d", "straight-leg-raise 3x10 load 2 kg mon tue wed thu fri")]
    [InlineData("quads-strength", "machine-extension 3x8 load 70%", "machine-extension 3x8 load 70 %")]
    [InlineData("walking", "walk-with-aid 5min", "walk-with-aid 5 min")]
    [InlineData("flexion", "95", "95 deg")]
    [InlineData("flexion", "95deg", "95 deg")]
    [InlineData("strength", "48%", "48 %")]
    public void Shorter_forms_are_understood(string lane, string typed, string written) =>
        Assert.Equal(written, CellNotation.Text(Plan.LaneOf(lane)!, Read(lane, typed).Value?.Content, Knee.Library));

    [Theory]
    [InlineData("stim")]
    [InlineData("quads-strength")]
    [InlineData("flexion")]
    [InlineData("skills")]
    public void Nothing_or_a_dash_empties_the_cell(string lane)
    {
        Assert.Null(Read(lane, "").Value!.Content);
        Assert.Null(Read(lane, "  ").Value!.Content);
        Assert.Null(Read(lane, "-").Value!.Content);
        Assert.Equal("", CellNotation.Text(Plan.LaneOf(lane)!, null, Knee.Library));
    }

    [Theory]
    [InlineData("stim", "very high 15x2")]
    [InlineData("stim", "high")]
    [InlineData("stim", "high 15")]
    [InlineData("stim", "high 0x2")]
    [InlineData("stim", "high 15x0")]
    [InlineData("stim", "high 601x1")]
    [InlineData("stim", "high 15x7")]
    [InlineData("stim", "high -1x2")]
    [InlineData("stim", "high 15.5x2")]
    [InlineData("stim", "high 15x2x2")]
    [InlineData("stim", "high 99999999999999999999x2")]
    [InlineData("stim", "high 15x2 someday")]
    [InlineData("stim", "high 15x2 none")]
    [InlineData("stim", "high 15x2 0d")]
    [InlineData("stim", "high 15x2 8d")]
    [InlineData("stim", "stopped 15x2")]
    [InlineData("quads-strength", "handstand 3x10")]
    [InlineData("quads-strength", "quad-set")]
    [InlineData("quads-strength", "quad-set lots")]
    [InlineData("quads-strength", "quad-set 21x10")]
    [InlineData("quads-strength", "quad-set 3x201")]
    [InlineData("quads-strength", "quad-set 0x10")]
    [InlineData("quads-strength", "quad-set 3x10 hold")]
    [InlineData("quads-strength", "quad-set 3x10 hold 0 s")]
    [InlineData("quads-strength", "quad-set 3x10 hold 601 s")]
    [InlineData("quads-strength", "quad-set 3x10 hold nan s")]
    [InlineData("quads-strength", "quad-set 3x10 load 0 kg")]
    [InlineData("quads-strength", "quad-set 3x10 load 301 kg")]
    [InlineData("quads-strength", "quad-set 3x10 load 101 %")]
    [InlineData("quads-strength", "quad-set 3x10 load effort 5")]
    [InlineData("quads-strength", "quad-set 3x10 load effort 21")]
    [InlineData("quads-strength", "quad-set 3x10 0/day")]
    [InlineData("quads-strength", "quad-set 3x10 13/day")]
    [InlineData("quads-strength", "quad-set 3x10 holidays")]
    [InlineData("walking", "walk-with-aid 0 min")]
    [InlineData("walking", "walk-with-aid 241 min")]
    [InlineData("walking", "walk-with-aid infinity min")]
    [InlineData("flexion", "161 deg")]
    [InlineData("flexion", "-1 deg")]
    [InlineData("flexion", "95 kg")]
    [InlineData("flexion", "1e2")]
    [InlineData("flexion", "NaN")]
    [InlineData("flexion", "NaN deg")]
    [InlineData("flexion", "Infinity")]
    [InlineData("pairing", "1:1")]
    [InlineData("pairing", "")]
    public void Nonsense_is_refused_with_what_is_allowed(string lane, string typed)
    {
        Entered<CellEdit> entered = Read(lane, typed);

        Problem problem = Assert.Single(entered.Problems);
        Assert.Null(entered.Value);
        Assert.NotEmpty(problem.Wrong);
        Assert.NotEmpty(problem.Allowed);
        Assert.Equal(typed, problem.Found);
    }

    [Fact]
    public void Skills_longer_than_400_characters_are_refused()
    {
        Assert.NotNull(Read("skills", new string('a', 400)).Value);
        Assert.Equal("The text is too long.", Assert.Single(Read("skills", new string('a', 401)).Problems).Wrong);
    }

    [Fact] // ESC ] is how a terminal is told to do things.
    public void What_a_terminal_would_obey_never_gets_into_a_cell_or_a_message()
    {
        string bad = "walks \u001b]0;title\u0007 well";

        Assert.DoesNotContain(Assert.IsType<SkillCell>(Read("skills", bad).Value!.Content).Text, char.IsControl);
        Assert.DoesNotContain(Assert.Single(Read("stim", bad).Problems).ToString(), char.IsControl);
        Assert.DoesNotContain(Assert.Single(Read("quads-strength", bad).Problems).ToString(), char.IsControl);
        Assert.DoesNotContain(Assert.Single(Read("quads-strength", "quad-set " + bad).Problems).ToString(), char.IsControl);
        Assert.DoesNotContain(Assert.Single(Read("flexion", bad).Problems).ToString(), char.IsControl);
    }

    [Fact]
    public void Random_text_is_read_or_refused_but_never_throws_and_what_is_read_is_read_again()
    {
        Randomizer random = new(20261125);
        string[] words =
        [
            "high", "low", "stopped", "15x2", "3x10", "x", "1x", "hold", "5", "s", "5s", "load", "kg", "2kg", "60%", "%", "effort", "13", "2/day", "/day", "daily", "none",
            "mon", "wed", "0d", "7d", "9d", "min", "15", "15min", "quad-set", "walk-with-aid", "95", "deg", "-", "--3", "nan", "∞", "١٢", "\u0000", "\u001b[2J", "\t", "\n", "1e9", "0x10",
            "99999999999999999999",
        ];
        int read = 0;
        for (int i = 0; i < 20_000; i++)
        {
            Lane lane = random.ArrayElement([.. Plan.Lanes]);
            string text = string.Join(random.ArrayElement([" ", "  ", ""]), random.ArrayElements(words, random.Int(0, 6)));
            Entered<CellEdit> entered = CellNotation.Read(lane, text, Knee.Library);
            Assert.True(entered.Value is not null || !entered.Problems.IsEmpty);
            if (entered.Value is { Content: { } content })
            {
                read++;
                Assert.Equal(content, CellNotation.Read(lane, CellNotation.Text(lane, content, Knee.Library), Knee.Library).Value?.Content);
            }
        }

        Assert.InRange(read, 100, 20_000);
    }

    [Fact]
    public void Every_lane_tells_its_form() => Assert.All(Plan.Lanes, lane => Assert.NotEmpty(CellNotation.Form(lane, Knee.Library)));

    [Fact]
    public void Days_and_duration_stand_for_themselves()
    {
        ActiveCell cell = Assert.IsType<ActiveCell>(Read("quads-strength", "quad-set 3x10 hold 5 s load 2 kg 2/day mon").Value!.Content);

        Assert.Equal((3, 10, 2), (cell.Dose.Sets, cell.Dose.Repetitions, cell.Dose.TimesPerDay));
        Assert.Equal(Duration.FromSeconds(5), cell.Dose.Hold);
        Assert.Equal(ExerciseLoad.Of(Mass.FromKilograms(2)), cell.Dose.Load);
        Assert.Equal(ImmutableArray.Create(DayOfWeek.Monday), Enum.GetValues<DayOfWeek>().Where(cell.Dose.Days.Contains));
    }

    private static Entered<CellEdit> Read(string lane, string text) => CellNotation.Read(Plan.LaneOf(lane)!, text, Knee.Library);
}
