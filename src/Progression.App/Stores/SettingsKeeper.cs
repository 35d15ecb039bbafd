using System.Collections.Immutable;
using Progression.Records.Settings;
using Progression.Records.Yaml;

namespace Progression.App.Stores;

/// <summary>A person's settings while the program runs: what holds now, and the file it is kept in.</summary>
/// <param name="file">The file.</param>
public sealed class SettingsKeeper(SettingsFile file)
{
    private (PersonalSettings Settings, ImmutableArray<FileProblem> Problems) _read = file.Read();

    /// <summary>What holds now.</summary>
    public PersonalSettings Current => _read.Settings;

    /// <summary>What was wrong with the file; empty when nothing was.</summary>
    public ImmutableArray<FileProblem> Problems => _read.Problems;

    /// <summary>Where the file is.</summary>
    public string File => file.Path;

    /// <summary>Other settings from now on; gives null when they are kept, or why not. A file that could not be read is not written over.</summary>
    public string? Change(PersonalSettings settings)
    {
        _read = _read with { Settings = settings };
        if (!Problems.IsEmpty)
        {
            return $"{Problems[0]} Mend the file, or move it away.";
        }

        try
        {
            file.Write(settings);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return fault.Message;
        }
    }
}
