namespace Progression.EndToEnd.Tests;

/// <summary>Bytes that mean nothing, as a broken line or a file shown by mistake sends them: no crash, nothing lost, the terminal as it was.</summary>
public sealed class GarbageOnATerminalTests
{
    private const string Ready = "F1 help  Enter edit";
    private const string ReadyOnACheck = "F1 help  w why";
    private const int Seed = 20261125;
    private const int Bytes = 100_000;
    private const int Chunk = 4_000;

    // Whole and torn sequences: keys, a paste without its end, a title, a clipboard, a device's answers, the mouse, numbers out of any range.
    private static readonly string[] Sequences =
    [
        "\e[A", "\e[D", "\eOB", "\eOR", "\e[5~", "\e[25~", "\e[1;5C", "\e[97;5u", "\e[999999999999C", "\e[;;;;m", "\e[200~", "\e[201~", "\e]0;title\a", "\e]52;c;AAAA",
        "\eP$q", "\e\\", "\e[<0;10;10M", "\e[<0;10;10m", "\e[M !!", "\e[?1;2c", "\e[24;80R", "\e[8;50;200t", "\e[I", "\e[O", "\e",
    ];

    [Fact]
    public void A_hundred_thousand_random_bytes_neither_stop_the_program_nor_lose_what_is_typed_after_them()
    {
        using TerminalWindow window = new();
        Start(window);
        byte[] garbage = Garbage();
        for (int sent = 0; sent < garbage.Length; sent += Chunk)
        {
            window.Burst(garbage.AsSpan(sent, Chunk));
            // The end of a paste that may have been begun, and a lone Esc out of a line that swallows all the rest: so the bytes come to many screens.
            window.Burst("\e[201~");
            window.Keys("Escape");
            window.Quiet(60);
        }
        ToTheGrid(window);
        window.Keys("g", "End", "Enter");
        window.WaitFor("a number from");
        window.Keys("C-u");
        window.Letters("79");
        window.Keys("Enter");
        window.WaitFor("set to 79 deg");
        File.WriteAllText(Path.Combine(window.Folder, "enough"), "");
        window.Keys("q");
        window.WaitFor("n new case");
        window.Keys("q");
        AssertLeftInOrder(window);

        using TerminalWindow next = new(home: window.Folder);
        next.LineThenModes($"{TerminalWindow.Program} demo");
        next.WaitFor("Unsaved work was kept");
        next.WaitUntil(screen => screen.Contains("changes to the plan of", StringComparison.Ordinal), "the plan among what was kept");
    }

    /// <summary>
    /// Starts the program from a script that starts it again when it was left, and that no byte can reach: among so many there may be those that leave.
    /// </summary>
    private static void Start(TerminalWindow window)
    {
        string script = Path.Combine(window.Folder, "rough");
        File.WriteAllText(script, $"""
            trap '' INT QUIT TSTP
            until [ -e enough ]; do {TerminalWindow.Program} demo 2>>said; echo $? >>codes; done
            stty -a | tr ' ' '\n' | grep -x -e '-*icanon;*'
            exec cat >swallowed
            """);
        window.Line("exec sh rough");
        window.WaitFor(Ready);
    }

    // The keys that leave (q, Q, Ctrl+Q) are taken out: to start again takes longer than all the bytes.
    private static byte[] Garbage()
    {
        Random random = new(Seed);
        List<byte> bytes = new(Bytes + 32);
        while (bytes.Count < Bytes)
        {
            if (random.Next(20) == 0)
            {
                bytes.AddRange(System.Text.Encoding.ASCII.GetBytes(Sequences[random.Next(Sequences.Length)]));
            }
            else if ((byte)random.Next(256) is var one and not ((byte)'q' or (byte)'Q' or 0x11))
            {
                bytes.Add(one);
            }
        }
        return [.. bytes.Take(Bytes)];
    }

    /// <summary>From wherever the bytes led: back out of every screen, and into the plan that the list stands on.</summary>
    private static void ToTheGrid(TerminalWindow window)
    {
        for (int turn = 0; turn < 40; turn++)
        {
            string screen = window.Screen;
            // The keys said in the last line follow the lane that the bytes led to.
            if (screen.StartsWith("Grid", StringComparison.Ordinal) && (screen.Contains(Ready, StringComparison.Ordinal) || screen.Contains(ReadyOnACheck, StringComparison.Ordinal)))
            {
                return;
            }
            window.Keys(screen.Contains("Enter open", StringComparison.Ordinal) ? "Enter" : "Escape");
            Thread.Sleep(100);
            window.Quiet(100);
        }
        Assert.Fail("No way back to the grid:\n" + window.Screen);
    }

    private static void AssertLeftInOrder(TerminalWindow window)
    {
        string screen = window.WaitFor("icanon");
        Assert.DoesNotContain("-icanon", screen, StringComparison.Ordinal);
        Assert.Equal(("0", "1", "0"), (window.Mode("alternate_on"), window.Mode("cursor_flag"), window.Mode("mouse_any_flag")));
        Assert.All(File.ReadAllLines(Path.Combine(window.Folder, "codes")), code => Assert.Equal("0", code));
        Assert.DoesNotContain("fault", File.ReadAllText(Path.Combine(window.Folder, "said")), StringComparison.OrdinalIgnoreCase);
    }
}
