using System.Diagnostics;

namespace Progression.EndToEnd.Tests;

/// <summary>The grid with a drafted plan on a real terminal.</summary>
public sealed class GridOnATerminalTests
{
    // Down the lanes and back by another column, with both directions of each axis.
    private static readonly string[] Walk =
    [
        .. Enumerable.Repeat("Down", 8), "Right", "Right", .. Enumerable.Repeat("Up", 5), "Left", "Left", "Left", .. Enumerable.Repeat("Down", 5), "Right", "Up", "Right", "Down",
    ];

    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 120, 40 }, { 200, 60 } };

    // Budgets of the project: nothing at rest, at most 320 bytes for a step of the cursor in the median, in a window of any size.
    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_step_over_the_grid_costs_little_and_rest_costs_nothing(int columns, int lines)
    {
        using TerminalWindow window = Started(columns, lines);
        window.Quiet(1500);
        long before = window.RawBytes;
        Thread.Sleep(2000);
        Assert.Equal(before, window.RawBytes);
        Assert.InRange(MedianCost(window), 1, 320);
    }

    // The answer is another for every cell, and its text is the price of reading it: it is shown when asked for.
    [Theory]
    [InlineData(80, 24, 1023)]
    [InlineData(200, 60, 2559)]
    public void With_the_answer_a_step_costs_little_more_than_its_text(int columns, int lines, int most)
    {
        using TerminalWindow window = Started(columns, lines);
        window.Keys("v");
        window.Quiet(1500);
        Assert.InRange(MedianCost(window), 1, most);
    }

    private static long MedianCost(TerminalWindow window)
    {
        List<long> costs = [];
        foreach (string key in Walk)
        {
            long before = window.RawBytes;
            window.Keys(key);
            window.WaitForBytes(before);
            window.Quiet(100);
            costs.Add(window.RawBytes - before);
        }
        TestContext.Current.SendDiagnosticMessage("bytes per step: " + string.Join(", ", costs.Order()));
        return costs.Order().ElementAt(costs.Count / 2);
    }

    [Fact]
    public void Move_edit_undo_save_and_quit()
    {
        using TerminalWindow window = Started(80, 24);
        window.Keys("g", "Home", "Right", "Right", "Enter");
        window.WaitFor("a number from");
        window.Keys("C-u");
        window.Letters("777");
        window.Keys("Enter");
        window.WaitFor("out of range");
        window.Keys("C-u");
        window.Letters("77");
        window.Keys("Enter");
        window.WaitFor("set to 77 deg");
        Assert.Contains("flexion, week 3: 77 deg", File.ReadAllText(Path.Combine(window.Folder, "draft")), StringComparison.Ordinal);
        window.Keys("u");
        window.WaitFor("Undid: Flexion, week 3");
        Assert.False(File.Exists(Path.Combine(window.Folder, "draft")));
        window.Keys("C-y");
        window.WaitFor("Redid: Flexion, week 3");
        window.Keys("C-s");
        window.WaitFor("Saved.");
        Assert.Contains("flexion, week 3: 77 deg", File.ReadAllText(Path.Combine(window.Folder, "saved")), StringComparison.Ordinal);
        window.Keys("q");
        window.WaitFor("nothing unsaved");
        window.WaitFor("code 0");
    }

    [Fact]
    public void A_dropped_line_in_the_middle_of_an_edit_loses_at_most_that_edit()
    {
        using TerminalWindow window = Started(80, 24);
        window.Keys("g", "Home", "Right", "Right", "Enter", "C-u");
        window.Letters("77");
        window.Keys("Enter");
        window.WaitFor("set to 77 deg");
        window.Keys("Enter");
        window.Letters("123");
        window.Drop();
        Thread.Sleep(500);
        Assert.Contains("flexion, week 3: 77 deg", File.ReadAllText(Path.Combine(window.Folder, "draft")), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_page_opens_and_closes()
    {
        using TerminalWindow window = Started(80, 24);
        window.Keys("w", "NPage");
        window.WaitFor("Would change");
        window.Keys("Escape");
        window.WaitFor("F1 help  Enter edit");
        window.Keys("f");
        window.WaitFor("Esc back");
        window.Keys("Escape");
        window.WaitFor("F1 help  Enter edit");
        window.Keys("F1");
        window.WaitFor("Moving");
        window.Keys("Escape");
        window.WaitFor("F1 help  Enter edit");
    }

    [Fact]
    public void A_step_is_seen_in_time()
    {
        using TerminalWindow window = Started(80, 24);
        window.Keys("g", "Home");
        window.WaitFor("week 1 of");
        Stopwatch clock = Stopwatch.StartNew();
        window.Keys("Right");
        window.WaitFor("week 2 of");
        // Generous, because other work may share the machine; a person notices a tenth of a second, and a stall is what this catches.
        Assert.InRange(clock.ElapsedMilliseconds, 0, 1000);
    }

    private static TerminalWindow Started(int columns, int lines)
    {
        return TerminalWindow.Running($"{TerminalWindow.Probe} grid {Example()}", "F1 help  Enter edit", columns, lines);
    }

    private static string Example()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Progression.sln")))
        {
            folder = folder.Parent;
        }
        return Path.Combine(folder!.FullName, "shared", "examples", "case.yaml");
    }
}
