using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Progression.EndToEnd.Tests;

/// <summary>A caseload whose index is gone: making it again takes seconds, is told, and can be stopped.</summary>
public sealed class LongWorkOnATerminalTests(LargeCaseload large) : IClassFixture<LargeCaseload>
{
    [Fact]
    public void On_a_screen_the_status_line_tells_how_far_it_is_and_esc_gives_the_screen_back()
    {
        using TerminalWindow window = new();
        string store = large.CopyTo(window.Folder);
        window.LineThenModes($"{TerminalWindow.Program} --store {store}");
        window.WaitFor($"{LargeCaseload.Words} cases", 60000);
        File.Delete(Path.Combine(store, "plans.db"));
        window.Keys("C-r");
        window.WaitFor("Making the index again from the journal: ");
        // At once: on a quick machine the work is soon done.
        window.Keys("Escape");
        window.WaitFor("Stopped. Nothing is lost", 3000);
        window.Keys("End");
        window.Keys("C-r");
        window.WaitUntil(screen => Percent(screen) is > 0 and < 100, "how far it is");
        window.WaitFor("The list is as it is now.", 60000);
        window.Keys("q");
        window.WaitFor("code 0");
    }

    private static int? Percent(string screen) =>
        Regex.Match(screen, @"Making the index again from the journal: +(\d+) %") is { Success: true } told ? int.Parse(told.Groups[1].Value, CultureInfo.InvariantCulture) : null;

    [Fact]
    public void A_command_that_is_interrupted_ends_with_130_and_the_next_one_has_all()
    {
        using TerminalWindow window = new();
        string store = large.CopyTo(window.Folder);
        byte[] journal = File.ReadAllBytes(Path.Combine(store, "plans.journal"));
        // Not as a script: the shell would end that with it.
        window.Line($"{TerminalWindow.Program} list --only drafts --store {store}");
        window.WaitFor("making the index again from the journal, ");
        window.Keys("C-c");
        window.Line("echo code $?");
        window.WaitFor("code 130", 3000);
        Assert.Equal(journal, File.ReadAllBytes(Path.Combine(store, "plans.journal")));
        window.LineThenModes($"clear; {TerminalWindow.Program} list --only drafts --store {store}");
        window.WaitFor("code 0", 60000);
        Assert.Contains($"of {LargeCaseload.Words}", window.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Line_mode_tells_it_as_a_line()
    {
        using TerminalWindow window = new();
        string store = large.CopyTo(window.Folder);
        window.LineThenModes($"{TerminalWindow.Program} plain --store {store}");
        window.WaitFor($"{LargeCaseload.Words} cases", 60000);
        File.Delete(Path.Combine(store, "plans.db"));
        window.Line("clear");
        window.Line("key Ctrl+R");
        window.WaitUntil(screen => screen.Split("making the index again from the journal, ").Length > 2, "a second line of progress");
        window.WaitFor("The list is as it is now.", 60000);
        window.Line("end");
        window.WaitFor("code 0");
    }
}

/// <summary>Four thousand invented cases on disk, of which only the journal is copied: the index has to be made.</summary>
public sealed class LargeCaseload : IDisposable
{
    /// <summary>How many, as the list writes it.</summary>
    public const string Words = "4,000";

    private readonly string _folder = Directory.CreateTempSubdirectory("progression-large-").FullName;

    /// <summary>Makes them.</summary>
    public LargeCaseload()
    {
        string[] probe = TerminalWindow.Probe.Split(' ', 2);
        using Process process = Process.Start(new ProcessStartInfo(probe[0], [probe[1], "caseload", "4000", _folder]) { RedirectStandardOutput = true })!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }

    /// <summary>Copies the journal into a new folder under another.</summary>
    public string CopyTo(string home)
    {
        string store = Path.Combine(home, "store");
        // As the program makes them: a folder that others may enter is refused.
        Process.Start("install", ["-d", "-m", "700", store]).WaitForExit();
        Process.Start("install", ["-m", "600", Path.Combine(_folder, "plans.journal"), store]).WaitForExit();
        return store;
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
