using System.Diagnostics;

namespace Progression.EndToEnd.Tests;

/// <summary>What is in a case stays in the folder of the records: a marker put into one is looked for everywhere else.</summary>
public sealed class PrivacyOnATerminalTests : IDisposable
{
    private const string Words = "Qzmarkername";
    private const string Reading = "61.37";

    // Every screen that a case has, from its grid.
    private static readonly string[] Doors = ["w", "f", "d", "F1", "a", "s", "m", "e", "r", "b", "i", "S", "T", "o", ":"];

    private readonly TerminalWindow _window = new(100, 40);

    private string Records => Path.Combine(_window.Folder, "records");

    private string Program => $"TMPDIR={_window.Folder}/tmp {TerminalWindow.Program}";

    public void Dispose() => _window.Dispose();

    [Fact]
    public void Nothing_of_a_case_is_left_outside_the_folder_of_the_records()
    {
        Directory.CreateDirectory(Path.Combine(_window.Folder, "tmp"));
        string input = Path.Combine(Directory.CreateDirectory(Path.Combine(_window.Folder, "input")).FullName, "case.yaml");
        Sh($"{Program} example | sed 's/^code: .*/code: K-100/; s/procedure: .*/procedure: {Words}/; s/flexion_active: .*/flexion_active: {Reading} deg/' >{input}");
        Assert.Contains(Words, File.ReadAllText(input), StringComparison.Ordinal);
        Assert.Contains(Reading, File.ReadAllText(input), StringComparison.Ordinal);

        string errors = Sh($"({Program} draft {input} --save --store {Records}; for c in check forecast\\ --measure\\ knee-flexion compare open reviews; do {Program} $c K-100 --store {Records}; done; "
            + $"{Program} list --store {Records}; {Program} audit --store {Records}; {Program} records verify --store {Records}) 2>&1 >/dev/null");
        OnScreens();
        string broken = Sh($"printf x | dd of={Records}/plans.journal bs=1 seek=900 conv=notrunc 2>/dev/null; {Program} check K-100 --store {Records} --debug 2>&1 >/dev/null; {Program} records verify --store {Records} --debug 2>&1 >/dev/null; true");

        Assert.All(new[] { errors, broken }, text =>
        {
            Assert.DoesNotContain(Words, text, StringComparison.Ordinal);
            Assert.DoesNotContain(Reading, text, StringComparison.Ordinal);
        });
        // What the terminal itself was sent is the one place outside where it belongs.
        Assert.Equal("", Sh($"grep -rlaE '{Words}|{Reading}' {_window.Folder} --exclude-dir=records --exclude-dir=input --exclude=raw || true").Trim());
        Assert.Equal("", Sh($"find /tmp -maxdepth 2 -newer {input} -type f -not -path '{_window.Folder}/*' -readable -print0 2>/dev/null | xargs -0 -r grep -laE '{Words}' 2>/dev/null || true").Trim());
        Assert.DoesNotContain(Directory.EnumerateFileSystemEntries(_window.Folder, "*", SearchOption.AllDirectories), path => path.Contains(Words, StringComparison.Ordinal));
    }

    // Half-typed work too: the program is killed while a form holds the marker.
    private void OnScreens()
    {
        _window.LineThenModes($"TMPDIR={_window.Folder}/tmp {TerminalWindow.Program} open K-100 --store {Records}");
        _window.WaitFor("K-100");
        _window.Quiet();
        int child = _window.Child();
        foreach (string door in Doors)
        {
            string grid = _window.Screen;
            _window.Keys(door);
            _window.WaitUntil(screen => screen != grid, $"something to be shown by {door}");
            Unnamed(child);
            ToTheGrid();
        }

        _window.Keys("a");
        _window.WaitFor("ssessment");
        _window.Letters(Words);
        Thread.Sleep(2500);
        Unnamed(child);
        Process.GetProcessById(child).Kill();
        _window.WaitFor("code 137");
        Assert.NotEqual("", Sh($"grep -rlaE '{Words}' {Records}/drafts"));
    }

    // What anybody on the machine can see of a process and its window.
    private void Unnamed(int child)
    {
        Assert.DoesNotContain(Words, File.ReadAllText($"/proc/{child}/cmdline"), StringComparison.Ordinal);
        Assert.DoesNotContain(Words, File.ReadAllText($"/proc/{child}/comm"), StringComparison.Ordinal);
        Assert.DoesNotContain(Words, _window.Mode("pane_title"), StringComparison.Ordinal);
        Assert.DoesNotContain("K-100", _window.Mode("pane_title"), StringComparison.Ordinal);
    }

    private void ToTheGrid() => _window.WaitUntil(
        screen =>
        {
            if (screen.StartsWith("Grid", StringComparison.Ordinal) && (screen.Contains("F1 help  Enter edit", StringComparison.Ordinal) || screen.Contains("F1 help  w why", StringComparison.Ordinal)))
            {
                return true;
            }

            _window.Keys("Escape");
            Thread.Sleep(150);
            return false;
        },
        "the grid");

    private static string Sh(string commands)
    {
        ProcessStartInfo start = new("sh", ["-c", commands]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output + errors.Result;
    }
}
