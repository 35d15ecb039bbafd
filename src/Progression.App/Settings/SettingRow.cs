using System.Collections.Immutable;
using Progression.Records.Settings;

namespace Progression.App.Settings;

/// <summary>One setting: its name, what it is set to, and the setting after or before that.</summary>
/// <param name="Id">Its permanent id.</param>
/// <param name="Title">Its name.</param>
/// <param name="Told">What it does, in a sentence.</param>
/// <param name="Value">What it is set to, in words.</param>
/// <param name="Step">The settings with the value so many places on; it goes round.</param>
public sealed record SettingRow(string Id, string Title, string Told, Func<PersonalSettings, string> Value, Func<PersonalSettings, int, PersonalSettings> Step)
{
    private static readonly ImmutableArray<int> Minutes = [0, 1, 2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 240, 480];

    /// <summary>All of them, in the order of the screen.</summary>
    public static ImmutableArray<SettingRow> All { get; } =
    [
        new("colours", "Colours", "As the terminal announces it, none, its own sixteen, or 24-bit. NO_COLOR has the same effect as none.",
            settings => settings.Colours switch { ColourChoice.Auto => "auto", ColourChoice.None => "none", ColourChoice.Sixteen => "sixteen", _ => "full" },
            (settings, by) => settings with { Colours = Turn(settings.Colours, by) }),
        new("background", "Background", "What the colours are read on; either takes colours that can be read on both.",
            settings => settings.Background switch { BackgroundChoice.Either => "either", BackgroundChoice.Dark => "dark", _ => "light" },
            (settings, by) => settings with { Background = Turn(settings.Background, by) }),
        new("symbols", "Lines and symbols", "As the locale tells, seven-bit letters only, or Unicode.",
            settings => settings.Symbols switch { SymbolChoice.Auto => "auto", SymbolChoice.SevenBit => "seven bit", _ => "unicode" },
            (settings, by) => settings with { Symbols = Turn(settings.Symbols, by) }),
        new("mouse", "Mouse wheel", "Whether the wheel moves the cursor. While it does, the terminal selects text only with its own modifier key.",
            settings => settings.Mouse ? "on" : "off",
            (settings, _) => settings with { Mouse = !settings.Mouse }),
        new("blank-after", "Blank the screen after", "Time without a key; a minute before it you are warned, and any key keeps the screen. Drafts are kept.",
            settings => Time(settings.BlankAfter),
            (settings, by) => settings with { BlankAfter = Along(settings.BlankAfter, by) }),
        new("end-after", "End the session after", "Time without a key; unsaved work stays as a draft. Over SSH you then have to log in again.",
            settings => Time(settings.EndAfter),
            (settings, by) => settings with { EndAfter = Along(settings.EndAfter, by) }),
        new("line-mode", "Line mode", "Whether the workbook opens by prompts and answers, a fact a line; from the next start on.",
            settings => settings.LineMode ? "on" : "off",
            (settings, _) => settings with { LineMode = !settings.LineMode }),
    ];

    private static T Turn<T>(T value, int by)
        where T : struct, Enum
    {
        T[] all = Enum.GetValues<T>();
        return all[(Array.IndexOf(all, value) + by + all.Length) % all.Length];
    }

    // A time that was written into the file by hand lies between two of ours.
    private static int Along(int minutes, int by)
    {
        int at = Minutes.IndexOf(minutes);
        return at >= 0 ? Minutes[(at + by + Minutes.Length) % Minutes.Length]
            : by > 0 ? Minutes.First(one => one > minutes)
            : Minutes.Last(one => one < minutes);
    }

    private static string Time(int minutes) => minutes == 0 ? "never" : $"{minutes} min";
}
