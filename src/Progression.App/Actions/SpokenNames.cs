namespace Progression.App.Actions;

/// <summary>Finds which of some named things a person means by a few words.</summary>
public static class SpokenNames
{
    /// <summary>The places, from 0, of the names that the words fit: a whole name alone, else every name whose words begin so.</summary>
    /// <param name="words">What was typed.</param>
    /// <param name="names">The names, in their order.</param>
    public static IReadOnlyList<int> Fitting(string words, IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(words);
        string[] asked = Split(words);
        (string[] Words, int At)[] all = [.. names.Select((name, at) => (Split(name), at))];
        int[] whole = [.. all.Where(name => name.Words.SequenceEqual(asked)).Select(name => name.At)];
        return asked.Length == 0 ? []
            : whole.Length > 0 ? whole
            : [.. all.Where(name => asked.All(word => name.Words.Any(own => own.StartsWith(word, StringComparison.Ordinal)))).Select(name => name.At)];
    }

    /// <summary>Says which names could be meant, where it is more than one.</summary>
    public static string Which(IEnumerable<string> names) => $"That could be: {string.Join("; ", names.Distinct())}.";

    private static string[] Split(string text) => text.ToLowerInvariant().Split([' ', ',', '-', '(', ')', ':', ';', '.', '_'], StringSplitOptions.RemoveEmptyEntries);
}
