namespace Progression.EndToEnd.Tests;

/// <summary>The second way: the program runs as the account that owns the records, through a sudo rule, and nobody else can touch a file.</summary>
[Collection(nameof(ClinicAccounts))]
public sealed class AccountsThroughSudoTests : IClassFixture<ClinicAccounts>
{
    private static readonly string[] Entries = ["me", "save", "audit"];
    private readonly ClinicAccounts _clinic;

    public AccountsThroughSudoTests(ClinicAccounts clinic)
    {
        _clinic = clinic;
        _clinic.Need();
        Assert.SkipUnless(File.Exists("/usr/bin/sudo"), "There is no sudo here.");
        File.WriteAllText($"{clinic.Folder}/clinic.yaml", ClinicAccounts.Yaml("sudo"));
        ClinicAccounts.Root($"rm -rf {clinic.Records}; install -d -o {ClinicAccounts.Store} -g {ClinicAccounts.Store} -m 700 {clinic.Records}; install -m 644 {clinic.Folder}/clinic.yaml {clinic.Records}");
        // Each of them does one thing and takes no words, as the administrator's page has it for the workbook.
        Entry("me", "clinic me");
        Entry("save", $"draft {clinic.Folder}/case.yaml --save");
        Entry("audit", "audit");
        string commands = string.Join(", ", Entries.Select(name => $"{clinic.Folder}/{name} \"\""));
        File.WriteAllText($"{clinic.Folder}/rule", $"%prg-clinic ALL=({ClinicAccounts.Store}) NOPASSWD: {commands}\n");
        ClinicAccounts.Root($"visudo -cf {clinic.Folder}/rule && install -m 440 {clinic.Folder}/rule /etc/sudoers.d/prg-test");
    }

    [Fact]
    public void The_person_is_who_called_sudo_and_roles_hold()
    {
        Assert.StartsWith($"{ClinicAccounts.Anna}, therapist (account number ", Sudo(ClinicAccounts.Anna, "me").Output, StringComparison.Ordinal);
        Assert.StartsWith($"{ClinicAccounts.Supervisor}, supervisor (account number ", Sudo(ClinicAccounts.Supervisor, "me").Output, StringComparison.Ordinal);
        Assert.Contains("Saved K-100", Sudo(ClinicAccounts.Anna, "save").Output, StringComparison.Ordinal);
        Assert.Equal(77, Sudo(ClinicAccounts.Supervisor, "save").Code);

        string audit = Sudo(ClinicAccounts.Lead, "audit").Output;

        Assert.Matches($@"{ClinicAccounts.Anna} \[\d+\]  created K-100 plan revision 1", audit);
        Assert.Matches($@"{ClinicAccounts.Supervisor} \[\d+\]  refused K-100", audit);
        Assert.DoesNotContain(ClinicAccounts.Store, audit, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ClinicAccounts.Anna)]
    [InlineData(ClinicAccounts.Lead)]
    [InlineData(ClinicAccounts.Outsider)]
    public void Nobody_reads_or_writes_a_file_by_other_means(string account)
    {
        Assert.Contains("Saved K-100", Sudo(ClinicAccounts.Anna, "save").Output, StringComparison.Ordinal);
        foreach (string probe in new[] { "ls", "cat plans.journal", "cat plans.db", "touch new", "cat clinic.yaml", "echo x >>plans.journal", "flock plans.lock true" })
        {
            Assert.NotEqual(0, _clinic.As(account, $"cd {_clinic.Records} && {probe}").Code);
            Assert.NotEqual(0, _clinic.As(account, probe.Replace("plans", $"{_clinic.Records}/plans", StringComparison.Ordinal).Replace("ls", $"ls {_clinic.Records}", StringComparison.Ordinal)
                .Replace("new", $"{_clinic.Records}/new", StringComparison.Ordinal).Replace("clinic.yaml", $"{_clinic.Records}/clinic.yaml", StringComparison.Ordinal)).Code);
        }

        Assert.Equal(77, _clinic.As(account, $"{_clinic.Program} list").Code);
        Assert.Equal(77, _clinic.As(account, $"SUDO_UID=0 {_clinic.Program} list").Code);
    }

    [Theory]
    [InlineData("FOLDER/me --store /srv")]
    [InlineData("FOLDER/me --help")]
    [InlineData("PROGRESSION_STORE=/srv FOLDER/me")]
    [InlineData("LD_PRELOAD=/srv/x.so FOLDER/me")]
    [InlineData("SUDO_UID=0 FOLDER/me")]
    [InlineData("/bin/sh")]
    [InlineData("-s")]
    [InlineData("-e /srv/x")]
    [InlineData("/bin/cat FOLDER/records/plans.journal")]
    public void Sudo_runs_nothing_but_the_exact_commands(string words) =>
        Assert.Equal(1, _clinic.As(ClinicAccounts.Anna, $"sudo -n -u {ClinicAccounts.Store} {words.Replace("FOLDER", _clinic.Folder, StringComparison.Ordinal)}").Code);

    [Fact]
    public void Nothing_in_the_callers_environment_changes_what_runs()
    {
        string smuggled = $"cd $HOME; printf 'exit 9' >hook; export PROGRESSION_STORE=$HOME PROGRESSION_LIBRARY=$HOME LD_PRELOAD=$HOME/x.so LD_LIBRARY_PATH=$HOME DOTNET_STARTUP_HOOKS=$HOME/x.dll "
            + "DOTNET_ROOT=$HOME COMPlus_x=1 EDITOR=$HOME/hook VISUAL=$HOME/hook PAGER=$HOME/hook ENV=$HOME/hook BASH_ENV=$HOME/hook IFS=/ HOME=/nowhere XDG_DATA_HOME=/nowhere TERM=\"$(printf '\\033[31mrubbish')\" SUDO_UID=0 TMPDIR=/nowhere; ";

        AccountRun run = _clinic.As(ClinicAccounts.Anna, $"{smuggled} /usr/bin/sudo -n -u {ClinicAccounts.Store} {_clinic.Folder}/me");

        Assert.Contains($"{ClinicAccounts.Anna}, therapist (account number ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Records of a clinic.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_is_not_named_by_the_rule_is_refused_by_sudo() => Assert.Equal(1, Sudo(ClinicAccounts.Outsider, "me").Code);

    [Fact]
    public void The_records_account_itself_and_root_without_sudo_are_nobody()
    {
        Assert.Contains("sudo did not start the program", _clinic.As(ClinicAccounts.Store, $"{_clinic.Program} list").Output, StringComparison.Ordinal);
        Assert.Contains("It runs as root.", _clinic.As("root", $"{_clinic.Program} list").Output, StringComparison.Ordinal);
        AccountRun keeper = _clinic.As("root", $"sudo -n -u {ClinicAccounts.Store} {_clinic.Folder}/me");
        Assert.StartsWith("root, keeper (account number 0)", keeper.Output, StringComparison.Ordinal);
        Assert.Contains("You may not: open cases", keeper.Output, StringComparison.Ordinal);
    }

    private AccountRun Sudo(string account, string entry) => _clinic.As(account, $"sudo -n -u {ClinicAccounts.Store} {_clinic.Folder}/{entry}");

    private void Entry(string name, string words) =>
        ClinicAccounts.Root($"printf '%s\\n' '#!/bin/sh' 'PROGRESSION_STORE={_clinic.Records} exec {_clinic.Program} {words}' >{_clinic.Folder}/{name}; chmod 755 {_clinic.Folder}/{name}");
}
