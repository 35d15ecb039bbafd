
namespace Progression.EndToEnd.Tests;

/// <summary>The built program itself: the demo plan is edited, saved and opened again.</summary>
public sealed class WorkbookOnATerminalTests
{
    private const string Ready = "F1 help  Enter edit";

    [Fact]
    public void What_was_saved_is_there_when_the_plan_is_opened_again()
    {
        using TerminalWindow window = Started();
        window.Keys("w");
        window.WaitFor("Would change");
        window.Keys("Escape");
        window.WaitFor(Ready);
        Edit(window, "77");
        window.Keys("u");
        window.WaitFor("Undid: Flexion");
        window.Keys("C-y");
        window.WaitFor("Redid: Flexion");
        window.Keys("C-s");
        window.WaitFor("Saved.");
        window.Keys("g", "End");
        string before = Cells(window.WaitFor(Ready));
        Leave(window);
        Open(window);
        window.Keys("g", "End");
        string after = Cells(window.WaitUntil(screen => Cells(screen) == before, "the same grid"));
        Assert.Contains("77", after, StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_left_unsaved_are_offered_when_the_plan_is_opened_again()
    {
        using TerminalWindow window = Started();
        Edit(window, "78");
        Leave(window);
        window.LineThenModes($"{TerminalWindow.Program} demo");
        window.WaitFor("Unsaved work was kept: changes to the plan");
        window.Keys("r");
        window.WaitFor("Kept draft recovered, 1 cell");
        window.Keys("g", "End");
        Assert.Contains("78", Cells(window.WaitFor("Flexion, week")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_dropped_line_keeps_the_last_edit_for_the_next_session()
    {
        TerminalWindow window = Started();
        string home = window.Folder;
        Edit(window, "79");
        window.Drop();
        Thread.Sleep(3000);
        using TerminalWindow next = new(home: home);
        next.LineThenModes($"{TerminalWindow.Program} demo");
        next.WaitFor("in a session that has ended");
    }

    private static void Edit(TerminalWindow window, string target)
    {
        window.Keys("g", "End", "Enter");
        window.WaitFor("a number from");
        window.Keys("C-u");
        window.Letters(target);
        window.Keys("Enter");
        window.WaitFor($"set to {target} deg");
    }

    private static void Leave(TerminalWindow window)
    {
        window.Keys("q");
        window.WaitFor("n new case");
        window.Keys("q");
        window.WaitFor("code 0");
        window.Line("clear");
    }

    private static TerminalWindow Started() => TerminalWindow.Running($"{TerminalWindow.Program} demo", Ready);

    private static void Open(TerminalWindow window)
    {
        window.LineThenModes($"{TerminalWindow.Program} demo");
        window.WaitFor(Ready);
    }

    // The grid's milestone lanes, without the lines that tell of the session.
    private static string Cells(string screen) =>
        string.Join('\n', screen.Split('\n').Where(line => line.Contains('│', StringComparison.Ordinal)).Take(6));
}
