using Progression.Records.Settings;

namespace Progression.App.Shell;

/// <summary>How much a terminal can show.</summary>
/// <param name="Colours">How many colours to use.</param>
/// <param name="SevenBitOnly">Whether our symbols must be drawn with seven-bit letters.</param>
/// <param name="Background">What the colours are read on.</param>
public sealed record TerminalLook(TerminalColours Colours, bool SevenBitOnly, BackgroundChoice Background = BackgroundChoice.Either)
{
    private static readonly string[] LocaleNames = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>Reads the look from the environment.</summary>
    /// <param name="environment">Gives a variable's value, null when it is not set.</param>
    /// <param name="settings">What the person has set; null for nothing.</param>
    public static TerminalLook From(Func<string, string?> environment, PersonalSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(environment);
        PersonalSettings wanted = settings ?? PersonalSettings.Usual;
        return new(
            wanted.Colours switch
            {
                ColourChoice.None => TerminalColours.None,
                ColourChoice.Sixteen => TerminalColours.Sixteen,
                ColourChoice.Full => TerminalColours.Full,
                _ => ColoursFrom(environment),
            },
            wanted.Symbols == SymbolChoice.SevenBit || (wanted.Symbols == SymbolChoice.Auto && !SaysUtf8(environment)),
            wanted.Background);
    }

    // NO_COLOR counts only when it is not empty; COLORTERM is the usual announcement of 24-bit colour.
    private static TerminalColours ColoursFrom(Func<string, string?> environment) =>
        environment("NO_COLOR") is { Length: > 0 } ? TerminalColours.None
        : environment("COLORTERM") is "truecolor" or "24bit" ? TerminalColours.Full
        : TerminalColours.Sixteen;

    // POSIX: LC_ALL wins over LC_CTYPE, which wins over LANG; an empty value counts as not set.
    private static bool SaysUtf8(Func<string, string?> environment)
    {
        string locale = LocaleNames.Select(environment).FirstOrDefault(value => !string.IsNullOrEmpty(value)) ?? "";
        return locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
    }
}

/// <summary>How many colours to use.</summary>
public enum TerminalColours
{
    /// <summary>Only bold, underline and reverse.</summary>
    None,

    /// <summary>The sixteen named colours, as the person's own theme defines them.</summary>
    Sixteen,

    /// <summary>24-bit colours, each readable on black and on white.</summary>
    Full,
}
