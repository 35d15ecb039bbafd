namespace Progression.EndToEnd.Tests;

/// <summary>
/// The ways a therapist works with the program, each from its start to its end, at 80 by 24. What if and a plan changed by one taken change are in
/// <see cref="ReassessmentOnATerminalTests"/>.
/// </summary>
public sealed class WaysOfWorkingOnATerminalTests
{
    private const string Ready = "F1 help  Enter edit";

    // The letters of a value are what the therapist knows; everything else is the program's price. The project's budget is 60.
    private const int Budget = 60;
    private int _keystrokes;

    [Fact]
    public void Draft_a_first_plan_with_stim_from_an_empty_store_in_at_most_60_keystrokes_beyond_the_values()
    {
        using TerminalWindow window = TerminalWindow.Running(TerminalWindow.Program, "There is no case in this store yet");
        Press(window, "n");
        window.WaitFor("It stands for the person");
        Values(window, "wren-01", "-2", "l", "wbat");
        Press(window, "C-s");
        window.WaitFor("STIM STAYS BARRED");
        Press(window, "a", "y");
        window.WaitFor("Stim is not barred");
        Press(window, "C-s");
        FirstReadings(window);
        string grid = window.WaitFor(Ready);
        Assert.Matches(@"\nFlexion +│ 80 \(78\)", grid);
        Assert.Matches(@"\nStim +│ Familiar", grid);
        Press(window, "Right", "Enter");
        window.WaitFor("a number from");
        Press(window, "C-u");
        Values(window, "85");
        window.WaitFor("week 2 set to 85 deg");
        Press(window, "C-s");
        window.WaitFor("Saved.");
        Press(window, "q");
        Assert.Matches(@"WREN-01 .* 1 of 6 .* rev 2 ", window.WaitFor("1 case"));
        Press(window, "Enter");
        Assert.Matches(@"\nFlexion +│ 80 \(78\) +│i85 ", window.WaitFor(Ready));
        Assert.InRange(_keystrokes, 1, Budget);
        TestContext.Current.TestOutputHelper!.WriteLine($"{_keystrokes} keystrokes beyond the values");
    }

    [Fact]
    public void Update_a_plan_by_a_whole_proposal_and_what_is_done_stays_as_it_was()
    {
        using TerminalWindow window = Demo();
        string before = window.Screen;
        Press(window, "a");
        window.WaitFor("> Flexion, active");
        Values(window, "105", "110", "4", "3");
        window.WaitFor("= 1");
        Press(window, "C-s");
        window.WaitFor("0 of 5 taken");
        Press(window, "a");
        window.WaitFor("5 of 5 taken");
        Press(window, "C-s");
        string after = window.WaitFor("Saved: the assessment, and 5 changes of the plan.");
        Assert.Contains("(105)", Row(after, "Flexion"), StringComparison.Ordinal);
        Assert.Contains("Reduced", Row(after, "Stim ")[46..], StringComparison.Ordinal);
        foreach (string lane in new[] { "Flexion", "Stim ", "Quads + stim" })
        {
            Assert.Equal(Row(before, lane)[..46], Row(after, lane)[..46]);
        }
        Press(window, "q");
        Assert.Contains("rev 3", Row(window.WaitFor("n new case"), "LARK-03"), StringComparison.Ordinal);
    }

    [Fact]
    public void Review_what_changed_from_cell_to_cell_each_with_its_reason()
    {
        using TerminalWindow window = Demo();
        Press(window, ".");
        window.WaitFor("No cell differs from the saved plan");
        Set(window, "79", "g", "End");
        Set(window, "88", "g", "t");
        window.WaitFor("2 changes unsaved");
        Press(window, "G", "Home", ".");
        window.WaitFor("Changed cell 1 of 2: was 99 deg, is 88 deg, pinned.");
        Press(window, ".");
        window.WaitFor("Changed cell 2 of 2: was 106 deg, is 79 deg, pinned.");
        Press(window, "w");
        string why = window.WaitFor("Rule: TARGET-MILESTONE");
        Assert.Contains("Because: Pinned by hand. The draft would put: 106 deg.", why, StringComparison.Ordinal);
        Press(window, "Escape");
        window.WaitFor(Ready);
        Press(window, ",");
        window.WaitFor("Changed cell 1 of 2");
    }

    [Fact]
    public void Ask_why_of_a_cell_and_of_a_finding_down_to_the_limit_in_the_library()
    {
        using TerminalWindow window = Demo();
        Press(window, "w");
        string why = window.WaitFor("Would change:");
        foreach (string part in new[] { "Because: ", "Input: ", "Rule: ", "Source: " })
        {
            Assert.Contains("\n" + part, why, StringComparison.Ordinal);
        }
        Press(window, "Escape");
        window.WaitFor(Ready);
        Press(window, "f");
        Assert.Contains("Input: ", window.WaitFor("Enter go to cell"), StringComparison.Ordinal);
        Press(window, "Enter");
        window.WaitFor(Ready);
        Press(window, "b");
        window.WaitFor("Library   version");
        Press(window, "q");
        window.WaitFor(Ready);
    }

    [Fact]
    public void Log_a_session_and_see_it_in_the_days_of_its_week()
    {
        using TerminalWindow window = Demo();
        Press(window, "s");
        window.WaitFor("Session log");
        Values(window, "58");
        Press(window, "C-s");
        window.WaitFor("is logged");
        Press(window, "d");
        Assert.Matches(@"\nSessions logged +│1 +│1 +│ +│1 ", window.WaitFor("Sessions logged"));
        Press(window, "Escape");
        window.WaitFor(Ready);
        Press(window, "s");
        window.WaitFor("last 58 mA");
    }

    private void FirstReadings(TerminalWindow window)
    {
        window.WaitFor("3 of 3: first readings");
        Values(window, "78", "84", "14");
        window.WaitFor("5 degrees short of straight");
        Press(window, "1");
        Values(window, "8");
        Press(window, "Down", "Down", "Down");
        Values(window, "24");
        Press(window, "PageDown", "PageDown");
        Values(window, "3", "5");
        Press(window, "C-n", "C-n");
        window.WaitFor("> Contraction visible");
        Values(window, "y", "y", "y");
        Press(window, "C-s");
    }

    private void Set(TerminalWindow window, string target, params string[] way)
    {
        Press(window, [.. way, "Enter"]);
        window.WaitFor("a number from");
        Press(window, "C-u");
        Values(window, target);
        window.WaitFor($"set to {target} deg");
    }

    private void Press(TerminalWindow window, params string[] keys)
    {
        _keystrokes += keys.Length;
        window.Keys(keys);
    }

    /// <summary>Types values with Enter after each; of these only the Enters count.</summary>
    private void Values(TerminalWindow window, params string[] values)
    {
        foreach (string value in values)
        {
            window.Letters(value);
            Press(window, "Enter");
        }
    }

    private static TerminalWindow Demo() => TerminalWindow.Running($"{TerminalWindow.Program} demo", Ready);

    private static string Row(string screen, string start) =>
        screen.Split('\n').FirstOrDefault(line => line.StartsWith(start, StringComparison.Ordinal)) ?? "";
}
