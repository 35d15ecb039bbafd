namespace Progression.Records.Settings;

/// <summary>How a person wants the program to look and behave on their terminal. Nothing clinical is set here.</summary>
public sealed record PersonalSettings
{
    /// <summary>The longest waiting time that can be set, in minutes.</summary>
    public const int MostMinutes = 480;

    /// <summary>What holds where nothing is set.</summary>
    public static PersonalSettings Usual { get; } = new();

    /// <summary>How many colours.</summary>
    public ColourChoice Colours { get; init; }

    /// <summary>What the colours have to be read on.</summary>
    public BackgroundChoice Background { get; init; }

    /// <summary>Which letters and lines the screens are drawn with.</summary>
    public SymbolChoice Symbols { get; init; }

    /// <summary>Whether the wheel of a mouse moves the cursor; while it does, the terminal's own selection of text needs its modifier key.</summary>
    public bool Mouse { get; init; }

    /// <summary>Minutes without a key after which the screen is blanked, 1 to <see cref="MostMinutes"/>; 0 for never.</summary>
    public int BlankAfter { get; init; } = 10;

    /// <summary>Minutes without a key after which the session ends and its drafts are kept, 1 to <see cref="MostMinutes"/>; 0 for never.</summary>
    public int EndAfter { get; init; } = 60;

    /// <summary>Whether the workbook opens in line mode.</summary>
    public bool LineMode { get; init; }
}

/// <summary>How many colours.</summary>
public enum ColourChoice
{
    /// <summary>As the terminal announces it.</summary>
    Auto,

    /// <summary>None: bold, underline and reverse only.</summary>
    None,

    /// <summary>The sixteen of the terminal's own theme.</summary>
    Sixteen,

    /// <summary>24-bit colours.</summary>
    Full,
}

/// <summary>What the colours have to be read on.</summary>
public enum BackgroundChoice
{
    /// <summary>Not told: colours that can be read on dark and on light.</summary>
    Either,

    /// <summary>A dark background.</summary>
    Dark,

    /// <summary>A light background.</summary>
    Light,
}

/// <summary>Which letters and lines the screens are drawn with.</summary>
public enum SymbolChoice
{
    /// <summary>As the locale tells.</summary>
    Auto,

    /// <summary>Seven-bit letters only.</summary>
    SevenBit,

    /// <summary>Lines and symbols of Unicode.</summary>
    Unicode,
}
