using System.Text.RegularExpressions;

namespace Progression.Architecture.Tests;

/// <summary>What is written to a terminal passes few doors, and each of them makes text harmless.</summary>
public sealed class ConsoleTests
{
    // Where the process begins, and where it ends though nothing else works any more.
    private static readonly string[] Writers = ["src/Progression.App/Program.cs", "src/Progression.App/Shell/LastWords.cs"];

    [Fact]
    public void Only_the_start_and_the_last_words_name_the_streams_of_the_process() =>
        Assert.Equal(Writers, Checkout.Under("src", "seed-demo").Where(file => Regex.IsMatch(file.Code, @"\bConsole\.(Out|Error|Write|WriteLine|OpenStandard\w+)\b")).Select(file => file.Path).Order(StringComparer.Ordinal));

    [Fact]
    public void The_last_words_are_fixed_or_made_harmless() =>
        Assert.All(
            Checkout.Under("src/Progression.App/Shell").Single(file => file.Path == Writers[1]).Code.Split('\n').Where(line => line.Contains("Console.", StringComparison.Ordinal)),
            line => Assert.Matches(@"Flush\(\)|TerminalReset\.Everything|SafeText\.OneLine|WriteLine\(""[^""]*""\);", line));

    [Fact]
    public void Only_the_views_write_into_the_library_of_the_terminal() =>
        Assert.Equal(["src/Progression.App/Shell/ScreenView.cs"], Checkout.Under("src/Progression.App").Where(file => Regex.IsMatch(file.Code, @"\bAddStr\(|\bAddRune\(")).Select(file => file.Path));
}
