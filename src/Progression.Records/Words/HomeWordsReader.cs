using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Progression.Core.Sheets;
using Progression.Records.Yaml;

namespace Progression.Records.Words;

/// <summary>Reads the words of a home sheet from the file of one language. A file is read whole or not at all.</summary>
public static partial class HomeWordsReader
{
    private const string Shipped = "words/home-en.yaml";
    private const string Schema = "home-words/1";
    private const int MostText = 200;

    /// <summary>The English words that come with the program.</summary>
    /// <exception cref="InvalidOperationException">The shipped file is wrong, which a test rules out.</exception>
    public static HomeWords English()
    {
        using Stream shipped = typeof(HomeWordsReader).Assembly.GetManifestResourceStream(Shipped)!;
        using MemoryStream bytes = new();
        shipped.CopyTo(bytes);
        (HomeWords? words, ImmutableArray<FileProblem> problems) = Whole(Read(YamlDocument.Read(Shipped, bytes.ToArray()), Shipped));
        return words ?? throw new InvalidOperationException("The shipped words are wrong: " + problems[0]);
    }

    /// <summary>The words of a file, or everything that is wrong with it.</summary>
    /// <param name="path">The file.</param>
    public static (HomeWords? Words, ImmutableArray<FileProblem> Problems) Read(string path) => Whole(AsFarAsItGoes(path));

    /// <summary>The words of a file with everything that is wrong with it: some may be missing. Only to be looked at; null where nothing can be read.</summary>
    /// <param name="path">The file.</param>
    public static (HomeWords? Words, ImmutableArray<FileProblem> Problems) AsFarAsItGoes(string path) => Read(YamlDocument.Read(path), path);

    /// <summary>The file with the English words as it is written, to start another language from.</summary>
    public static string EnglishFile()
    {
        using StreamReader reader = new(typeof(HomeWordsReader).Assembly.GetManifestResourceStream(Shipped)!);
        return reader.ReadToEnd();
    }

    private static (HomeWords? Words, ImmutableArray<FileProblem> Problems) Whole((HomeWords? Words, ImmutableArray<FileProblem> Problems) read) =>
        (read.Problems.IsEmpty ? read.Words : null, read.Problems);

    private static (HomeWords? Words, ImmutableArray<FileProblem> Problems) Read(YamlDocument document, string name)
    {
        if (document.Root is null)
        {
            return (null, document.Problems);
        }

        FileProblems problems = new(name);
        HomeWords words = Read(new Fields(document.Root, "", problems));
        return (words, problems.InOrder());
    }

    private static HomeWords Read(Fields file)
    {
        if (file.Text("schema", Need.Required) is string schema && schema != Schema)
        {
            file.Refuse("schema", "This is not a file of words for home sheets.", Schema, schema);
        }

        string? language = file.Text("language", Need.Required);
        if (language is not null && !Tag().IsMatch(language))
        {
            file.Refuse("language", "This is not a language tag.", "two or three small letters, a region after a hyphen: \"en\", \"pt-BR\"", language);
        }

        HomeWords words = new()
        {
            Language = language ?? "",
            Name = file.Text("name", Need.Required) ?? "",
            DecimalComma = file.OneOf<FractionSign>("numbers", Need.Required) == FractionSign.Comma,
            Texts = Texts(file),
            Lists = Lists(file),
            Exercises = Exercises(file),
        };
        CheckDays(file, words);
        CheckLegend(file, words);
        file.Done();
        return words;
    }

    // Keys are "part.name": each part is a map of the file, and its lists stand beside its texts.
    private static ImmutableSortedDictionary<string, string> Texts(Fields file)
    {
        ImmutableSortedDictionary<string, string>.Builder texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (IGrouping<string, string> part in HomeWordKeys.Texts.Keys.GroupBy(key => key.Split('.')[0]))
        {
            if (file.Map(part.Key, Need.Required) is not { } map)
            {
                continue;
            }

            foreach (string key in part)
            {
                string name = key[(part.Key.Length + 1)..];
                string text = map.Text(name, Need.Required, MostText) ?? "";
                CheckBlanks(map, name, (text, HomeWordKeys.Texts[key]));
                texts[key] = text;
            }

            foreach (string list in HomeWordKeys.Lists.Keys.Where(key => key.StartsWith(part.Key + ".", StringComparison.Ordinal)))
            {
                _ = map.Items(list[(part.Key.Length + 1)..], Need.Optional);
            }

            map.Done();
        }

        return texts.ToImmutable();
    }

    private static ImmutableSortedDictionary<string, ImmutableArray<string>> Lists(Fields file) => HomeWordKeys.Lists.ToImmutableSortedDictionary(
        one => one.Key,
        one => one.Key.Split('.') is [var part, var name]
            ? file.Map(part, Need.Required) is { } map ? Sentences(map, name, one.Value) : []
            : Sentences(file, one.Key, one.Value),
        StringComparer.Ordinal);

    private static ImmutableArray<string> Sentences(Fields map, string key, ImmutableArray<string> blanks)
    {
        ImmutableArray<ListItem> items = map.Items(key, Need.Required);
        if (items.Any(item => item.Node is not YamlScalar { Text.Length: > 0 and <= MostText } scalar || scalar.Text.Contains('\n', StringComparison.Ordinal)))
        {
            map.Refuse(key, "An item of this list does not fit.", $"one line of 1 to {MostText} characters", "");
            return [];
        }

        ImmutableArray<string> texts = [.. items.Select(item => ((YamlScalar)item.Node).Text.Trim())];
        foreach (string text in texts)
        {
            CheckBlanks(map, key, (text, blanks));
        }

        return texts;
    }

    private static ImmutableSortedDictionary<string, HomeExercise> Exercises(Fields file)
    {
        ImmutableSortedDictionary<string, HomeExercise>.Builder exercises = ImmutableSortedDictionary.CreateBuilder<string, HomeExercise>(StringComparer.Ordinal);
        if (file.Map("exercises", Need.Required) is { } map)
        {
            foreach (string id in map.Keys().Select(key => key.Text))
            {
                if (map.Map(id, Need.Required) is { } exercise)
                {
                    exercises[id] = new HomeExercise(exercise.Text("name", Need.Required) ?? "", Sentences(exercise, "steps", []));
                    exercise.Done();
                }
            }
        }

        return exercises.ToImmutable();
    }

    private static void CheckBlanks(Fields map, string key, (string Text, ImmutableArray<string> Blanks) text)
    {
        foreach (Match blank in Blank().Matches(text.Text))
        {
            if (!text.Blanks.Contains(blank.Groups[1].Value))
            {
                string allowed = text.Blanks.IsEmpty ? "no {blank} here" : string.Join(", ", text.Blanks.Select(one => $"{{{one}}}"));
                map.Refuse(key, "There is no such blank.", allowed, blank.Value);
            }
        }
    }

    private static void CheckDays(Fields file, HomeWords words)
    {
        if (words.Texts.GetValueOrDefault("labels.day_names") is { Length: > 0 } names && names.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length != 7)
        {
            file.Refuse("labels", "The days of the week must be seven words, Monday first.", "seven words with a blank between them", names);
        }
    }

    private static void CheckLegend(Fields file, HomeWords words)
    {
        (string key, int count) = HomeWordKeys.Legend;
        int found = words.Lists.GetValueOrDefault(key, []).Length;
        if (found > 0 && found != count)
        {
            file.Refuse("picture", "The drawing has another number of figures than the legend has lines.", FormattableString.Invariant($"{count} lines, in the order of the figures"), FormattableString.Invariant($"{found} lines"));
        }
    }

    [GeneratedRegex(@"\{([^}]*)\}")]
    private static partial Regex Blank();

    [GeneratedRegex("^[a-z]{2,3}(-[A-Z]{2})?$")]
    private static partial Regex Tag();

    private enum FractionSign
    {
        Point,
        Comma,
    }
}
