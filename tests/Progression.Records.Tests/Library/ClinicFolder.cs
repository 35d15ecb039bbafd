using Progression.Records.Library;

namespace Progression.Records.Tests.Library;

/// <summary>A clinic's own folder on disk for one test.</summary>
internal sealed class ClinicFolder : IDisposable
{
    private ClinicFolder(string path) => Path = path;

    public string Path { get; }

    public static ClinicFolder Empty() => new(Directory.CreateTempSubdirectory("progression-clinic-").FullName);

    /// <summary>A folder with one file; its first line is the schema line unless the text brings its own.</summary>
    public static ClinicFolder With(string part, string text) => Empty().And(part, text);

    public ClinicFolder And(string part, string text)
    {
        string head = text.StartsWith("schema:", StringComparison.Ordinal) ? "" : $"schema: {part}/1\n";
        File.WriteAllText(FileOf(part), head + text);
        return this;
    }

    public string FileOf(string part) => System.IO.Path.Combine(Path, part + ".yaml");

    public LibraryResult Read() => LibraryReader.Read(Path);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
