using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Documents;
using Progression.Core.Quantities;

namespace Progression.Core.Sheets;

/// <summary>What the words of a language lack beside the English ones and the exercises of a library, and how hard they are to read where that can be told.</summary>
public static class HomeWordsCheck
{
    /// <summary>The highest grade by Flesch and Kincaid that a patient's sheet may have: common practice for plain language (from memory).</summary>
    public const double HighestGrade = 6;

    /// <summary>Most words in a sentence (common practice, no source).</summary>
    public const int LongestSentence = 15;

    private const string English = "en";

    /// <summary>What is missing, too much or forgotten, a sentence each; empty when nothing is. What its reader refuses is not told again.</summary>
    /// <param name="words">The words, read as far as they can be.</param>
    /// <param name="english">The words that come with the program.</param>
    /// <param name="exercises">The ids of the exercises a plan can have.</param>
    public static ImmutableArray<string> Lacking(HomeWords words, HomeWords english, IReadOnlyCollection<string> exercises)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(english);
        ArgumentNullException.ThrowIfNull(exercises);
        return
        [
            .. exercises.Except(words.Exercises.Keys).Order(StringComparer.Ordinal).Select(id => $"exercises.{id}: missing. The sheet shows the library's own name for it, without steps."),
            .. words.Exercises.Keys.Except(exercises).Select(id => $"exercises.{id}: too much. The library has no such exercise."),
            .. Dropped(words),
            .. words.Language == English ? [] : Untranslated(words, english),
        ];
    }

    /// <summary>How hard the words are to read, in a sentence, and whether that is too hard. The measure is made for English; for other languages nobody has judged.</summary>
    public static (string Words, bool IsTooHard) Level(HomeWords words)
    {
        ArgumentNullException.ThrowIfNull(words);
        if (words.Language != English)
        {
            return ("Reading level: not checked. The measure (Flesch-Kincaid) is made for English alone; somebody who speaks the language has to judge.", false);
        }

        // Part by part, so that much easy text does not hide a hard one.
        ImmutableArray<(string Key, ImmutableArray<string> Texts)> parts =
        [
            .. words.Lists.Select(list => (list.Key, list.Value.Select(Ended).ToImmutableArray())),
            .. words.Exercises.Select(one => ($"exercises.{one.Key}", one.Value.Steps)),
        ];
        (string hardest, double grade) = parts.Select(part => (part.Key, ReadingLevel.Of(part.Texts)?.Grade ?? double.MinValue)).MaxBy(part => part.Item2);
        int longest = parts.SelectMany(part => part.Texts).SelectMany(ReadingLevel.SentencesOf).Select(sentence => sentence.Length).DefaultIfEmpty(0).Max();
        return (
            $"Reading level: grade {Number.Text(grade, 1)} by Flesch-Kincaid in the hardest part, {hardest}; at most {Number.Text(HighestGrade)} is plain. Longest sentence {Whole(longest)} words, at most {Whole(LongestSentence)}.",
            grade > HighestGrade || longest > LongestSentence);
    }

    /// <summary>Blanks that no text of their key uses: what the program would fill in is then not told.</summary>
    private static IEnumerable<string> Dropped(HomeWords words) =>
        from key in HomeWordKeys.Texts.Concat(HomeWordKeys.Lists)
        let texts = words.Texts.TryGetValue(key.Key, out string? text) ? [text] : words.Lists.GetValueOrDefault(key.Key, [])
        where !texts.IsEmpty && texts.Any(one => one.Length > 0)
        from blank in key.Value
        where !texts.Any(one => one.Contains($"{{{blank}}}", StringComparison.Ordinal))
        select $"{key.Key}: {{{blank}}} is not used; it would not be told.";

    private static IEnumerable<string> Untranslated(HomeWords words, HomeWords english) =>
    [
        .. words.Texts.Where(text => english.Texts.GetValueOrDefault(text.Key) == text.Value).Select(text => $"{text.Key}: the same as in English."),
        .. words.Lists.Where(list => !list.Value.IsEmpty && english.Lists.GetValueOrDefault(list.Key, []).SequenceEqual(list.Value)).Select(list => $"{list.Key}: the same as in English."),
        .. words.Exercises.Where(one => english.Exercises.GetValueOrDefault(one.Key)?.Name == one.Value.Name).Select(one => $"exercises.{one.Key}: the same as in English."),
    ];

    private static string Ended(string text) => text.EndsWith('.') ? text : text + ".";

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
