namespace Progression.EndToEnd.Tests;

/// <summary>What is done every day on a real terminal: a session logged, the chart in a window that changes.</summary>
public sealed class FormsOnATerminalTests
{
    private const string Ready = "F1 help  Enter edit";

    [Fact]
    public void A_usual_session_takes_one_number_and_is_there_next_time()
    {
        using TerminalWindow window = Started();
        window.Keys("s");
        window.WaitFor("Session log");
        window.Letters("58");
        window.Keys("Enter", "C-s");
        window.WaitFor("is logged");
        window.Keys("s");
        window.WaitFor("last 58 mA");
    }

    [Fact]
    public void The_chart_follows_the_window_and_tells_the_same_in_numbers()
    {
        using TerminalWindow window = Started();
        window.Keys("e");
        window.WaitFor("measured │ error");
        window.Resize(60, 20);
        window.WaitFor("60 columns");
        window.Resize(80, 24);
        window.WaitFor("measured │ error");
        window.Keys("t");
        window.WaitFor("8 in 10       9 in 10");
    }

    private static TerminalWindow Started() => TerminalWindow.Running($"{TerminalWindow.Program} demo", Ready);
}
