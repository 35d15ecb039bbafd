using System.Diagnostics;

namespace Progression.App.Tests.Commands.Manual;

public sealed class ManPageTests
{
    [Fact]
    public void The_page_in_the_documentation_is_the_one_the_commands_make() => Snapshot.MatchPage(Page, "docs/man/progression.1");

    // The macros of man(7), as groff and mandoc document them, that a page of commands needs.
    [Fact]
    public void Every_line_that_begins_with_a_dot_is_a_known_macro() =>
        Assert.All(
            Page.Split('\n').Where(line => line.StartsWith('.') || line.StartsWith('\'')),
            line => Assert.Contains(line.Split(' ')[0], (string[])[".\\\"", ".TH", ".SH", ".SS", ".TP", ".PP", ".B", ".I", ".BR", ".IR", ".nf", ".fi", ".br"]));

    [Fact]
    public void Every_command_and_option_of_the_help_is_on_the_page()
    {
        string page = Page.Replace("\\-", "-", StringComparison.Ordinal);
        Assert.Contains(".SS library show", page, StringComparison.Ordinal);
        Assert.Contains("\\fB--second-width\\fR \\fITIME\\fR", page, StringComparison.Ordinal);
        Assert.Contains("75 busy or changed, try again", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_formatter_finds_nothing_wrong()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/mandoc"), "mandoc is not installed.");
        using Process mandoc = Process.Start(new ProcessStartInfo("/usr/bin/mandoc", ["-T", "lint", "-W", "error"]) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
        mandoc.StandardInput.Write(Page);
        mandoc.StandardInput.Close();
        string told = mandoc.StandardOutput.ReadToEnd() + mandoc.StandardError.ReadToEnd();
        mandoc.WaitForExit();
        Assert.Equal("", told);
    }

    private static string Page => CommandRun.Of("manual").Data;
}
