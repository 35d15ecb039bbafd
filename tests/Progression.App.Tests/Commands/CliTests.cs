using Progression.App.Commands;

namespace Progression.App.Tests.Commands;

public sealed class CliTests
{
    // Numbers of the BSD sysexits list: EX_USAGE 64, EX_DATAERR 65, EX_NOINPUT 66, EX_SOFTWARE 70, EX_CANTCREAT 73,
    // EX_IOERR 74, EX_TEMPFAIL 75, EX_NOPERM 77, EX_CONFIG 78 (sysexits(3) manual page).
    [Fact]
    public void Keeps_the_published_exit_codes() => Assert.Equal(
        [64, 65, 66, 70, 73, 74, 75, 77, 78],
        [
            ExitCode.Usage, ExitCode.BadData, ExitCode.NoInput, ExitCode.Internal, ExitCode.CannotCreate,
            ExitCode.InputOutput, ExitCode.TryLater, ExitCode.NotPermitted, ExitCode.BadConfiguration,
        ]);

    [Fact]
    public void Explains_itself_without_a_terminal_and_ends_well()
    {
        CommandRun run = CommandRun.Of();

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("progression --help", run.Data, StringComparison.Ordinal);
        Assert.Empty(run.Messages);
    }

    [Fact]
    public void Opens_the_workbook_on_a_terminal() =>
        Assert.Equal(3, CommandRun.In(CommandRun.NoTerminal with { HasTerminal = true, OpenWorkbook = _ => 3 }).Code);

    [Theory]
    [InlineData("--colour")]
    [InlineData("dance")]
    [InlineData("@file")]
    public void Refuses_what_it_does_not_know_in_one_line_with_the_way_to_help(string word)
    {
        CommandRun run = CommandRun.Of(word);

        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Empty(run.Data);
        Assert.Contains(word, run.Messages, StringComparison.Ordinal);
        Assert.EndsWith("Run \"progression --help\" to see what is accepted.", run.Messages.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Shows_no_control_character_of_a_refused_word() =>
        Assert.DoesNotContain('\u001b', CommandRun.Of("\u001b[2Jdance").Messages);

    [Fact]
    public void Prints_help_with_exit_codes_and_the_version()
    {
        Assert.Contains("75 busy or changed, try again", CommandRun.Of("--help").Data, StringComparison.Ordinal);
        Assert.Matches(@"^progression [0-9]+\.[0-9]+\.[0-9]+\s*$", CommandRun.Of("--version").Data);
    }

    [Fact]
    public void Tells_a_fault_in_one_sentence_and_traces_only_when_asked()
    {
        CliEnvironment faulty = CommandRun.NoTerminal with { HasTerminal = true, OpenWorkbook = _ => throw new InvalidOperationException("inner words") };

        CommandRun quiet = CommandRun.In(faulty);
        CommandRun traced = CommandRun.In(faulty, "--debug");

        Assert.Equal((ExitCode.Internal, ExitCode.Internal), (quiet.Code, traced.Code));
        Assert.Single(quiet.Messages.TrimEnd().Split('\n'));
        Assert.DoesNotContain("   at ", quiet.Messages, StringComparison.Ordinal);
        Assert.Contains("   at ", traced.Messages, StringComparison.Ordinal);
    }

    public static TheoryData<Exception, int> Faults => new()
    {
        { new FileNotFoundException("It is not there."), ExitCode.NoInput },
        { new DirectoryNotFoundException("It is not there."), ExitCode.NoInput },
        { new UnauthorizedAccessException("Denied."), ExitCode.NotPermitted },
        { new IOException("The disk is full."), ExitCode.InputOutput },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Gives_each_fault_of_the_outside_its_own_code(Exception fault, int code)
    {
        CommandRun run = CommandRun.In(CommandRun.NoTerminal with { HasTerminal = true, OpenWorkbook = _ => throw fault });

        Assert.Equal(code, run.Code);
        Assert.Contains(fault.Message, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Ends_quietly_when_the_reader_has_closed_the_pipe()
    {
        using StringWriter messages = new();
        using FailingWriter closed = new(32); // EPIPE is 32 on Linux: errno-base.h.

        Assert.Equal(ExitCode.Good, Cli.Run([], closed, messages, CommandRun.NoTerminal));
        Assert.Empty(messages.ToString());
    }

    [Fact]
    public void Reports_an_output_that_cannot_be_written()
    {
        using StringWriter messages = new();
        using FailingWriter full = new(28); // ENOSPC is 28 on Linux: errno-base.h.

        Assert.Equal(ExitCode.InputOutput, Cli.Run([], full, messages, CommandRun.NoTerminal));
        Assert.NotEmpty(messages.ToString());
    }

    private sealed class FailingWriter(int reason) : StringWriter(System.Globalization.CultureInfo.InvariantCulture)
    {
        public override void WriteLine(string? value) => throw new IOException("No more output.", reason);
    }
}
