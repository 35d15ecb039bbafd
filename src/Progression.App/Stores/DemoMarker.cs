using System.Globalization;

namespace Progression.App.Stores;

/// <summary>The file that says a folder is a demo's and may be started over. A folder without it is never touched.</summary>
/// <param name="Day">The day the demo was made for.</param>
/// <param name="Entries">The store's last entry when it was made; null while it is being made.</param>
internal sealed record DemoMarker(DateOnly Day, long? Entries)
{
    private const string Name = "demo-scenario";
    private const string Title = "Progression demo scenario 1: invented cases; \"progression demo --fresh\" starts over.";

    /// <summary>The marker of a folder; null when it has none that can be read.</summary>
    public static DemoMarker? Of(string folder)
    {
        string path = Path.Combine(folder, Name);
        return File.Exists(path) && File.ReadAllLines(path) is [Title, string day, string entries]
            && DateOnly.TryParseExact(day, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly made)
            ? new DemoMarker(made, long.TryParse(entries, NumberStyles.None, CultureInfo.InvariantCulture, out long count) ? count : null)
            : null;
    }

    /// <summary>Writes it into a folder that is there.</summary>
    public void Write(string folder) => File.WriteAllLines(Path.Combine(folder, Name),
        [Title, Day.ToString("O", CultureInfo.InvariantCulture), Entries?.ToString(CultureInfo.InvariantCulture) ?? "being made"]);
}
