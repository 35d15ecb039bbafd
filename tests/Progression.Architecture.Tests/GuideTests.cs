using System.Text.RegularExpressions;

namespace Progression.Architecture.Tests;

/// <summary>The README and the contributors' guide say what is so.</summary>
public sealed partial class GuideTests
{
    [Theory]
    [InlineData("dotnet run --project src/Progression.App -- demo")]
    [InlineData("dotnet test Progression.sln")]
    public void The_readme_gives_the_command_and_the_proof_runs_it(string command)
    {
        Assert.Contains($"\n    {command}\n", Checkout.Read("README.md"), StringComparison.Ordinal);
        Assert.Contains(command["dotnet ".Length..], Checkout.Read(".ci/run"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    public void Every_file_and_folder_it_names_is_there(string guide) =>
        Assert.All(PathInText().Matches(Checkout.Read(guide)).Select(match => match.Value), path =>
            Assert.True(Path.Exists(Path.Combine(Checkout.Root, path)), $"{guide} names {path}"));

    [Fact]
    public void Every_code_name_in_the_list_of_words_is_there()
    {
        HashSet<string> names = [.. OurTypes.All.SelectMany(Names)];
        List<string> told = [.. WordRow().Matches(Checkout.Read("DEVELOPERS.md")).SelectMany(row => InBackticks().Matches(row.Groups[1].Value)).Select(match => match.Groups[1].Value)];
        Assert.NotEmpty(told);
        Assert.All(told, name => Assert.True(names.Contains(name) || Directory.Exists(Path.Combine(Checkout.Root, "src/Progression.Core", name)), name));
    }

    [Fact]
    public void Every_folder_of_core_is_told() =>
        Assert.All(
            Directory.EnumerateDirectories(Path.Combine(Checkout.Root, "src/Progression.Core")).Select(folder => Path.GetFileName(folder)!),
            folder => Assert.Matches($@"\n  (\w+ +)?{folder} ", Checkout.Read("DEVELOPERS.md")));

    private static IEnumerable<string> Names(Type type)
    {
        string name = type.Name.Split('`')[0];
        return type.GetMembers().Select(member => $"{name}.{member.Name}").Append(name).Append($"{name}<T>");
    }

    [GeneratedRegex(@"(?<![\w/.])(src|tests|shared|seed-demo|\.ci)/[\w./-]*\w")]
    private static partial Regex PathInText();

    [GeneratedRegex(@"^\|[^|]+\|[^|]+\|([^|]+)\|$", RegexOptions.Multiline)]
    private static partial Regex WordRow();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex InBackticks();
}
