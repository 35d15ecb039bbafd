namespace Progression.App.Commands;

/// <summary>The exit codes of the program. From 64 on they follow the BSD sysexits list, so scripts may know them already.</summary>
public static class ExitCode
{
    /// <summary>Done; no finding is worse than a note.</summary>
    public const int Good = 0;

    /// <summary>Done; the worst finding is a warning.</summary>
    public const int Warning = 1;

    /// <summary>Done; the worst finding is severe.</summary>
    public const int Severe = 2;

    /// <summary>Done; there is a safety stop.</summary>
    public const int SafetyStop = 3;

    /// <summary>The command line was not understood, or a value on it is refused.</summary>
    public const int Usage = 64;

    /// <summary>A file was read, and what it says is refused.</summary>
    public const int BadData = 65;

    /// <summary>A file or case that was named is not there.</summary>
    public const int NoInput = 66;

    /// <summary>A fault inside the program.</summary>
    public const int Internal = 70;

    /// <summary>A file or folder cannot be created.</summary>
    public const int CannotCreate = 73;

    /// <summary>Reading or writing failed.</summary>
    public const int InputOutput = 74;

    /// <summary>The store is busy, or someone saved first: try again.</summary>
    public const int TryLater = 75;

    /// <summary>The operating system does not permit it.</summary>
    public const int NotPermitted = 77;

    /// <summary>A clinic's own library or settings are refused.</summary>
    public const int BadConfiguration = 78;

    /// <summary>Broken off by the person, as shells tell it; nothing is half done.</summary>
    public const int BrokenOff = 130;

    /// <summary>The list as the help shows it.</summary>
    public const string Help = """
        Exit codes:
          0 done, nothing above a note    1 a warning    2 a severe finding    3 a safety stop
          64 command line not understood  65 bad data in a file    66 no such file or case
          70 fault inside the program     73 cannot create         74 reading or writing failed
          75 busy or changed, try again   77 not permitted         78 bad library or settings
        """;
}
