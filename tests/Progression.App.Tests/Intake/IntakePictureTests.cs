using Progression.App.Intake;
using Progression.App.Pictures;
using Progression.App.Tests.Actions;
using Progression.App.Tests.Pictures;
using static Progression.App.Tests.Intake.SampleIntake;

namespace Progression.App.Tests.Intake;

public sealed class IntakePictureTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void The_form_of_a_case_looks_like_this(int width, int height)
    {
        Snapshot.Match(Text(New(), width, height), $"intake-new-{width}x{height}");
        Snapshot.Match(Text(Typed(Fill(Filled(), "body-mass", "180 lb"), "no-resistance-before", "op+28"), width, height), $"intake-filled-{width}x{height}");
        Snapshot.Match(Text(Press(Filled(), "F2", "Down", "Down", "Down", "Down"), width, height), $"intake-regimens-{width}x{height}");
        Snapshot.Match(Text(Fill(Filled(), "operated", "12/11"), width, height), $"intake-refused-{width}x{height}");
        Snapshot.Match(Text(Press(Filled(), "F1"), width, height), $"intake-help-{width}x{height}");
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void The_screening_looks_like_this(int width, int height)
    {
        ScreeningState some = Press(Screening(), "n", "n", "y");
        Snapshot.Match(Text(some, width, height), $"screening-some-{width}x{height}");
        Snapshot.Match(Text(Press(some, "a"), width, height), $"screening-rest-{width}x{height}");
        Snapshot.Match(Text(At(Press(some, "a", "y"), "impaired-sensation"), width, height), $"screening-all-{width}x{height}");
        Snapshot.Match(Text(Press(some, "c"), width, height), $"screening-clearance-{width}x{height}");
        Snapshot.Match(Text(Press(some, "?"), width, height), $"screening-help-{width}x{height}");
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void The_inks_of_both_are_these(int width, int height)
    {
        Snapshot.Match(InkMap.Of(Drawn(Fill(Filled(), "operated", "12/11"), width, height)), $"intake-refused-inks-{width}x{height}");
        Snapshot.Match(InkMap.Of(Drawn(Press(At(Press(Screening(), "n", "n", "y"), "impaired-sensation"), "y"), width, height)), $"screening-some-inks-{width}x{height}");
    }

    [Fact]
    public void Every_two_answers_to_a_question_differ_without_colour()
    {
        ScreeningState asked = Screening();
        ScreeningState yes = Press(asked, "y");
        ScreeningState cleared = yes.With(yes.Answers.SetItem("active-implant", yes.Answers["active-implant"] with { Clearance = new("KL", Today, "x") }));
        string[] rows = [.. new[] { asked, yes, cleared, Press(asked, "n").To(0), Press(asked, "u").To(0) }.Select(state => Text(state).Split('\n').First(row => row.Contains("Pacemaker", StringComparison.Ordinal)))];
        Assert.Equal(rows.Length, rows.Distinct().Count());
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void Both_are_whole_in_seven_bits(int width, int height)
    {
        Assert.All(SevenBit.Of(Text(Filled(), width, height)), letter => Assert.True(char.IsAscii(letter), $"{letter}"));
        Assert.All(SevenBit.Of(Text(Press(Screening(), "y"), width, height)), letter => Assert.True(char.IsAscii(letter), $"{letter}"));
    }

    [Fact]
    public void The_keys_follow_the_rules_of_every_table()
    {
        KeyTableRules.Hold(IntakeActions.Table);
        KeyTableRules.HintsFit(IntakeActions.Table, New());
        KeyTableRules.Hold(ScreeningActions.Table);
        KeyTableRules.HintsFit(ScreeningActions.Table, Screening());
    }

    [Fact]
    public void The_line_with_the_caret_is_always_in_sight()
    {
        foreach (string line in New().Form.Lines.Where(line => !line.IsShownOnly).Select(line => line.Id))
        {
            IntakeState at = New() with { Form = New().Form.To(line) };
            Assert.Contains($"> {at.Form.Current.Title}", Text(at), StringComparison.Ordinal);
        }

        for (int at = 0; at < Library.Screening.Length; at++)
        {
            Assert.Contains(Screening().To(at).Chosen!.Question[..8], Text(Screening().To(at)), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Hostile_text_stays_harmless()
    {
        IntakeState typed = Typed(New(), "therapist", "x\u001b[2J\u202Ey\u0007");
        Assert.DoesNotContain(Text(typed), c => char.IsControl(c) && c != '\n');
        Assert.DoesNotContain('\u202E', Text(typed));
    }
}
