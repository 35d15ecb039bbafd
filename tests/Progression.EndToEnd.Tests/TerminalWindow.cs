using System.Diagnostics;
using System.Globalization;

namespace Progression.EndToEnd.Tests;

/// <summary>
/// A real terminal window with a shell in it, through tmux: keys go in, the drawn screen, the raw bytes and the terminal's
/// modes come out. Each window has its own server, so tests do not meet.
/// </summary>
internal sealed class TerminalWindow : IDisposable
{
    private static int _windows;
    private readonly string _server = $"progression-{Environment.ProcessId}-{Interlocked.Increment(ref _windows)}";

    /// <param name="columns">Width of the window.</param>
    /// <param name="lines">Height of the window.</param>
    /// <param name="locale">What LANG says.</param>
    /// <param name="home">The folder with everything the program keeps; null for a new one.</param>
    public TerminalWindow(int columns = 80, int lines = 24, string locale = "C.UTF-8", string? home = null)
    {
        Folder = home ?? Directory.CreateTempSubdirectory("progression-e2e-").FullName;
        Tmux("new-session", "-d", "-s", "w", "-c", Folder, "-x", $"{columns}", "-y", $"{lines}",
            $"env -u DisableRealDriverIO -u NO_COLOR -u COLORTERM -u LC_ALL PS1='$ ' LANG={locale} HOME={Folder} XDG_DATA_HOME={Folder} XDG_CONFIG_HOME={Folder} bash --norc --noprofile");
        Tmux("pipe-pane", "-O", "-t", "w", $"cat > {RawFile}");
        WaitFor("$");
    }

    public string Folder { get; }

    /// <summary>A window in which a program has come to show something.</summary>
    public static TerminalWindow Running(string command, string shows, int columns = 80, int lines = 24)
    {
        TerminalWindow window = new(columns, lines);
        try
        {
            window.LineThenModes(command);
            window.WaitFor(shows);
            return window;
        }
        catch (TimeoutException)
        {
            window.Dispose();
            throw;
        }
    }

    private string RawFile => Path.Combine(Folder, "raw");

    /// <summary>Path of the program under test; a published build can be named instead by PROGRESSION_PROGRAM.</summary>
    public static string Program =>
        Environment.GetEnvironmentVariable("PROGRESSION_PROGRAM") ?? "dotnet " + Path.Combine(AppContext.BaseDirectory, "progression.dll");

    public static string Probe => "dotnet " + Path.Combine(AppContext.BaseDirectory, "Progression.EndToEnd.Probe.dll");

    public string Screen => Tmux("capture-pane", "-p", "-t", "w");

    /// <summary>Bytes the terminal has received so far.</summary>
    public long RawBytes => new FileInfo(RawFile) is { Exists: true } file ? file.Length : 0;

    public string Raw => File.ReadAllText(RawFile);

    /// <summary>Process id of the program that runs in the window's shell, by the command it was started with.</summary>
    public int Child()
    {
        string shell = Tmux("display-message", "-p", "-t", "w", "#{pane_pid}").Trim();
        return int.Parse(Run("pgrep", ["-P", shell]).Split('\n')[0], CultureInfo.InvariantCulture);
    }

    /// <summary>One of the terminal's modes as the terminal itself sees it: <c>alternate_on</c>, <c>mouse_any_flag</c>, <c>cursor_flag</c>.</summary>
    public string Mode(string name) => Tmux("display-message", "-p", "-t", "w", $"#{{{name}}}").Trim();

    public void Line(string command)
    {
        Tmux("send-keys", "-t", "w", "-l", command);
        Keys("Enter");
    }

    /// <summary>Runs a command, then shows its exit code and the terminal's line mode.</summary>
    public void LineThenModes(string command)
    {
        File.WriteAllText(Path.Combine(Folder, "go"), command + "\necho code $?\nstty -a | tr ' ' '\\n' | grep -x -e '-*icanon;*'\n");
        Line(". ./go");
    }

    public void Keys(params string[] names) => Tmux(["send-keys", "-t", "w", .. names]);

    public void Letters(string text) => Tmux("send-keys", "-t", "w", "-l", "--", text);

    public void Bytes(params string[] hex) => Tmux(["send-keys", "-t", "w", "-H", .. hex]);

    /// <summary>Bytes as a terminal sends them, without a pause between them; at most some four thousand at once.</summary>
    public void Burst(ReadOnlySpan<byte> bytes)
    {
        string[] hex = new string[bytes.Length];
        for (int index = 0; index < hex.Length; index++)
        {
            hex[index] = bytes[index].ToString("x2", CultureInfo.InvariantCulture);
        }
        Bytes(hex);
    }

    public void Burst(string text) => Burst(System.Text.Encoding.UTF8.GetBytes(text));

    public void Paste(string text)
    {
        Tmux("set-buffer", text);
        Tmux("paste-buffer", "-p", "-t", "w");
    }

    /// <summary>Writes on the screen past the program, as a system message does.</summary>
    public void Scribble(string text) => File.AppendAllText(Tmux("display-message", "-p", "-t", "w", "#{pane_tty}").Trim(), text);

    public void Resize(int columns, int lines) => Tmux("resize-window", "-t", "w", "-x", $"{columns}", "-y", $"{lines}");

    /// <summary>Closes the window as a dropped line does: the program gets a hang-up and its terminal is gone.</summary>
    public void Drop() => Tmux("kill-server");

    public string WaitFor(string text, int milliseconds = 15000) => WaitUntil(screen => screen.Contains(text, StringComparison.Ordinal), $"'{text}' to appear", milliseconds);

    public string WaitUntil(Func<string, bool> holds, string what, int milliseconds = 15000)
    {
        Stopwatch clock = Stopwatch.StartNew();
        string screen;
        do
        {
            screen = Screen;
            if (holds(screen))
            {
                return screen;
            }
            Thread.Sleep(20);
        }
        while (clock.ElapsedMilliseconds < milliseconds);
        throw new TimeoutException($"Waited in vain for {what}:\n{screen}");
    }

    /// <summary>Waits until more bytes have come than there were.</summary>
    public void WaitForBytes(long before)
    {
        for (int turn = 0; turn < 100 && RawBytes <= before; turn++)
        {
            Thread.Sleep(20);
        }
    }

    /// <summary>Waits until no byte has come for a while.</summary>
    public void Quiet(int milliseconds = 400)
    {
        long before = -1;
        while (RawBytes != before)
        {
            before = RawBytes;
            Thread.Sleep(milliseconds);
        }
    }

    public void Dispose()
    {
        Tmux("kill-server");
        for (int attempt = 0; Directory.Exists(Folder); attempt++)
        {
            try
            {
                Directory.Delete(Folder, recursive: true);
            }
            catch (IOException) when (attempt < 50)
            {
                // What ran in the window may write its last words for a moment longer.
                Thread.Sleep(100);
            }
        }
    }

    private string Tmux(params string[] arguments) => Run("tmux", ["-L", _server, "-f", "/dev/null", .. arguments]);

    private static string Run(string program, IEnumerable<string> arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
