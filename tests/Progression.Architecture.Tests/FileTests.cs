using System.Text.RegularExpressions;

namespace Progression.Architecture.Tests;

/// <summary>What a reader may expect of the files.</summary>
public sealed partial class FileTests
{
    private static readonly string[] NoConcepts = ["Common", "Utils", "Helpers", "Models", "Services", "Interfaces", "Infrastructure", "Misc"];

    [Fact]
    public void No_file_is_too_long_to_read()
    {
        Assert.All(Checkout.Under("src", "seed-demo"), file => Assert.True(file.Lines <= 400, $"{file.Path} has {file.Lines} lines"));
        Assert.All(Checkout.Under("tests"), file => Assert.True(file.Lines <= 300, $"{file.Path} has {file.Lines} lines"));
    }

    [Fact]
    public void Half_of_the_files_fit_a_screen()
    {
        List<int> lines = [.. Checkout.Under("src", "seed-demo").Select(file => file.Lines).Order()];
        Assert.InRange(lines[lines.Count / 2], 1, 80);
    }

    /// <summary>A few tiny types that only mean something together may share a file under a name of its own.</summary>
    [Fact]
    public void A_file_with_one_type_is_named_for_it()
    {
        IEnumerable<string> broken =
            from file in Checkout.Under("src", "seed-demo", "tests")
            where Name(file) != "Program"
            let types = TopLevelType().Matches(file.Code).Select(match => match.Groups[1].Value + match.Groups[2].Value).ToArray()
            where types.Length is 1 or > 4 && !types.Contains(Name(file))
            select $"{file} holds {string.Join(", ", types)}";
        Assert.Empty(broken);
    }

    [Fact]
    public void A_namespace_follows_the_folders() =>
        Assert.All(Checkout.Under("src").Where(file => Name(file) != "Program"), file =>
            Assert.Contains($"namespace {Path.GetDirectoryName(file.Path)!["src/".Length..].Replace(Path.DirectorySeparatorChar, '.')};", file.Code, StringComparison.Ordinal));

    [Fact]
    public void Folders_are_concepts() =>
        Assert.All(Checkout.Texts(), path => Assert.Empty(path.Split('/')[..^1].Intersect(NoConcepts, StringComparer.OrdinalIgnoreCase)));

    [Fact]
    public void Nothing_is_left_that_only_held_a_place() =>
        Assert.All(Checkout.Under("src", "seed-demo", "tests"), file =>
        {
            Assert.True(Name(file).Length > 1, file.Path);
            Assert.DoesNotMatch(@"\b(class|record) Place" + @"holder\b|NotImplemented" + @"Exception|\bTO" + @"DO\b|\bFIX" + "ME", file.Text);
        });

    /// <summary>Anna is invented: she is at home in the tests of the start list.</summary>
    [Fact]
    public void No_text_names_a_place_on_somebodys_machine() =>
        Assert.All(Checkout.Texts(), path => Assert.DoesNotMatch(MachinePath(), Checkout.Read(path)));

    private static string Name(SourceFile file) => Path.GetFileName(file.Path).Split('.')[0];

    [GeneratedRegex(@"^(?:public|internal) [^(=\n]*?\b(?:(?:class|record(?: struct)?|struct|interface|enum) (\w+)|delegate [^(\n]+ (\w+)(?:<\w+>)?\()", RegexOptions.Multiline)]
    private static partial Regex TopLevelType();

    [GeneratedRegex(@"(?<![\w.~\]-])/(home|root|work|tmp|Users|mnt)/(?!anna/)\w|\b[A-Z]:\\{1,2}Users\b")]
    private static partial Regex MachinePath();
}
