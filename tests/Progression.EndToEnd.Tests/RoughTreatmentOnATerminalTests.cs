using System.Text.RegularExpressions;

namespace Progression.EndToEnd.Tests;

/// <summary>What a terminal can do to a program: many sizes in a moment, a thousand keys at once, bytes that mean nothing.</summary>
public sealed partial class RoughTreatmentOnATerminalTests
{
    private const string Ready = "F1 help  Enter edit";

    // Cursor keys as a terminal sends them (ECMA-48: CUU, CUD, CUF, CUB).
    private const string Up = "\e[A", Down = "\e[B", Right = "\e[C", Left = "\e[D";

    // From 200x50 down to sizes the program has no picture for.
    private static readonly (int Columns, int Lines)[] Sizes =
        [(200, 50), (80, 24), (60, 20), (132, 43), (40, 10), (81, 25), (100, 24), (20, 5), (80, 50), (200, 24)];

    [Fact]
    public void Fifty_sizes_in_a_moment_leave_each_screen_as_it_was()
    {
        using TerminalWindow window = Demo();
        foreach ((string open, string shows) in new[] { ("t", "Flexion, week 4"), ("w", "Would change"), ("e", "measured │ error"), ("?", "Moving") })
        {
            window.Keys(open);
            string before = window.WaitFor(shows);
            Storm(window);
            window.Resize(80, 24);
            window.WaitUntil(screen => screen == before, "the same screen at the same size:\n" + before);
            AssertDrawnRight(window);
            window.Keys(open == "t" ? "t" : "Escape");
            window.WaitFor(Ready);
        }
    }

    [Fact]
    public void Fifty_sizes_in_a_moment_leave_a_half_typed_form_as_it_was()
    {
        using TerminalWindow window = Demo();
        window.Keys("a");
        window.WaitFor("> Flexion, active");
        window.Letters("87");
        string before = window.WaitFor("not saved yet");
        Storm(window);
        window.Resize(200, 50);
        // An 80 by 50 picture on its way has the same lines; only a wide title reaches the right edge.
        window.WaitUntil(screen => Lines(screen) == 50 && screen.Split('\n')[0].TrimEnd().Length == 200 && LargeForm().IsMatch(screen), "the form in the large window");
        AssertDrawnRight(window);
        window.Resize(80, 24);
        window.WaitUntil(screen => screen == before, "the form as before");
    }

    // 2 keys to the first cell, 4 x 249 round in a square, 2 to the right.
    [Fact]
    public void A_thousand_keys_at_once_move_the_cursor_to_where_they_lead()
    {
        using TerminalWindow window = Demo();
        window.Burst("g\e[1~" + string.Concat(Enumerable.Repeat(Right + Down + Left + Up, 249)) + Right + Right);
        window.WaitFor("Flexion, week 3 of 6");
        AssertDrawnRight(window);
        Assert.Contains("Flexion, week 3 of 6", window.Screen, StringComparison.Ordinal);
    }

    // Enter, Ctrl+U, two figures, Enter: 5 keys; 200 of them.
    [Fact]
    public void A_thousand_keys_at_once_are_two_hundred_edits_that_can_be_undone_and_saved()
    {
        using TerminalWindow window = Demo();
        window.Burst(string.Concat(Enumerable.Repeat("\r\u001577\r\r\u001578\r", 100)));
        string screen = window.WaitFor("200 changes unsaved", 30000);
        Assert.Contains("set to 78 deg.", screen, StringComparison.Ordinal);
        Assert.Matches(@"\nFlexion +│.*│i78 ", screen);
        AssertDrawnRight(window);
        window.Keys("u");
        Assert.Matches(@"\nFlexion +│.*│i77 ", window.WaitFor("199 changes unsaved"));
        window.Keys("C-s");
        window.WaitFor("Saved.");
        window.Keys("q");
        Assert.Contains("rev 3", window.WaitFor("n new case"), StringComparison.Ordinal);
    }

    // F13, F20 with Shift (xterm), then keys and modifiers of numbers too large to be any.
    [Fact]
    public void A_key_that_is_not_known_is_no_fault_and_the_next_one_counts()
    {
        using TerminalWindow window = Demo();
        foreach (string sequence in new[] { "\e[25~", "\e[34;2~", "\e[99999999999999999999~", "\e[1;99999999999999999999C" })
        {
            window.Keys("g", "Home");
            window.WaitFor("Flexion, week 1");
            window.Burst(sequence);
            window.Quiet(150);
            window.Keys("Down");
            window.WaitFor("Extension deficit, week");
        }
    }

    private static void Storm(TerminalWindow window)
    {
        for (int turn = 0; turn < 5; turn++)
        {
            foreach ((int columns, int lines) in Sizes)
            {
                window.Resize(columns, lines);
            }
        }
    }

    /// <summary>What stands on the screen is what the program draws when it draws all of it again.</summary>
    private static void AssertDrawnRight(TerminalWindow window)
    {
        window.Quiet(200);
        string before = window.Screen;
        window.Scribble("from elsewhere");
        window.Keys("C-l");
        window.WaitUntil(screen => screen == before, "the same screen drawn again:\n" + before);
    }

    [GeneratedRegex("> Flexion, active +87 +deg")]
    private static partial Regex LargeForm();

    private static int Lines(string screen) => screen.TrimEnd().Split('\n').Length;

    private static TerminalWindow Demo() => TerminalWindow.Running($"{TerminalWindow.Program} demo", Ready);
}
