using System.Text.RegularExpressions;

namespace Progression.Architecture.Tests;

/// <summary>A C# file of the checkout.</summary>
/// <param name="Path">From the root, with forward slashes.</param>
/// <param name="Text">Its text.</param>
internal sealed partial record SourceFile(string Path, string Text)
{
    /// <summary>The text without what stands behind two slashes.</summary>
    public string Code { get; } = Comments().Replace(Text, "");

    /// <summary>Physical lines.</summary>
    public int Lines => Text.Count(letter => letter == '\n');

    /// <summary>The part of the path below a project; "" for a file that stands in the project's root.</summary>
    public string FolderIn(string project) => Path[project.Length..].TrimStart('/') is var rest && rest.Contains('/') ? rest[..rest.IndexOf('/')] : "";

    /// <summary>Whether the code names a namespace or something in it, in full or, from a sister namespace, by its last word.</summary>
    public bool Mentions(string name)
    {
        string last = name[(name.LastIndexOf('.') + 1)..];
        return Regex.IsMatch(Code, $@"\b{Regex.Escape(name)}\b|(?<![\w.]){last}\.[A-Z]\w+\.[A-Z]");
    }

    /// <summary>The path, which is all a failed test should print.</summary>
    public override string ToString() => Path;

    [GeneratedRegex(@"(?<!:)//.*$", RegexOptions.Multiline)]
    private static partial Regex Comments();
}
