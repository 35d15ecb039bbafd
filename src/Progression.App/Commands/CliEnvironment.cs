using Progression.App.Shell;
using Progression.App.Stores;
using Progression.Records.Clinic;

namespace Progression.App.Commands;

/// <summary>What a command may know of the world around it; handed in, so that a test can hand in its own.</summary>
public sealed record CliEnvironment
{
    /// <summary>Standard input.</summary>
    public required TextReader Input { get; init; }

    /// <summary>Whether a person sits at a terminal: input and output are both one.</summary>
    public required bool HasTerminal { get; init; }

    /// <summary>The clock.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>Reads an environment variable; null where it is not set.</summary>
    public required Func<string, string?> Variable { get; init; }

    /// <summary>What the system says of the process and of who started it; null asks the system.</summary>
    public ProcessFacts? Process { get; init; }

    /// <summary>The socket of the system's log.</summary>
    public string LogSocket { get; init; } = SystemLog.UsualSocket;

    /// <summary>Sets which rights new files are made without. It holds for the whole process, so only a process of its own sets it.</summary>
    public Action<UnixFileMode> Umask { get; init; } = static _ => { };

    /// <summary>The folder of a person's settings: XDG_CONFIG_HOME, else .config in the home folder.</summary>
    public string ConfigHome => PersonsFolder("XDG_CONFIG_HOME", ".config");

    /// <summary>The folder of a person's data: XDG_DATA_HOME, else .local/share in the home folder.</summary>
    public string DataHome => PersonsFolder("XDG_DATA_HOME", Path.Combine(".local", "share"));

    /// <summary>Why there is no terminal, as a sentence; null where there is one or nobody asked.</summary>
    public string? WhyNoTerminal { get; init; }

    /// <summary>Opens the workbook and returns its exit code; null where there is none to open.</summary>
    public Func<WorkbookOrder, int>? OpenWorkbook { get; init; }

    /// <summary>Opens the workbook in line mode; null where there is none.</summary>
    public Func<WorkbookOrder, int>? OpenPlain { get; init; }

    /// <summary>Whether a person sits at a terminal that cannot place text.</summary>
    public bool IsDumb { get; init; }

    // By the XDG base directory specification a path that is not absolute counts as not set.
    private string PersonsFolder(string variable, string usual) => Variable(variable) is { Length: > 0 } given && Path.IsPathRooted(given)
        ? given
        : Path.Combine(Variable("HOME") is { Length: > 0 } home ? home : Path.GetTempPath(), usual);

    /// <summary>The world of the running process.</summary>
    public static CliEnvironment OfProcess() => new()
    {
        Input = Console.In,
        HasTerminal = TerminalNeeds.WhyNot() is null,
        WhyNoTerminal = TerminalNeeds.WhyNot(),
        IsDumb = TerminalNeeds.IsDumb(),
        Clock = TimeProvider.System,
        Variable = Environment.GetEnvironmentVariable,
        Umask = ProcessUmask.Set,
    };
}
