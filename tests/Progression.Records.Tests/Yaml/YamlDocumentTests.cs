using System.Text;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Yaml;

public sealed class YamlDocumentTests
{
    private static YamlDocument Read(string text) => YamlDocument.Read("some.yaml", Encoding.UTF8.GetBytes(text));

    private static FileProblem OnlyProblem(YamlDocument document)
    {
        Assert.Null(document.Root);
        return Assert.Single(document.Problems);
    }

    [Fact]
    public void Keeps_maps_lists_and_values_with_their_lines()
    {
        YamlMap root = Read("# note\nside: left\nitems:\n  - a\n  - b: 1\n").Root!;

        Assert.Equal(["side", "items"], root.Entries.Select(entry => entry.Key.Text));
        Assert.Equal(2, root.Entries[0].Value.Line);
        YamlList items = Assert.IsType<YamlList>(root.Entries[1].Value);
        Assert.Equal([4, 5], items.Items.Select(item => item.Line));
    }

    [Theory]
    [InlineData("a: no", "no")]
    [InlineData("a: 007", "007")]
    [InlineData("a: 1e3", "1e3")]
    [InlineData("a: 12:30", "12:30")]
    [InlineData("a: 2026-03-09", "2026-03-09")]
    public void Leaves_a_value_as_it_was_written(string text, string expected) =>
        Assert.Equal(expected, Assert.IsType<YamlScalar>(Read(text).Root!.Entries[0].Value).Text);

    [Theory]
    [InlineData("a: 1\nb: &x 2\nc: *x\n", 2, "b", "Anchors and aliases", "&x")]
    [InlineData("a: 1\nb: *x\n", 2, "b", "Anchors and aliases", "*x")]
    [InlineData("a: !!str 1\n", 1, "a", "Tags", "tag:yaml.org,2002:str")]
    [InlineData("a: !secret 1\n", 1, "a", "Tags", "!secret")]
    [InlineData("b:\n  <<: {c: 1}\n", 2, "b.<<", "Merge keys", "<<")]
    [InlineData("a: 1\nb: 2\na: 3\n", 3, "a", "already stands on line 1", "a")]
    [InlineData("? [a]\n: 1\n", 1, "", "key is not a plain word", "a list")]
    [InlineData("a: 1\n---\nb: 2\n", 2, "", "second document", "---")]
    [InlineData("- a\n- b\n", 1, "", "not a map of fields", "a list")]
    [InlineData("just words", 1, "", "not a map of fields", "just words")]
    [InlineData("a: \"x\\u202Ey\"\n", 1, "a", "escape", "U+202E, which changes the direction of writing")]
    [InlineData("a: \"x\\e[2J\"\n", 1, "a", "escape", "U+001B")]
    public void Refuses_what_a_plain_file_does_not_need(string text, int line, string field, string wrong, string found)
    {
        FileProblem problem = OnlyProblem(Read(text));

        Assert.Equal(("some.yaml", line, field, found), (problem.File, problem.Line, problem.Field, problem.Found));
        Assert.Contains(wrong, problem.Wrong, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Allowed);
    }

    [Theory]
    [InlineData("a: 1\nb: [1, 2\n", 2, "cut short")]
    [InlineData("a: 1\nb: \"open\n", 2, "cut short")]
    [InlineData("a: 1\nb", 2, "cut short")]
    [InlineData("a: 1\n\tb: 2\nc: 3\n", 2, "tab")]
    [InlineData("a: 1\n]\nc: 3\n", 2, "cannot be understood")]
    [InlineData("a: b: c\nd: 3\n", 1, "cannot be understood")]
    public void Says_where_a_text_stops_being_yaml(string text, int line, string wrong)
    {
        FileProblem problem = OnlyProblem(Read(text));

        Assert.Equal(line, problem.Line);
        Assert.Contains(wrong, problem.Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("# only a comment\n")]
    [InlineData("---\n")]
    public void An_empty_file_is_refused(string text) => Assert.StartsWith("The file ", OnlyProblem(Read(text)).Wrong, StringComparison.Ordinal);

    [Theory]
    [InlineData(0x1B, "U+001B")]
    [InlineData(0x07, "U+0007")]
    [InlineData(0x7F, "U+007F")]
    [InlineData(0x85, "U+0085")]
    [InlineData(0x9B, "U+009B")]
    [InlineData(0x200B, "U+200B")]
    [InlineData(0x200F, "U+200F, which changes the direction of writing")]
    [InlineData(0x202E, "U+202E, which changes the direction of writing")]
    [InlineData(0x2066, "U+2066, which changes the direction of writing")]
    [InlineData(0x2028, "U+2028")]
    [InlineData(0xE000, "U+E000")]
    [InlineData(0x00AD, "U+00AD")]
    [InlineData(0x3164, "U+3164")]
    [InlineData(0xFE0F, "U+FE0F")]
    public void Names_each_hidden_character_and_its_line(int point, string found)
    {
        FileProblem problem = OnlyProblem(Read($"a: 1\nb: x{char.ConvertFromUtf32(point)}y\n"));

        Assert.Equal((2, found), (problem.Line, problem.Found));
    }

    [Fact]
    public void Letters_of_any_script_and_ordinary_signs_are_taken() =>
        Assert.Empty(Read("a: Müller 95° 250 µs Ωμέγα 膝 e\u0301 a\u00A0b \uFFFD\n").Problems);

    [Fact]
    public void Depth_twenty_is_read_and_twenty_one_refused()
    {
        static string Nested(int depth) => "a: " + new string('[', depth - 1) + new string(']', depth - 1);

        Assert.Empty(Read(Nested(20)).Problems);
        Assert.Contains("at most 20 levels", OnlyProblem(Read(Nested(21))).Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Twenty_thousand_values_are_read_and_one_more_refused()
    {
        // The map, its one key and the list are three of them.
        static string Items(int values) => "a: [" + string.Join(',', Enumerable.Repeat("1", values - 3)) + "]";

        Assert.Empty(Read(Items(20_000)).Problems);
        Assert.Contains("20000", OnlyProblem(Read(Items(20_001))).Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void No_more_than_a_hundred_problems_are_kept()
    {
        string text = string.Concat(Enumerable.Repeat("a: 1\n", 500));

        Assert.Equal(100, Read(text).Problems.Length);
    }
}
