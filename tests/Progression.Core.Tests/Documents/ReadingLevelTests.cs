using Progression.Core.Documents;

namespace Progression.Core.Tests.Documents;

public sealed class ReadingLevelTests
{
    // Words, sentences and syllables counted by hand; the grade reckoned from them with the published formula (from memory).
    [Theory]
    [InlineData("Bend your knee ten times. Rest for one minute. Do this three times a day.", 3, 15, 16, -1.1)]
    [InlineData("Put one pad high on the outer front of the thigh.", 1, 11, 12, 1.6)]
    public void The_grade_of_a_text(string text, int sentences, int words, int syllables, double grade)
    {
        ReadingLevel level = ReadingLevel.Of([text])!;

        Assert.Equal((sentences, words, syllables), (level.Sentences, level.Words, level.Syllables));
        Assert.Equal(grade, level.Grade, 1);
    }

    [Fact]
    public void No_word_no_level() => Assert.Null(ReadingLevel.Of(["...", ""]));

    // Counted by hand. What the counter gets wrong is told here, and nothing else may be.
    [Fact]
    public void The_counter_errs_on_three_words_of_seventy_six()
    {
        (int Count, string Words)[] counted =
        [
            (1, "knee thigh lift straight press leg foot bed stairs walk raised moves used times pulls squeeze breathe rail step heel chair rest weight bend lean you feel hard each shin skin placed stopped"),
            (2, "slowly tighten towel under table needed wounded stumbles fever little without standing lying outdoors machine kneecap being patient sideways crutches places pushes squeezes current treadmill"),
            (3, "exercise yesterday therapist's area together video medicine another hospital quadriceps position"),
            (4, "stimulator operation electrical temperature stimulation emergency"),
            (5, "rehabilitate"),
        ];
        string[] all = [.. counted.SelectMany(row => row.Words.Split(' '))];
        string[] wrong = [.. counted.SelectMany(row => row.Words.Split(' ').Where(word => Syllable.Count(word) != row.Count))];

        TestContext.Current.TestOutputHelper!.WriteLine($"{wrong.Length} of {all.Length} wrong: {string.Join(' ', wrong.Select(word => $"{word} {Syllable.Count(word)}"))}");
        Assert.Equal(76, all.Length);
        Assert.Equal(["sideways", "area", "video"], wrong);
    }
}
