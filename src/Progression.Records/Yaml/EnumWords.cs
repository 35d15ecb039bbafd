using System.Text.RegularExpressions;

namespace Progression.Records.Yaml;

/// <summary>How the values of an enum are written in our files: its name in lower case with spaces, "AsTolerated" as "as tolerated".</summary>
internal static partial class EnumWords
{
    /// <summary>The words of one value.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => Capital().Replace(value.ToString(), " $0").ToLowerInvariant();

    /// <summary>The words of every value, in the order of the enum.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(Of)];

    /// <summary>The value of words as <see cref="Of"/> writes them; null for other words.</summary>
    public static T? Read<T>(string words)
        where T : struct, Enum => Enum.GetValues<T>().Where(value => Of(value) == words).Select(value => (T?)value).FirstOrDefault();

    [GeneratedRegex("(?<!^)[A-Z]", RegexOptions.CultureInvariant)]
    private static partial Regex Capital();
}
