using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>
/// Reads the clinical library: the files that come with the program, and a clinic's own laid over them entry by entry.
/// A library is read whole or not at all.
/// </summary>
public static class LibraryReader
{
    private const int VersionLetters = 12;

    /// <summary>The library that comes with the program.</summary>
    /// <exception cref="InvalidOperationException">The shipped files are wrong, which a test rules out.</exception>
    public static ClinicalLibrary Default()
    {
        LibraryResult result = Read(folder: null);
        return result.Library ?? throw new InvalidOperationException("The shipped library is wrong: " + result.Problems[0]);
    }

    /// <summary>The shipped library with a clinic's own laid over it.</summary>
    /// <param name="folder">The clinic's folder, with any of the files of a library; null for the shipped library alone.</param>
    public static LibraryResult Read(string? folder) =>
        Read(LibraryLayer.Shipped(), folder is null ? LibraryLayer.Empty : LibraryLayer.OfFolder(folder));

    /// <summary>One set of files laid over another.</summary>
    internal static LibraryResult Read(LibraryLayer shipped, LibraryLayer clinic)
    {
        ImmutableDictionary<string, LibraryEntries> parts = LibraryPart.All.ToImmutableDictionary(part => part.Name, part => Entries(part, shipped, clinic));
        LibraryEntries measureEntries = parts[LibraryPart.Measures.Name];
        ImmutableSortedDictionary<string, Measure> measures = MeasureReader.Read(measureEntries);
        (ImmutableSortedDictionary<string, Regimen> regimens, string? usual) = RegimenReader.Read(parts[LibraryPart.Regimens.Name]);
        (ImmutableSortedDictionary<string, RecoveryPrior> priors, OwnReadingsStart? ownReadings) =
            PriorReader.Read(parts[LibraryPart.Forecasts.Name], measureEntries, measures);
        ClinicalLibrary library = new()
        {
            Measures = measures,
            Limits = LimitReader.Read(parts[LibraryPart.Limits.Name]),
            Ladder = LadderReader.Read(parts[LibraryPart.Ladder.Name]),
            Regimens = regimens,
            DefaultRegimen = usual ?? "",
            Exercises = ExerciseReader.Read(parts[LibraryPart.Exercises.Name]),
            Milestones = MilestoneReader.Read(parts[LibraryPart.Milestones.Name], measureEntries, measures),
            Screening = ScreeningReader.Read(parts[LibraryPart.Screening.Name]),
            RedFlags = RedFlagReader.Read(parts[LibraryPart.RedFlags.Name]),
            Priors = priors,
            OwnReadings = ownReadings,
            Version = Version([shipped, clinic]),
        };
        ImmutableArray<FileProblem> problems =
            [.. shipped.Problems, .. clinic.Problems, .. LibraryPart.All.SelectMany(part => parts[part.Name].Problems)];
        return problems.IsEmpty ? new LibraryResult(library, []) : new LibraryResult(null, problems);
    }

    private static LibraryEntries Entries(LibraryPart part, LibraryLayer shipped, LibraryLayer clinic)
    {
        LibraryFile?[] files = [shipped.Files.GetValueOrDefault(part.Name), clinic.Files.GetValueOrDefault(part.Name)];
        return part == LibraryPart.Regimens ? new LibraryEntries(part, files, RegimenReader.Default) : new LibraryEntries(part, files);
    }

    /// <summary>The first letters of a SHA-256 over the names and bytes of all files, in a fixed order.</summary>
    private static string Version(IEnumerable<LibraryLayer> layers)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (LibraryLayer layer in layers)
        {
            foreach (LibraryPart part in LibraryPart.All.Where(part => layer.Files.ContainsKey(part.Name)))
            {
                hash.AppendData(Encoding.UTF8.GetBytes($"{part.FileName} {layer.Files[part.Name].Bytes.Length}\n"));
                hash.AppendData(layer.Files[part.Name].Bytes.AsSpan());
            }
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..VersionLetters];
    }
}
