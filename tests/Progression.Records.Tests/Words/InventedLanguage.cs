using System.Text.RegularExpressions;
using Progression.Records.Words;

namespace Progression.Records.Tests.Words;

/// <summary>A language that nobody speaks: each word of the English file ends in u, and each o has a stroke.</summary>
internal static partial class InventedLanguage
{
    internal static string File()
    {
        string[] lines = HomeWordsReader.EnglishFile().Split('\n');
        return string.Join('\n', lines.Select(line => line.TrimStart().StartsWith('#') || line.StartsWith("schema:", StringComparison.Ordinal) ? line : Value().Replace(line, Turned)))
            .Replace("language: enu", "language: qq-QQ", StringComparison.Ordinal).Replace("numbers: pøintu", "numbers: comma", StringComparison.Ordinal);
    }

    private static string Turned(Match value) => Word().Replace(value.Value, word => word.Value[0] == '{' ? word.Value : word.Value.Replace('o', 'ø') + "u");

    // What follows "key:" or "-" on a line.
    [GeneratedRegex(@"(?<=^\s*(?:-|[\w-]+:)\s).+$")]
    private static partial Regex Value();

    [GeneratedRegex(@"\{[^}]*\}|[A-Za-z]+")]
    private static partial Regex Word();
}
