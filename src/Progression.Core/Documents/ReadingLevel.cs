namespace Progression.Core.Documents;

/// <summary>How hard a text is to read, by the lengths of its sentences and words. It measures length, not understanding.</summary>
/// <param name="Sentences">How many sentences.</param>
/// <param name="Words">How many words.</param>
/// <param name="Syllables">How many syllables, by <see cref="Syllable"/>.</param>
public sealed record ReadingLevel(int Sentences, int Words, int Syllables)
{
    /// <summary>
    /// The Flesch-Kincaid grade: 0.39 words a sentence + 11.8 syllables a word - 15.59. Source: Kincaid, Fishburne, Rogers and Chissom 1975 (from memory).
    /// </summary>
    public double Grade => (0.39 * Words / Sentences) + (11.8 * Syllables / Words) - 15.59;

    /// <summary>The level of sentences, each ended by a stop, a question mark or an exclamation mark; null where there is no word.</summary>
    public static ReadingLevel? Of(IEnumerable<string> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        (int sentences, int words, int syllables) = (0, 0, 0);
        foreach (string[] sentence in texts.SelectMany(SentencesOf))
        {
            sentences++;
            words += sentence.Length;
            syllables += sentence.Sum(Syllable.Count);
        }

        return words == 0 ? null : new ReadingLevel(sentences, words, syllables);
    }

    /// <summary>The words of each sentence of a text; a number counts as a word.</summary>
    public static IEnumerable<string[]> SentencesOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split(['.', '!', '?'], StringSplitOptions.RemoveEmptyEntries)
            .Select(sentence => sentence.Split([' ', ',', ';', ':', '(', ')', '"', '/'], StringSplitOptions.RemoveEmptyEntries).Where(word => word.Any(char.IsLetterOrDigit)).ToArray())
            .Where(sentence => sentence.Length > 0);
    }
}
