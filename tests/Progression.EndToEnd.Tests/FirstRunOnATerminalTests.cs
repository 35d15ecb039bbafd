namespace Progression.EndToEnd.Tests;

/// <summary>The program started for the first time, in an empty folder for a person's data.</summary>
public sealed class FirstRunOnATerminalTests
{
    [Fact]
    public void A_new_case_is_typed_drafted_saved_opened_and_listed()
    {
        using TerminalWindow window = new();
        window.Line(TerminalWindow.Program);
        window.WaitFor("There is no case in this store yet");
        window.Keys("n");
        window.WaitFor("It stands for the person");
        foreach (string line in new[] { "new-01", "-3", "l", "wbat" })
        {
            window.Letters(line);
            window.Keys("Enter");
        }

        window.Keys("C-s");
        window.WaitFor("STIM STAYS BARRED");
        window.Keys("a");
        window.WaitFor("asked, all no");
        window.Keys("y");
        window.WaitFor("Stim is not barred");
        window.Keys("C-s");
        window.WaitFor("3 of 3: first readings");
        window.Keys("Escape");
        Assert.Contains("NEW-01  left knee", window.WaitFor("STIM ──"), StringComparison.Ordinal); // The form above it has the case in its title, too.
        window.Keys("q");
        Assert.Contains("1 of 6", Row(window.WaitFor("1 case"), "NEW-01"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_opens_from_the_list_and_leads_back_to_it()
    {
        using TerminalWindow window = new(200, 50);
        window.Line(TerminalWindow.Program);
        window.WaitFor("There is no case in this store yet");
        window.Keys("d");
        window.WaitFor("LARK-03  left knee");
        window.Keys("q");
        Assert.Contains("rev 2", Row(window.WaitFor("Demo scenario"), "LARK-03"), StringComparison.Ordinal);
        window.Keys("q");
        window.WaitFor("There is no case in this store yet");
    }

    [Fact]
    public void A_window_that_has_grown_shows_nothing_of_the_workbook_after_it()
    {
        using TerminalWindow window = new();
        window.Line($"{TerminalWindow.Program}; echo left");
        window.WaitFor("There is no case in this store yet");
        window.Resize(100, 30);
        window.WaitUntil(screen => screen.TrimEnd().Split('\n').Length == 30, "the taller screen");
        window.Keys("q");
        Assert.DoesNotContain("n new case", window.WaitFor("\nleft"), StringComparison.Ordinal);
        Assert.DoesNotContain("licensed clinician", window.Screen, StringComparison.Ordinal);
    }

    private static string Row(string screen, string code) => screen.Split('\n').FirstOrDefault(line => line.StartsWith(code, StringComparison.Ordinal)) ?? "";
}
