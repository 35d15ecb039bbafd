using System.Collections.Immutable;
using System.Reflection;
using Progression.Core.Entry;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>One set of library files, shipped or a clinic's own, as far as they can be understood as plain YAML.</summary>
/// <param name="Files">The files that are there, by name of their part.</param>
/// <param name="Problems">What was wrong with the set and with files as such.</param>
internal sealed record LibraryLayer(ImmutableDictionary<string, LibraryFile> Files, ImmutableArray<FileProblem> Problems)
{
    /// <summary>No file at all.</summary>
    public static LibraryLayer Empty { get; } = new(ImmutableDictionary<string, LibraryFile>.Empty, []);

    /// <summary>The files that come with the program.</summary>
    public static LibraryLayer Shipped()
    {
        Assembly assembly = typeof(LibraryLayer).Assembly;
        return Of(LibraryPart.All.Select(part =>
        {
            string name = "library/" + part.FileName;
            using Stream stream = assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not embedded.");
            using MemoryStream bytes = new();
            stream.CopyTo(bytes);
            return (part.Name, LibraryFile.Of(name, bytes.ToArray()));
        }));
    }

    /// <summary>The files of a folder. Other YAML files in it are refused, since they would be silently without effect; anything else is left alone.</summary>
    public static LibraryLayer OfFolder(string folder)
    {
        string[] found;
        try
        {
            found = [.. Directory.GetFiles(folder).Where(IsYaml).Order(StringComparer.Ordinal)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Empty with { Problems = Of(folder, "The folder cannot be read.", "a folder with library files", Directory.Exists(folder) ? folder : "") };
        }

        LibraryLayer layer = Of(LibraryPart.All
            .Select(part => (part.Name, Path: Path.Combine(folder, part.FileName)))
            .Where(file => found.Contains(file.Path))
            .Select(file => (file.Name, LibraryFile.At(file.Path))));
        return layer with { Problems = [.. found.SelectMany(path => Stray(path)), .. layer.Problems] };
    }

    private static LibraryLayer Of(IEnumerable<(string Part, LibraryFile File)> files)
    {
        ImmutableDictionary<string, LibraryFile> all = files.ToImmutableDictionary(file => file.Part, file => file.File);
        return new LibraryLayer(all, [.. LibraryPart.All.Where(part => all.ContainsKey(part.Name)).SelectMany(part => all[part.Name].Document.Problems)]);
    }

    private static bool IsYaml(string path) =>
        Path.GetExtension(path).Equals(".yaml", StringComparison.OrdinalIgnoreCase) || Path.GetExtension(path).Equals(".yml", StringComparison.OrdinalIgnoreCase);

    private static ImmutableArray<FileProblem> Stray(string path)
    {
        string name = Path.GetFileName(path);
        string[] known = [.. LibraryPart.All.Select(part => part.FileName)];
        string meant = NearestWord.To(name, known) is string near ? $" Did you mean \"{near}\"?" : "";
        return known.Contains(name) ? [] : Of(path, "This is not a file of a library." + meant, string.Join(", ", known), name);
    }

    private static ImmutableArray<FileProblem> Of(string file, string wrong, string allowed, string found)
    {
        FileProblems problems = new(file);
        problems.Add(null, new Problem("", wrong, allowed, found));
        return problems.InOrder();
    }
}
