using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Progression.EndToEnd.Tests;

/// <summary>Nothing is lost: the program is ended in every rude way, and the next start offers what was typed.</summary>
public sealed partial class DraftsOnATerminalTests
{
    private const string Ready = "F1 help  Enter edit";

    // What the project promises: on disk within two seconds of the last change.
    private const int KeptBy = 2000;

    [Fact]
    public void An_edit_survives_a_kill_and_the_next_start_offers_it()
    {
        using TerminalWindow window = Started();
        window.Keys("g", "End", "Enter");
        window.WaitFor("a number from");
        window.Keys("C-u");
        window.Letters("79");
        window.Keys("Enter");
        window.WaitFor("set to 79 deg");
        using TerminalWindow next = After(window, "KILL");
        next.WaitFor("Unsaved work was kept: changes to the plan of");
        next.WaitFor("1 cell differs");
        next.WaitFor("in a session that has ended");
        next.Keys("c");
        next.WaitFor("79 deg *");
        next.Keys("r");
        next.WaitFor("Kept draft recovered, 1 cell");
        next.Keys("u");
        next.WaitFor("Undid: kept draft recovered, 1 cell");
    }

    [Theory]
    [InlineData("KILL", KeptBy)]
    [InlineData("TERM", 0)]
    [InlineData("HUP", 0)]
    public void A_half_typed_assessment_survives_with_every_text(string signal, int wait)
    {
        using TerminalWindow window = Started();
        window.Keys("a");
        window.WaitFor("Flexion, active");
        window.Letters("87");
        window.Keys("Enter");
        window.Letters("9");
        window.WaitUntil(Passive().IsMatch, "the second value");
        using TerminalWindow next = After(window, signal, wait);
        next.WaitFor("Unsaved work was kept: an assessment of");
        next.Keys("c");
        next.WaitFor("87");
        next.Keys("r");
        string screen = next.WaitFor("As it was left.");
        Assert.Matches("Flexion, active +87", screen);
        Assert.Matches(Passive(), screen);
        // Left in order it is still kept, and dropped only when that is asked for.
        next.Keys("Escape");
        next.WaitFor("Not finished, and kept: the assessment");
    }

    [Fact]
    public void A_half_typed_session_survives_a_dropped_line_and_is_gone_once_it_is_logged()
    {
        using TerminalWindow window = Started();
        window.Keys("s");
        window.WaitFor("Session log");
        window.Letters("57");
        window.WaitFor("57");
        string home = window.Folder;
        window.Drop();
        Thread.Sleep(3000);
        using TerminalWindow next = new(home: home);
        next.LineThenModes($"{TerminalWindow.Program} demo");
        next.WaitFor("Unsaved work was kept: a session log of");
        next.Keys("r");
        next.WaitFor("As it was left.");
        next.Keys("C-s");
        next.WaitFor("is logged");
        next.Keys("q");
        next.WaitFor("n new case");
        next.Keys("q");
        next.WaitFor("code 0");
        Assert.Empty(Directory.GetFiles(Path.Combine(home, "progression-demo", "drafts")));
    }

    [Fact]
    public void Typing_in_a_form_sends_nothing_when_it_is_kept()
    {
        using TerminalWindow window = Started();
        window.Keys("s");
        window.WaitFor("Session log");
        window.Letters("57");
        window.WaitFor("57");
        // Longer than the loop rests: on a busy machine the cursor may follow the letters by a turn.
        window.Quiet(1500);
        long before = window.RawBytes;
        Thread.Sleep(KeptBy + 500);
        Assert.Equal(before, window.RawBytes);
        Assert.Single(Directory.GetFiles(Path.Combine(window.Folder, "progression-demo", "drafts")));
    }

    [GeneratedRegex("> Flexion, passive +9")]
    private static partial Regex Passive();

    private static TerminalWindow After(TerminalWindow window, string signal, int wait = KeptBy)
    {
        Thread.Sleep(wait);
        Process.Start("kill", ["-s", signal, $"{window.Child()}"]).WaitForExit();
        Thread.Sleep(signal == "KILL" ? 200 : 2500);
        string home = window.Folder;
        window.Drop();
        TerminalWindow next = new(home: home);
        next.LineThenModes($"{TerminalWindow.Program} demo");
        return next;
    }

    private static TerminalWindow Started() => TerminalWindow.Running($"{TerminalWindow.Program} demo", Ready);
}
