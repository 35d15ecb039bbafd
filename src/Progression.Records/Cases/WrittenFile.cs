using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>A file a person wrote, on disk or handed over as bytes.</summary>
public sealed record WrittenFile
{
    private WrittenFile(string name) => Name = name;

    /// <summary>What to call it in a message.</summary>
    public string Name { get; }

    private byte[]? Bytes { get; init; }

    /// <summary>A file on disk, read when it is asked for.</summary>
    /// <param name="path">The file as the person named it.</param>
    public static WrittenFile At(string path) => new(path);

    /// <summary>A text that came from somewhere else than a file.</summary>
    /// <param name="name">What to call it in a message.</param>
    /// <param name="bytes">UTF-8 text.</param>
    public static WrittenFile Of(string name, byte[] bytes) => new(name) { Bytes = bytes };

    internal YamlDocument Document() => Bytes is { } bytes ? YamlDocument.Read(Name, bytes) : YamlDocument.Read(Name);
}
