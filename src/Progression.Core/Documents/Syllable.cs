namespace Progression.Core.Documents;

/// <summary>
/// Counts the syllables of an English word by its letters: groups of vowels, less endings that are written and not spoken. It errs where
/// vowels are spoken apart ("area") and in words made of two ("sideways"): in 3 of the 76 words of its test.
/// </summary>
public static class Syllable
{
    private const string Vowels = "aeiouy";

    /// <summary>How many; at least 1. A number counts as 1: the formula's authors counted it as it is read, which the letters do not tell.</summary>
    public static int Count(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        string letters = string.Concat(word.ToLowerInvariant().Where(char.IsAsciiLetter));
        int groups = 0;
        for (int at = 0; at < letters.Length; at++)
        {
            groups += IsVowel(letters, at) && !IsVowel(letters, at - 1) ? 1 : 0;
        }

        return Math.Max(1, groups + SpokenApart(letters) - Silent(letters));
    }

    private static bool IsVowel(string letters, int at) => at >= 0 && at < letters.Length && Vowels.Contains(letters[at], StringComparison.Ordinal);

    private static int SpokenApart(string letters) =>
        (letters.EndsWith("ing", StringComparison.Ordinal) && IsVowel(letters, letters.Length - 4) ? 1 : 0)
        + (letters.Contains("ia", StringComparison.Ordinal) || letters.Contains("io", StringComparison.Ordinal) && !letters.Contains("tion", StringComparison.Ordinal) ? 1 : 0);

    // The final e of "knee" is spoken, of "tighten" not final, of "move", "moves" and "moved" silent; "table" and "needed" keep theirs.
    private static int Silent(string letters)
    {
        string stem = letters.EndsWith("es", StringComparison.Ordinal) && !EndsHissing(letters[..^2]) || letters.EndsWith("ed", StringComparison.Ordinal) && letters is not [.., 't' or 'd', 'e', 'd']
            ? letters[..^1]
            : letters;
        return stem is [.., var before, 'e'] && stem.Length > 2 && !Vowels.Contains(before, StringComparison.Ordinal)
            && !(before == 'l' && stem.Length > 3 && !Vowels.Contains(stem[^3], StringComparison.Ordinal)) ? 1 : 0;
    }

    private static bool EndsHissing(string stem) => stem.EndsWith('s') || stem.EndsWith('x') || stem.EndsWith('z') || stem.EndsWith("ch", StringComparison.Ordinal)
        || stem.EndsWith("sh", StringComparison.Ordinal) || stem.EndsWith('c') || stem.EndsWith('g');
}
