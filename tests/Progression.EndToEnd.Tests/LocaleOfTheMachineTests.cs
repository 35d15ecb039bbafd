using System.Diagnostics;

namespace Progression.EndToEnd.Tests;

/// <summary>The program writes and reads the same whatever the machine's locale says of decimals.</summary>
public sealed class LocaleOfTheMachineTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("locale-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Tables_calendars_and_previews_are_the_same_under_a_locale_with_decimal_commas()
    {
        Run("C.UTF-8", "example > case.yaml; $P draft case.yaml --save");
        string plain = Everything("C.UTF-8");
        Assert.Contains(",quadriceps_torque,", plain, StringComparison.Ordinal);
        Assert.Contains("STIM", plain, StringComparison.Ordinal);
        Assert.Contains("64.5 deg", plain, StringComparison.Ordinal);
        Assert.Equal(plain, Everything("de_DE.UTF-8"));
    }

    private string Everything(string locale) => Run(locale, """
        export csv EXAMPLE-07; $P export csv EXAMPLE-07 --what sessions; $P export csv EXAMPLE-07 --what plan; $P draft case.yaml | head -40
        printf 'date;flexion_active (deg)\n2026-03-07;64,5\n' > visit.csv; $P import csv visit.csv --case EXAMPLE-07
        """);

    private string Run(string locale, string commands)
    {
        ProcessStartInfo start = new("sh", ["-c", $"P='{TerminalWindow.Program}'; $P {commands}"]) { WorkingDirectory = _folder, RedirectStandardOutput = true };
        foreach ((string name, string value) in new[] { ("LANG", locale), ("LC_ALL", locale), ("HOME", _folder), ("XDG_DATA_HOME", _folder), ("XDG_CONFIG_HOME", _folder) })
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start)!;
        string printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return printed;
    }
}
