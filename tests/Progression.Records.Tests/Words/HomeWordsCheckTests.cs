using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Sheets;
using Progression.Records.Library;
using Progression.Records.Tests.Storage;
using Progression.Records.Words;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Words;

/// <summary>A second language dropped in: an invented one, so that nothing in it can have been there before.</summary>
public sealed class HomeWordsCheckTests
{
    private static readonly ClinicalLibrary Library = LibraryReader.Default();
    private static readonly HomeWords English = HomeWordsReader.English();

    [Fact]
    public void The_shipped_words_lack_nothing_and_are_plain()
    {
        Assert.Empty(HomeWordsCheck.Lacking(English, English, [.. Library.Exercises.Keys]));
        (string level, bool isTooHard) = HomeWordsCheck.Level(English);
        Assert.False(isTooHard);
        Assert.Matches(@"^Reading level: grade [0-5](\.\d)? by Flesch-Kincaid in the hardest part, [a-z.-]+; at most 6 is plain. Longest sentence 1[0-5] words", level);
        TestContext.Current.TestOutputHelper!.WriteLine(level);
    }

    [Fact]
    public void A_whole_language_file_lacks_nothing_and_its_reading_level_is_said_not_to_be_checked()
    {
        (HomeWords? words, ImmutableArray<FileProblem> problems) = Read(InventedLanguage.File());

        Assert.Empty(problems);
        Assert.Equal("qq-QQ", words!.Language);
        Assert.Equal("Yøuru exercisesu atu hømeu", words.Text("labels.title"));
        Assert.Empty(HomeWordsCheck.Lacking(words, English, [.. Library.Exercises.Keys]));
        Assert.StartsWith("Reading level: not checked.", HomeWordsCheck.Level(words).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_too_much_dropped_or_left_in_english_is_told_by_its_key()
    {
        string file = InventedLanguage.File()
            .Replace("  quad-set:\n", "  quad-sett:\n", StringComparison.Ordinal)
            .Replace("  done: Ticku au bøxu eachu timeu yøuu finishu.\n", "  done: Tick a box each time you finish.\n", StringComparison.Ordinal)
            .Replace("Weeku {week} afteru", "Afteru", StringComparison.Ordinal)
            .Replace("  surgeon: ", "  surgeons: ", StringComparison.Ordinal);
        (HomeWords? words, ImmutableArray<FileProblem> problems) = Read(file);

        Assert.Equal(["labels.surgeon", "labels.surgeons"], problems.Select(problem => problem.Field).Order(StringComparer.Ordinal));
        Assert.Equal(
        [
            "exercises.quad-set: missing. The sheet shows the library's own name for it, without steps.",
            "exercises.quad-sett: too much. The library has no such exercise.",
            "labels.week: {week} is not used; it would not be told.",
            "labels.done: the same as in English.",
        ], HomeWordsCheck.Lacking(words!, English, [.. Library.Exercises.Keys]));
    }

    [Fact]
    public void A_legend_must_have_a_line_for_each_figure_of_the_drawing()
    {
        (_, ImmutableArray<FileProblem> problems) = Read(InventedLanguage.File().Replace("    - Theu kneecapu.\n", "", StringComparison.Ordinal));

        Assert.Equal(("3 lines", "4 lines, in the order of the figures"), (Assert.Single(problems).Found, problems[0].Allowed));
    }

    [Fact]
    public void English_of_another_hand_is_told_to_be_too_hard()
    {
        HomeWords hard = English with { Lists = English.Lists.SetItem("stop", ["Discontinue neuromuscular electrical stimulation immediately following deterioration of symptomatology"]) };

        (string level, bool isTooHard) = HomeWordsCheck.Level(hard);
        Assert.True(isTooHard);
        Assert.Contains(" in the hardest part, stop;", level, StringComparison.Ordinal);
    }

    private static (HomeWords? Words, ImmutableArray<FileProblem> Problems) Read(string text)
    {
        using TempFolder folder = new();
        File.WriteAllText(folder.File("home-qq.yaml"), text);
        return HomeWordsReader.AsFarAsItGoes(folder.File("home-qq.yaml"));
    }
}
