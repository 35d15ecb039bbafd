using System.Collections.Immutable;
using YamlDotNet.Core;

namespace Progression.Records.Yaml;

/// <summary>
/// A file of plain YAML: one document, a map at the top, no anchors, aliases, tags, merge keys or duplicate keys. What a reader of such a file
/// needs is kept with its line; nothing is turned into objects on the way.
/// </summary>
/// <param name="Root">The map at the top; null exactly when there are problems.</param>
/// <param name="Problems">Everything wrong, in the order of the file.</param>
internal sealed record YamlDocument(YamlMap? Root, ImmutableArray<FileProblem> Problems)
{
    /// <summary>Reads a file. A file that is not there, may not be read or is too long is a problem, not an exception.</summary>
    /// <param name="path">The file as the person named it.</param>
    public static YamlDocument Read(string path)
    {
        FileProblems problems = new(path);
        return YamlText.OfFile(path, problems) is string text ? Parse(text, problems) : new YamlDocument(null, problems.InOrder());
    }

    /// <summary>Reads bytes that came from somewhere else than a file.</summary>
    /// <param name="name">What to call them in a message.</param>
    /// <param name="bytes">UTF-8, with or without byte order mark.</param>
    public static YamlDocument Read(string name, byte[] bytes)
    {
        FileProblems problems = new(name);
        return YamlText.OfBytes(bytes, problems) is string text ? Parse(text, problems) : new YamlDocument(null, problems.InOrder());
    }

    private static YamlDocument Parse(string text, FileProblems problems)
    {
        YamlMap? root = null;
        try
        {
            root = new YamlTree(new YamlEvents(text), problems).Root();
        }
        catch (YamlException broken)
        {
            YamlSyntax.Explain(text, (int)broken.Start.Line, problems);
        }

        return problems.Count == 0 ? new YamlDocument(root, []) : new YamlDocument(null, problems.InOrder());
    }
}
