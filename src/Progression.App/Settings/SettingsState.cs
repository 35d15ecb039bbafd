using Progression.Records.Settings;

namespace Progression.App.Settings;

/// <summary>The settings screen at one moment.</summary>
public sealed record SettingsState
{
    /// <summary>The settings as they are now; each change holds at once.</summary>
    public required PersonalSettings Settings { get; init; }

    /// <summary>The file they are kept in.</summary>
    public required string File { get; init; }

    /// <summary>The row under the cursor, from 0.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public SettingsMode Mode { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The row under the cursor.</summary>
    public SettingRow Chosen => SettingRow.All[Index];

    /// <summary>The state with the cursor on another row; it stays at the ends.</summary>
    public SettingsState To(int index) => this with { Index = Math.Clamp(index, 0, SettingRow.All.Length - 1), Status = "" };
}

/// <summary>What the keys of the settings mean at the moment.</summary>
public enum SettingsMode
{
    /// <summary>Going through the settings.</summary>
    List,

    /// <summary>Reading the help page.</summary>
    Help,
}
