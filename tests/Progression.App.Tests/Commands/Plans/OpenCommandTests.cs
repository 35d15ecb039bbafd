using Progression.App.Commands;
using Progression.App.Stores;
using Progression.App.Tests.Stores;

namespace Progression.App.Tests.Commands.Plans;

public sealed class OpenCommandTests
{
    [Fact]
    public void Prints_the_plan_where_there_is_no_terminal()
    {
        using TempStore temp = new();
        temp.Run("demo");
        CommandRun run = temp.Run("open", "tern-11", "--store", temp.Demo);
        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        Assert.StartsWith("UNSIGNED DRAFT.", run.Data, StringComparison.Ordinal);
        Assert.Contains("\nTERN-11: Total knee replacement", run.Data, StringComparison.Ordinal);
        Assert.Contains("ACTIVE WORK", run.Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("NOBODY-1", ExitCode.NoInput)]
    [InlineData("not a code", ExitCode.Usage)]
    public void Says_what_is_not_there_and_makes_no_store_for_it(string code, int exit)
    {
        using TempStore temp = new();
        CommandRun run = temp.Run("open", code);
        Assert.Equal((exit, ""), (run.Code, run.Data));
        Assert.NotEmpty(run.Messages);
        Assert.False(Directory.Exists(temp.Own));
    }

    [Fact]
    public void On_a_terminal_that_plan_alone_is_opened()
    {
        using TempStore temp = new();
        temp.Run("demo");
        WorkbookOrder? asked = null;
        CliEnvironment terminal = temp.Environment with { HasTerminal = true, OpenWorkbook = order => { asked = order; return 0; } };
        CommandRun.In(terminal, "open", "TERN-11", "--store", temp.Demo);
        Assert.Equal(("TERN-11", true), (asked!.Code!.Text, asked.OnlyThat));
    }

    [Fact]
    public void A_terminal_that_cannot_place_text_is_told_why_beside_the_usage()
    {
        CommandRun run = CommandRun.In(CommandRun.NoTerminal with { WhyNoTerminal = "TERM says this one is dumb." });
        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("dumb", run.Messages, StringComparison.Ordinal);
        Assert.Contains("progression --help", run.Data, StringComparison.Ordinal);
    }
}
