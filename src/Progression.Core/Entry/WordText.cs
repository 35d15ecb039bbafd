using System.Collections.Immutable;

namespace Progression.Core.Entry;

/// <summary>Reads one of a few words.</summary>
public static class WordText
{
    /// <summary>Reads a word, without regard to case.</summary>
    /// <typeparam name="T">What a word stands for.</typeparam>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed; null or blank is a missing value, which is refused.</param>
    /// <param name="words">The accepted words in the order in which a message names them.</param>
    public static Entered<Choice<T>> Read<T>(string field, string? text, params ImmutableArray<(string Word, T Value)> words)
    {
        string trimmed = (text ?? "").Trim(' ');
        foreach ((string word, T value) in words)
        {
            if (word.Equals(trimmed, StringComparison.OrdinalIgnoreCase))
            {
                return Entered<Choice<T>>.Good(new Choice<T>(value));
            }
        }

        return Refused(field, text, words);
    }

    /// <summary>As <see cref="Read{T}"/>; the beginning of a word is enough where only one thing begins so.</summary>
    /// <typeparam name="T">What a word stands for.</typeparam>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed.</param>
    /// <param name="words">The accepted words in the order in which a message names them.</param>
    public static Entered<Choice<T>> ReadStart<T>(string field, string? text, params ImmutableArray<(string Word, T Value)> words)
    {
        string trimmed = (text ?? "").Trim(' ');
        if (Read(field, text, words) is { Value: not null } whole)
        {
            return whole;
        }

        ImmutableArray<T> begun = [.. words.Where(pair => trimmed.Length > 0 && pair.Word.StartsWith(trimmed, StringComparison.OrdinalIgnoreCase)).Select(pair => pair.Value).Distinct()];
        return begun.Length == 1 ? Entered<Choice<T>>.Good(new Choice<T>(begun[0])) : Refused(field, text, words);
    }

    private static Entered<Choice<T>> Refused<T>(string field, string? text, ImmutableArray<(string Word, T Value)> words)
    {
        string allowed = "one of " + string.Join(", ", words.Select(pair => pair.Word));
        string wrong = string.IsNullOrWhiteSpace(text) ? "The word is missing." : "The word is not known.";
        return Entered<Choice<T>>.Bad(new Problem(field, wrong, allowed, Found.Of(text ?? "")));
    }
}

/// <summary>A choice that was read; holds a value of any type where a class is asked for.</summary>
/// <typeparam name="T">The type of the value.</typeparam>
/// <param name="Value">The value.</param>
public sealed record Choice<T>(T Value);
