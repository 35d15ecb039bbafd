using System.Diagnostics;

namespace Progression.EndToEnd.Tests;

/// <summary>The second user's job with the built program at 80 by 24: measure again, decide, look back, try out.</summary>
public sealed class ReassessmentOnATerminalTests
{
    private const string Ready = "F1 help  Enter edit";

    [Fact]
    public void A_visit_is_typed_one_change_taken_and_all_of_it_is_there_again()
    {
        using TerminalWindow window = Started();
        Visit(window);
        window.Keys("C-s");
        window.WaitFor(" of 5 taken");
        window.Keys("Space");
        window.WaitFor("1 of 5 taken");
        window.Keys("C-s");
        window.WaitFor("Saved: the assessment, and 1 change of the plan.");
        window.Keys("q");
        Assert.Contains("rev 3", Row(window.WaitFor("n new case"), "LARK-03"), StringComparison.Ordinal);
        window.Keys("Enter");
        Assert.Contains("(105)", Row(window.WaitFor(Ready), "Flexion"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_correction_keeps_the_old_value_and_the_reason()
    {
        using TerminalWindow window = Started();
        window.Keys("A");
        window.WaitFor("Correcting an assessment");
        window.Keys("C-u");
        Enter(window, "95");
        window.Keys("C-s");
        window.WaitFor("Corrected by");
        Enter(window, "KL");
        Enter(window, "misread");
        window.WaitFor("F1 help");
        window.Keys("C-s");
        window.WaitFor("Saved: the assessment, and the plan stays");
        Assert.Contains("(95)", Row(window.WaitFor(Ready), "Flexion"), StringComparison.Ordinal);
        Assert.Contains("\"was\":92", Journal(window), StringComparison.Ordinal);
        Assert.Contains("misread", Journal(window), StringComparison.Ordinal);
    }

    [Fact]
    public void A_yes_to_a_red_flag_withholds_what_to_expect_until_a_note_closes_it()
    {
        using TerminalWindow window = Started();
        Assert.Contains("~", Row(window.Screen, "Flexion"), StringComparison.Ordinal);
        window.Keys("r");
        window.WaitFor("Red flags");
        window.Keys("y", "C-s");
        string grid = window.WaitFor(Ready);
        Assert.DoesNotContain("~", Row(grid, "Flexion"), StringComparison.Ordinal);
        window.Keys("e");
        window.WaitFor("red flag");
        window.Keys("Escape");
        window.WaitFor(Ready);
        window.Keys("r");
        window.WaitFor("OPEN");
        window.Keys("c");
        window.WaitFor("who closes it");
        Enter(window, "Dr N");
        window.Letters("seen, tendon whole");
        window.Keys("C-s");
        window.WaitFor("The note is saved.");
        window.Keys("Escape");
        Assert.Contains("~", Row(window.WaitFor(Ready), "Flexion"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_tried_moves_the_grid_and_is_gone_afterwards()
    {
        using TerminalWindow window = Started();
        window.Keys("T");
        window.WaitFor("nothing is kept");
        window.Keys("C-u");
        Enter(window, "60");
        window.WaitUntil(screen => Row(screen, "Flexion").Contains("(60)", StringComparison.Ordinal), "the tried value in the grid");
        window.Keys("Escape");
        Assert.DoesNotContain("(60)", Row(window.WaitFor(Ready), "Flexion"), StringComparison.Ordinal);
        window.Keys("q");
        Assert.Contains("rev 2", Row(window.WaitFor("n new case"), "LARK-03"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_killed_in_the_form_has_saved_nothing_by_halves()
    {
        using TerminalWindow window = Started();
        string before = Journal(window);
        Visit(window);
        Process.Start("kill", ["-9", $"{window.Child()}"]).WaitForExit();
        window.WaitFor("code 137");
        window.Line("stty sane; clear");
        Assert.Equal(before, Journal(window));
        window.LineThenModes($"{TerminalWindow.Program} demo");
        Assert.DoesNotContain("(105)", Row(window.WaitFor(Ready), "Flexion"), StringComparison.Ordinal);
    }

    [Fact]
    public void Nonsense_and_a_new_size_leave_the_form_whole()
    {
        using TerminalWindow window = Started();
        window.Keys("a");
        window.WaitFor("> Flexion, active");
        window.Paste("\u001b[2Jq\u001b]0;title\u0007\nninety");
        window.Keys("Enter");
        window.WaitFor("not a plain number");
        window.Resize(132, 43);
        window.WaitUntil(screen => screen.TrimEnd().Split('\n').Length == 43, "the taller form");
        window.Resize(80, 24);
        window.WaitUntil(
            screen => screen.StartsWith("Assessment", StringComparison.Ordinal) && screen.Contains("> Flexion, active", StringComparison.Ordinal), "the form as before");
        Assert.DoesNotContain("\u001b]0;title", window.Raw, StringComparison.Ordinal);
    }

    // The project's budget: nothing at rest, and a key costs little more than the text it changes. The screen holds 1920 characters.
    [Theory]
    [InlineData("m", "last change", "Down")]
    [InlineData("e", "measured", "Right")]
    [InlineData("s", "Session log", "Down")]
    public void A_key_costs_little_and_rest_costs_nothing(string open, string shows, string key)
    {
        using TerminalWindow window = Started();
        window.Keys(open);
        window.WaitFor(shows);
        window.Quiet(1500);
        long before = window.RawBytes;
        Thread.Sleep(1500);
        Assert.Equal(before, window.RawBytes);
        window.Keys(key);
        window.WaitForBytes(before);
        window.Quiet(300);
        Assert.InRange(window.RawBytes - before, 1, 2047);
        window.Keys("Escape");
        window.WaitFor(Ready);
    }

    private static TerminalWindow Started() => TerminalWindow.Running($"{TerminalWindow.Program} demo", Ready);

    private static void Visit(TerminalWindow window)
    {
        window.Keys("a");
        window.WaitFor("> Flexion, active");
        Enter(window, "-5");
        window.WaitFor("out of range");
        window.Keys("C-u");
        Enter(window, "104 105 106");
        Enter(window, "110");
        window.WaitFor("5 is 5 deg");
        Enter(window, "4");
        Enter(window, "3");
        window.WaitFor("= 1");
    }

    private static void Enter(TerminalWindow window, string text)
    {
        window.Letters(text);
        window.Keys("Enter");
    }

    private static string Journal(TerminalWindow window) =>
        string.Concat(Directory.EnumerateFiles(window.Folder, "plans.journal", SearchOption.AllDirectories).Select(File.ReadAllText));

    private static string Row(string screen, string start) =>
        screen.Split('\n').FirstOrDefault(line => line.StartsWith(start, StringComparison.Ordinal)) ?? "";
}
