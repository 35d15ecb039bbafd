using System.Diagnostics;
using Progression.App.Commands;

namespace Progression.App.Tests.Commands.Manual;

public sealed class CompletionTests
{
    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    public void The_shell_understands_the_script(string shell)
    {
        Assert.SkipUnless(File.Exists("/usr/bin/" + shell), $"{shell} is not installed.");
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, Script(shell));
            Assert.Equal((0, ""), Run(shell, "-n", file));
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    public void The_script_knows_every_command_and_its_options(string shell) =>
        Assert.All(
            (string[])["draft", "reassess", "library", "show", "completion", "manual", "accept", "second-width", "store", "help", "all", "none"],
            word => Assert.Contains(word, Script(shell), StringComparison.Ordinal));

    [Theory]
    [InlineData("reass", "reassess")]
    [InlineData("library ", "list show check")]
    [InlineData("library sh", "show")]
    [InlineData("reassess EXAMPLE-07 --accept ", "all none")]
    [InlineData("draft case.yaml --we", "--weeks")]
    [InlineData("dose --count-last-rest ", "yes no")]
    [InlineData("example ", "assessment case clinic session")]
    [InlineData("completion f", "fish")]
    [InlineData("draft --weeks ", "")]
    public void Bash_offers_what_can_follow(string typed, string offered)
    {
        const string Asking = """
            eval "$1"; read -ra COMP_WORDS <<<"progression $2"; [[ $2 == *' ' || -z $2 ]] && COMP_WORDS+=("")
            COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); cd /dev; _progression; echo "${COMPREPLY[*]}"
            """;
        (int code, string said) = Run("bash", "-c", Asking, "bash", Script("bash"), typed);
        Assert.Equal(0, code);
        Assert.Equal(offered.Split(' ').Order(), said.Trim().Split(' ').Order());
    }

    [Theory]
    [InlineData("library sh", "show")]
    [InlineData("check --js", "--json")]
    [InlineData("library check --we", "")]
    [InlineData("reassess X --accept n", "none")]
    public void Fish_offers_what_can_follow(string typed, string offered)
    {
        Assert.SkipUnless(File.Exists("/usr/bin/fish"), "fish is not installed.");
        (_, string said) = Run("fish", "--no-config", "-c", $"{Script("fish")}\ncomplete -C 'progression {typed}'");
        Assert.Equal(offered, said.Split('\t')[0].Trim());
    }

    [Fact]
    public void A_shell_it_does_not_know_is_refused() => Assert.Equal(ExitCode.Usage, CommandRun.Of("completion", "dash").Code);

    private static string Script(string shell) => CommandRun.Of("completion", shell).Data;

    private static (int Code, string Said) Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        string said = process.StandardOutput.ReadToEnd() + process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said);
    }
}
