using System.Text;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Yaml;

public sealed class YamlTextTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_file_of_fifty_megabytes_is_refused_by_its_length()
    {
        string path = Path.Combine(_folder, "big.yaml");
        using (FileStream file = File.Create(path))
        {
            file.SetLength(50_000_000);
        }

        FileProblem problem = Assert.Single(YamlDocument.Read(path).Problems);

        Assert.Equal("50000000 bytes", problem.Found);
        Assert.Equal("at most 1000000 bytes", problem.Allowed);
    }

    [Fact]
    public void A_file_of_just_the_greatest_length_is_read()
    {
        string path = Path.Combine(_folder, "full.yaml");
        File.WriteAllText(path, "a: 1\n#" + new string('x', 1_000_000 - 6));

        Assert.Empty(YamlDocument.Read(path).Problems);
        File.AppendAllText(path, "x");
        Assert.Contains("too long", Assert.Single(YamlDocument.Read(path).Problems).Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_and_a_folder_are_problems_that_name_them()
    {
        string missing = Path.Combine(_folder, "none.yaml");

        Assert.Equal(("There is no such file.", missing), Told(missing));
        Assert.Equal(("This is a folder.", _folder), Told(_folder));

        static (string, string) Told(string path)
        {
            FileProblem problem = Assert.Single(YamlDocument.Read(path).Problems);
            return (problem.Wrong, problem.File);
        }
    }

    [Theory]
    [InlineData(new byte[] { 0x61, 0x0A, 0x00, 0x01 }, 2, "binary data")]
    [InlineData(new byte[] { 0x61, 0x0A, 0x0A, 0xC3, 0x28 }, 3, "0xC3")]
    [InlineData(new byte[] { 0x61, 0x3A, 0x20, 0xE9 }, 1, "0xE9")]
    [InlineData(new byte[] { 0xED, 0xA0, 0x80 }, 1, "0xED")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x41 }, 1, "0xFF")]
    public void Bytes_that_are_no_text_are_refused_with_their_line(byte[] bytes, int line, string found)
    {
        FileProblem problem = Assert.Single(YamlDocument.Read("some.yaml", bytes).Problems);

        Assert.Equal((line, found), (problem.Line, problem.Found));
        Assert.Equal("UTF-8 text", problem.Allowed);
    }

    [Fact]
    public void A_byte_order_mark_at_the_start_is_not_part_of_the_text() =>
        Assert.Equal("a", YamlDocument.Read("some.yaml", [0xEF, 0xBB, 0xBF, .. "a: 1"u8]).Root!.Entries[0].Key.Text);

    [Fact]
    public void What_is_found_is_shortened_and_made_harmless()
    {
        FileProblem problem = Assert.Single(YamlDocument.Read("so\u001bme.yaml", Encoding.UTF8.GetBytes(new string('x', 500))).Problems);

        Assert.Equal(new string('x', 60) + "… (500 characters)", problem.Found);
        Assert.DoesNotContain('\u001b', problem.ToString());
    }

    [Fact]
    public void A_text_that_explodes_by_aliases_is_refused_with_one_problem()
    {
        StringBuilder text = new("a: &a [x, x, x, x, x, x, x, x, x]\n");
        for (char name = 'b'; name <= 'i'; name++)
        {
            char before = (char)(name - 1);
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{name}: &{name} [{string.Join(',', Enumerable.Repeat("*" + before, 9))}]\n");
        }

        FileProblem problem = Assert.Single(YamlDocument.Read("some.yaml", Encoding.UTF8.GetBytes(text.ToString())).Problems);

        Assert.Equal((1, "a", "&a"), (problem.Line, problem.Field, problem.Found));
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{")]
    [InlineData("- ")]
    [InlineData("? ")]
    [InlineData("{a: ")]
    [InlineData("a:\n")]
    [InlineData("!!a ")]
    [InlineData("&a ")]
    [InlineData("\"")]
    [InlineData("|\n")]
    [InlineData("%a\n")]
    public void A_megabyte_of_one_sign_ends_in_a_few_problems(string sign)
    {
        string text = string.Concat(Enumerable.Repeat(sign, 1_000_000 / sign.Length));

        Assert.InRange(YamlDocument.Read("some.yaml", Encoding.UTF8.GetBytes(text)).Problems.Length, 1, 100);
    }

    [Fact]
    public void No_damaged_text_makes_the_reader_fail()
    {
        Bogus.Randomizer random = new(20261125);
        byte[] good = Encoding.UTF8.GetBytes("case: A-1\nlist: [a, {b: 'c'}]\ntext: |\n  one\n  two\n\"q\": \"\\u00e9\"\nmap:\n  - x: 1\n    y: >-\n      z\n");
        byte[] signs = "&*!|>'\"%@`{}[],:?-#\\ \t\n<=~\0\r"u8.ToArray();
        for (int round = 0; round < 5_000; round++)
        {
            byte[] bytes = [.. good];
            for (int change = random.Int(1, 6); change > 0; change--)
            {
                bytes[random.Int(0, bytes.Length - 1)] = random.Bool(0.8f) ? random.ArrayElement(signs) : random.Byte();
            }

            YamlDocument document = YamlDocument.Read("some.yaml", bytes[..random.Int(0, bytes.Length)]);

            Assert.True(document.Root is null == document.Problems.Length > 0);
        }
    }
}
