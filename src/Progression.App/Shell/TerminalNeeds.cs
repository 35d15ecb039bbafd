namespace Progression.App.Shell;

/// <summary>What the screens need of a terminal.</summary>
public static class TerminalNeeds
{
    /// <summary>Why the screens cannot be shown here, as a sentence for the error stream; null when they can.</summary>
    /// <param name="environment">Gives a variable's value, null when it is not set.</param>
    /// <param name="inputIsTerminal">Whether a person can type into standard input.</param>
    /// <param name="outputIsTerminal">Whether standard output is a screen.</param>
    public static string? WhyNot(Func<string, string?> environment, bool inputIsTerminal, bool outputIsTerminal)
    {
        ArgumentNullException.ThrowIfNull(environment);
        return (inputIsTerminal, outputIsTerminal) switch
        {
            (false, _) => "The workbook needs a terminal to type into, and standard input is not one.",
            (_, false) => "The workbook needs a terminal to draw on, and standard output is not one.",
            _ when environment("TERM") == "dumb" => "The workbook needs a terminal that can place text, and TERM says this one is dumb.",
            _ => null,
        };
    }

    /// <summary>The same for this process.</summary>
    public static string? WhyNot() =>
        WhyNot(Environment.GetEnvironmentVariable, !Console.IsInputRedirected, !Console.IsOutputRedirected);

    /// <summary>Whether a person sits at this process's terminal and it cannot place text: line mode is for it.</summary>
    public static bool IsDumb() =>
        !Console.IsInputRedirected && !Console.IsOutputRedirected && Environment.GetEnvironmentVariable("TERM") == "dumb";
}
