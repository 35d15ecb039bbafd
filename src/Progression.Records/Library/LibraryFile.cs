using System.Collections.Immutable;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>One file of a library as read.</summary>
/// <param name="Name">The file as the person knows it.</param>
/// <param name="Bytes">What it holds; empty when it could not be read, which is then a problem of the document.</param>
/// <param name="Document">What it says.</param>
internal sealed record LibraryFile(string Name, ImmutableArray<byte> Bytes, YamlDocument Document)
{
    public static LibraryFile Of(string name, byte[] bytes) => new(name, [.. bytes], YamlDocument.Read(name, bytes));

    /// <summary>A file on disk. One that is too long is not taken into memory.</summary>
    public static LibraryFile At(string path)
    {
        try
        {
            if (new FileInfo(path).Length <= YamlText.MostBytes)
            {
                return Of(path, File.ReadAllBytes(path));
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The reading below says what is wrong.
        }

        return new LibraryFile(path, [], YamlDocument.Read(path));
    }
}
