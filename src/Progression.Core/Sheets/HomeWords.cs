using System.Collections.Immutable;
using System.Globalization;

namespace Progression.Core.Sheets;

/// <summary>The plain words of one language in which a patient is told what to do at home.</summary>
public sealed record HomeWords
{
    /// <summary>The language, as a tag of RFC 5646: "en".</summary>
    public required string Language { get; init; }

    /// <summary>What the language calls itself.</summary>
    public required string Name { get; init; }

    /// <summary>Whether fractions are written with a comma.</summary>
    public required bool DecimalComma { get; init; }

    /// <summary>Single texts, by their place in the file: "labels.title". They may have blanks: "Week {week}".</summary>
    public required ImmutableSortedDictionary<string, string> Texts { get; init; }

    /// <summary>Lists of sentences, by their place in the file: "stim.before".</summary>
    public required ImmutableSortedDictionary<string, ImmutableArray<string>> Lists { get; init; }

    /// <summary>The name and steps of each exercise, by its id in the library.</summary>
    public required ImmutableSortedDictionary<string, HomeExercise> Exercises { get; init; }

    /// <summary>A text with its blanks filled.</summary>
    /// <exception cref="KeyNotFoundException">The words were not read by their reader, which sees to it that every text is there.</exception>
    public string Text(string key, params ReadOnlySpan<(string Blank, string Value)> values) => Filled(Texts[key], values);

    /// <summary>A list with its blanks filled.</summary>
    /// <exception cref="KeyNotFoundException">As for a text.</exception>
    public ImmutableArray<string> List(string key, params ReadOnlySpan<(string Blank, string Value)> values)
    {
        ImmutableArray<string>.Builder filled = ImmutableArray.CreateBuilder<string>();
        foreach (string text in Lists[key])
        {
            filled.Add(Filled(text, values));
        }

        return filled.ToImmutable();
    }

    /// <summary>A number as the language writes it, with at most one decimal.</summary>
    public string Number(double value)
    {
        string text = Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
        return DecimalComma ? text.Replace('.', ',') : text;
    }

    private static string Filled(string text, ReadOnlySpan<(string Blank, string Value)> values)
    {
        foreach ((string blank, string value) in values)
        {
            text = text.Replace($"{{{blank}}}", value, StringComparison.Ordinal);
        }

        return text;
    }
}

/// <summary>An exercise in plain words.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Steps">What to do, a step at a time.</param>
public sealed record HomeExercise(string Name, ImmutableArray<string> Steps);
