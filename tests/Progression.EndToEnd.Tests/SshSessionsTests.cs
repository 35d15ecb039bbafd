namespace Progression.EndToEnd.Tests;

/// <summary>
/// Two people at once over a real sshd, set up as the administrator's page recommends: the program runs as the account of the records through sudo, sshd gives
/// nobody anything else.
/// </summary>
[Collection(nameof(ClinicAccounts))]
public sealed class SshSessionsTests : IClassFixture<ClinicAccounts>, IDisposable
{
    private readonly ClinicAccounts _clinic;
    private readonly PrivateSshd? _sshd;

    public SshSessionsTests(ClinicAccounts clinic)
    {
        _clinic = clinic;
        _clinic.Need();
        Assert.SkipUnless(File.Exists("/usr/sbin/sshd") && File.Exists("/usr/bin/sudo"), "There is no sshd or no sudo here.");
        string entry = $"{clinic.Folder}/clinic-workbook";
        File.WriteAllText($"{clinic.Folder}/clinic.yaml", ClinicAccounts.Yaml("sudo"));
        File.WriteAllText(entry, $"#!/bin/sh\nexport PROGRESSION_STORE={clinic.Records}\nexec {clinic.Login}\n");
        File.WriteAllText($"{clinic.Folder}/rule", $"""
            Defaults!{entry} env_reset, !setenv, use_pty, env_keep += "NO_COLOR"
            %prg-clinic ALL=({ClinicAccounts.Store}) NOPASSWD: {entry} ""

            """);
        ClinicAccounts.Root($"""
            rm -rf {clinic.Records}; install -d -o {ClinicAccounts.Store} -g {ClinicAccounts.Store} -m 700 {clinic.Records}
            install -m 644 {clinic.Folder}/clinic.yaml {clinic.Records}
            chmod 755 {entry}; visudo -cf {clinic.Folder}/rule; install -m 440 {clinic.Folder}/rule /etc/sudoers.d/prg-test
            """);
        foreach (string account in new[] { ClinicAccounts.Anna, ClinicAccounts.Supervisor })
        {
            ClinicAccounts.Root($"usermod -p '*' {account}");
        }

        _sshd = new PrivateSshd([ClinicAccounts.Anna, ClinicAccounts.Supervisor], Settings($"sudo -n -u {ClinicAccounts.Store} {entry}"));
    }

    [Fact]
    public void A_therapist_asks_a_supervisor_signs_at_the_same_time_and_the_therapist_sees_it_without_starting_again()
    {
        Seed();
        using TerminalWindow anna = Session(ClinicAccounts.Anna, "K-100");
        anna.Keys("Enter");
        anna.WaitFor("F1 help  Enter edit");
        anna.Keys("o");
        anna.WaitFor("ask for a review");
        anna.Keys("a");
        anna.WaitFor("A word to who reads it");
        anna.Keys("Enter");
        anna.WaitFor("review asked");
        anna.Keys("Esc");

        using TerminalWindow kim = Session(ClinicAccounts.Supervisor, "K-100");
        kim.Keys("Enter");
        kim.WaitFor("s sign");
        kim.Keys("s");
        kim.WaitFor("I have reviewed");
        kim.Keys("Enter");
        kim.WaitFor("y sign");
        kim.Keys("y");
        kim.WaitFor("Signed");

        anna.WaitUntil(screen => screen.Contains($"signed by {ClinicAccounts.Supervisor}", StringComparison.OrdinalIgnoreCase), "the signature to be seen");
    }

    [Theory]
    [InlineData("id")]
    [InlineData("sh -c id")]
    [InlineData("progression list; id")]
    [InlineData("$(id)")]
    [InlineData("`id`")]
    [InlineData("progression --store /etc")]
    [InlineData("\u001b[2Jrm -rf /")]
    public void What_the_client_asks_for_is_not_run(string command)
    {
        (int code, string output, string errors) = _sshd!.Try(ClinicAccounts.Anna, [], command);

        Assert.DoesNotContain("uid=", output + errors, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', output + errors);
        Assert.Contains("On a terminal, \"progression\" opens the workbook", output, StringComparison.Ordinal);
        Assert.Equal(0, code);
    }

    [Fact]
    public void No_file_is_copied_and_no_tunnel_is_dug()
    {
        Assert.NotEqual(0, _sshd!.Copy("sftp", ClinicAccounts.Anna, $"{ClinicAccounts.Anna}@127.0.0.1").Code);
        Assert.NotEqual(0, _sshd.Copy("scp", ClinicAccounts.Anna, $"{ClinicAccounts.Anna}@127.0.0.1:/etc/passwd", "/dev/null").Code);
        Assert.NotEqual(0, _sshd.Copy("scp", ClinicAccounts.Anna, "-O", $"{ClinicAccounts.Anna}@127.0.0.1:/etc/passwd", "/dev/null").Code);
        Assert.NotEqual(0, _sshd.Try(ClinicAccounts.Anna, ["-W", "127.0.0.1:22"]).Code);
        Assert.NotEqual(0, _sshd.Try(ClinicAccounts.Anna, ["-o", "ExitOnForwardFailure=yes", "-N", "-R", "127.0.0.1:0:127.0.0.1:22"]).Code);
        Assert.Contains("refused", _sshd.Log, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("PROGRESSION_STORE=/srv")]
    [InlineData("LD_PRELOAD=/srv/x.so")]
    [InlineData("SUDO_UID=0")]
    [InlineData("DOTNET_STARTUP_HOOKS=/srv/x.dll")]
    public void Variables_of_the_client_change_nothing(string variable)
    {
        (int code, string output, _) = _sshd!.Try(ClinicAccounts.Anna, ["-o", $"SetEnv={variable}"]);

        Assert.Contains("On a terminal, \"progression\" opens the workbook", output, StringComparison.Ordinal);
        Assert.Equal(0, code);
    }

    // Keys by which programs are stopped, left for a shell or made to run one. After each the connection is the workbook's or it is over.
    [Theory]
    [InlineData("C-z")]
    [InlineData("C-\\")]
    [InlineData("C-c")]
    [InlineData("!", "i", "d", "Enter")]
    [InlineData(":", "!", "i", "d", "Enter")]
    [InlineData("~", "C")]
    public void There_is_no_way_out_of_the_program_but_its_end(params string[] keys)
    {
        using TerminalWindow anna = Session(ClinicAccounts.Anna, "There is no case in this store yet");
        anna.Keys(keys);
        anna.Quiet();

        Assert.DoesNotContain("uid=", anna.Screen, StringComparison.Ordinal);
        Assert.Matches("^(Cases|Grid) |over, code", anna.Screen);
    }

    [Fact]
    public void A_line_that_drops_ends_the_session_on_the_server()
    {
        TerminalWindow anna = Session(ClinicAccounts.Anna, "There is no case in this store yet");
        anna.Drop();
        anna.Dispose();

        string left = "?";
        for (int turn = 0; turn < 100 && left.Length > 0; turn++)
        {
            Thread.Sleep(100);
            left = _clinic.As("root", $"pgrep -u {ClinicAccounts.Store} -f progression").Output.Trim();
        }

        Assert.Equal("", left);
    }

    public void Dispose() => _sshd?.Dispose();

    private TerminalWindow Session(string account, string shows)
    {
        TerminalWindow window = new();
        window.Line($"TERM=tmux-256color {_sshd!.Line(account)}; echo over, code $?");
        window.WaitFor(shows, 30000);
        return window;
    }

    private void Seed()
    {
        string entry = $"{_clinic.Folder}/save";
        File.WriteAllText(entry, $"#!/bin/sh\nPROGRESSION_STORE={_clinic.Records} exec {_clinic.Program} draft {_clinic.Folder}/case.yaml --save\n");
        ClinicAccounts.Root($"""
            chmod 755 {entry}; echo '%prg-clinic ALL=({ClinicAccounts.Store}) NOPASSWD: {entry} ""' >>/etc/sudoers.d/prg-test
            """);
        Assert.Contains("Saved K-100", _clinic.As(ClinicAccounts.Anna, $"sudo -n -u {ClinicAccounts.Store} {entry}").Output, StringComparison.Ordinal);
    }

    private static string Settings(string forced)
    {
        // The page's own block, so that it is the one that is tried.
        string[] page = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "administrators.md"));
        int first = Array.FindIndex(page, line => line.Trim() == "Match Group clinic");
        IEnumerable<string> block = page.Skip(first).TakeWhile(line => line.StartsWith("    ", StringComparison.Ordinal));
        return string.Join('\n', block.Select(line => line.Trim() switch
        {
            "Match Group clinic" => "Match Group prg-clinic",
            var one when one.StartsWith("ForceCommand", StringComparison.Ordinal) => $"    ForceCommand {forced}",
            var one when one.StartsWith("SetEnv", StringComparison.Ordinal) => "",
            var one => $"    {one}",
        }));
    }
}
