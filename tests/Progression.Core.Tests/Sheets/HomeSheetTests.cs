using Progression.Core.Documents;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Sheets;
using Progression.Records.Words;

namespace Progression.Core.Tests.Sheets;

public sealed class HomeSheetTests
{
    private static readonly HomeWords English = HomeWordsReader.English();

    [Fact]
    public void Says_what_to_do_on_which_day_and_when_to_stop()
    {
        string sheet = Text(Order(Planned()), 2);

        Assert.Contains("Week 2 after the operation: 2026-03-09 to 2026-03-15", sheet, StringComparison.Ordinal);
        Assert.Contains("Plan K-001, left knee", sheet, StringComparison.Ordinal);
        Assert.Contains("Use two pads of 7.6 x 12.7 cm.", sheet, StringComparison.Ordinal);
        Assert.Contains("Each pull lasts 15 seconds. Then you rest for 45 seconds.", sheet, StringComparison.Ordinal);
        Assert.Contains("!! Call emergency help at once if", sheet, StringComparison.Ordinal);
        Assert.Contains("Call the number your therapist gave you.", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_has_as_many_boxes_as_sessions_and_none_where_there_is_none()
    {
        PlanRevision plan = With(Planned(), new StimCell(Rung.HighVolume, 15, 2, DaysOfWeek.Parse("mon wed")!.Value));
        string[] lines = Text(Order(plan), 2).Split('\n');
        int first = Array.FindIndex(lines, line => line.StartsWith("    Mon 9", StringComparison.Ordinal));

        Assert.Equal(
            ["    Mon 9   [ ] [ ]", "    Tue 10  -", "    Wed 11  [ ] [ ]", "    Thu 12  -", "    Fri 13  -", "    Sat 14  -", "    Sun 15  -"],
            lines[first..(first + 7)]);
        Assert.Contains("Do 15 pulls, 2 times a day.", string.Join('\n', lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_stim_there_are_no_steps_of_it()
    {
        PlanRevision plan = Planned();
        string sheet = Text(Order(plan with { Cells = plan.Cells.Remove(new CellAddress(Lanes.Stim, 2)) }), 2);

        Assert.Contains("No stimulator this week.", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("Turn the stimulator on", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void The_dose_of_an_exercise_is_told_in_sentences()
    {
        ExerciseDose dose = ExerciseDose.InRepetitions(3, 10, 2) with { Hold = Duration.FromSeconds(2), Load = ExerciseLoad.Of(Mass.FromKilograms(1.5)) };
        string sheet = Text(Order(With(Planned(), new ActiveCell("straight-leg-raise", dose))), 2);

        Assert.Contains("Do it 10 times. Rest. Do 3 rounds. Hold for 2 seconds each time. Use 1.5 kg. 2 times a day.", sheet.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    // The ratings 11, 13 and 15 of the scale read fairly light, somewhat hard and hard: Borg 1970 (from memory).
    [Theory]
    [InlineData(11, "light")]
    [InlineData(13, "somewhat hard")]
    [InlineData(15, "hard")]
    public void Effort_is_told_in_words(int rating, string words)
    {
        ExerciseDose dose = ExerciseDose.InRepetitions(1, 5) with { Load = ExerciseLoad.AtEffort(rating) };

        Assert.Contains($"It should feel {words}.", Text(Order(With(Planned(), new ActiveCell("straight-leg-raise", dose))), 2), StringComparison.Ordinal);
    }

    [Fact]
    public void The_mark_stands_at_the_top_and_the_clinics_own_words_are_used()
    {
        HomeSheetOrder order = Order(Planned()) with { Mark = English.Text("labels.unsigned"), Clinic = "Knee clinic, second floor", Contact = "ext. 12" };
        string sheet = Text(order, 1);

        Assert.StartsWith("Your exercises at home\n======================\nUNSIGNED DRAFT.", sheet, StringComparison.Ordinal);
        Assert.Contains("Knee clinic, second floor", sheet, StringComparison.Ordinal);
        Assert.Contains("Call ext. 12.", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_week_of_a_plan_reads_at_grade_six_or_lower()
    {
        HomeSheetOrder order = Order(Planned());

        Assert.All(Enumerable.Range(1, 6), week => Assert.InRange(ReadingLevel.Of(Sentences(HomeSheet.Of(order, week)))!.Grade, -15, 6));
    }

    private static IEnumerable<string> Sentences(Document sheet) => sheet.Blocks.SelectMany(block => block switch
    {
        Block.Paragraph paragraph => [paragraph.Text],
        Block.Points points => points.Items,
        Block.Notice notice => notice.Items.Select(item => $"{notice.Title} {item}."),
        Block.Heading heading => [heading.Text],
        _ => Enumerable.Empty<string>(),
    });

    private static string Text(HomeSheetOrder order, int week) => string.Join('\n', DocumentText.Lines(HomeSheet.Of(order, week)));

    private static PlanRevision Planned() => PlanDraft.Draft(Knee.Well.Seen(3, Look.Well).Case, Knee.Library, new DraftOrder()).Value!;

    private static PlanRevision With(PlanRevision plan, CellContent content)
    {
        CellAddress address = new(content is StimCell ? Lanes.Stim : plan.Lanes.First(lane => lane.Slot == ActiveSlot.QuadsStrength).Id, 2);
        return plan.With(address, plan.At(address)! with { Content = content });
    }

    private static HomeSheetOrder Order(PlanRevision plan) => new()
    {
        Patient = Knee.Well.Case,
        Plan = plan,
        Library = Knee.Library,
        Words = English,
        Mark = "Signed",
        IsSigned = true,
    };
}
