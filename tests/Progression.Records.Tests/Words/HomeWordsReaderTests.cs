using Progression.Core.Documents;
using Progression.Core.Sheets;
using Progression.Records.Library;
using Progression.Records.Tests.Storage;
using Progression.Records.Words;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Words;

public sealed class HomeWordsReaderTests
{
    // Plain language: grade six or lower by Flesch-Kincaid (from memory), sentences of at most fifteen words.
    private const double HighestGrade = 6;
    private const int LongestSentence = 15;

    [Fact]
    public void The_shipped_words_are_plain()
    {
        HomeWords words = HomeWordsReader.English();
        IEnumerable<string> all =
        [
            .. words.Texts.Where(text => text.Key != "labels.day_names").Select(text => text.Value),
            .. words.Lists.Values.SelectMany(list => list),
            .. words.Exercises.Values.SelectMany(exercise => exercise.Steps.Prepend(exercise.Name)),
        ];

        Assert.All(all.SelectMany(ReadingLevel.SentencesOf), sentence => Assert.InRange(sentence.Length, 1, LongestSentence));
        Assert.All(words.Lists, list => Assert.InRange(ReadingLevel.Of(list.Value.Select(text => text + "."))!.Grade, -15, HighestGrade));
        Assert.All(words.Exercises, one => Assert.InRange(ReadingLevel.Of(one.Value.Steps)!.Grade, -15, HighestGrade));
    }

    [Fact]
    public void Every_exercise_of_the_shipped_library_is_told_in_plain_words() =>
        Assert.Equal(LibraryReader.Default().Exercises.Keys, HomeWordsReader.English().Exercises.Keys);

    [Fact]
    public void Another_language_can_be_put_beside_it_and_what_it_lacks_is_told()
    {
        using TempFolder folder = new();
        string path = folder.File("home-xx.yaml");
        string english = Shipped();

        File.WriteAllText(path, english.Replace("language: en", "language: xx", StringComparison.Ordinal).Replace("numbers: point", "numbers: comma", StringComparison.Ordinal));
        Assert.Equal(("xx", "1,5"), (HomeWordsReader.Read(path).Words!.Language, HomeWordsReader.Read(path).Words!.Number(1.5)));

        File.WriteAllText(path, english.Replace("  title: Your exercises at home\n", "", StringComparison.Ordinal).Replace("{count}", "{cuont}", StringComparison.Ordinal));
        (HomeWords? none, var problems) = HomeWordsReader.Read(path);
        Assert.Null(none);
        Assert.Contains(problems, problem => problem.Field == "labels.title" && problem.Wrong == "This field is missing.");
        Assert.Contains(problems, problem => problem.Field == "doses.times" && problem.Found == "{cuont}" && problem.Allowed == "{count}");
    }

    [Theory]
    [InlineData("")]
    [InlineData("schema: home-words/1\n")]
    [InlineData("- a\n- b\n")]
    [InlineData("schema: regimens/1\nlanguage: en\n")]
    public void What_is_no_file_of_words_is_refused_with_the_line(string text)
    {
        using TempFolder folder = new();
        File.WriteAllText(folder.File("home-xx.yaml"), text);

        (HomeWords? none, var problems) = HomeWordsReader.Read(folder.File("home-xx.yaml"));
        Assert.Null(none);
        Assert.All(problems, problem => Assert.IsType<FileProblem>(problem));
        Assert.NotEmpty(problems);
    }

    private static string Shipped()
    {
        using Stream stream = typeof(HomeWordsReader).Assembly.GetManifestResourceStream("words/home-en.yaml")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
