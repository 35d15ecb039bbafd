using System.Diagnostics;

namespace Progression.EndToEnd.Tests;

/// <summary>What came of a command of an account.</summary>
internal sealed record AccountRun(int Code, string Output);

/// <summary>
/// Real accounts and groups of this machine, there for one class of tests, with a copy of the program under test that all of them may run. It needs the
/// superuser; without, the tests are skipped.
/// </summary>
public sealed class ClinicAccounts : IDisposable
{
    public const string Anna = "prg-anna", Ben = "prg-ben", Supervisor = "prg-sup", Lead = "prg-lead", Outsider = "prg-out", Store = "prg-store";

    private static readonly string[] Groups = ["prg-clinic", "prg-therapists", "prg-supervisors", "prg-leads"];

    private static readonly (string Name, string Groups)[] People =
    [
        (Anna, "prg-clinic,prg-therapists"), (Ben, "prg-clinic,prg-therapists"), (Supervisor, "prg-clinic,prg-supervisors"), (Lead, "prg-clinic,prg-leads"),
        (Outsider, ""), (Store, ""),
    ];

    private readonly string? _why;

    public ClinicAccounts()
    {
        Folder = $"/srv/prg-test-{Environment.ProcessId}";
        _why = Environment.UserName != "root" ? "Only the superuser makes accounts." : null;
        if (_why is not null)
        {
            return;
        }

        Remove();
        Directory.CreateDirectory(Folder);
        Root($"cp -r '{(Published is { } program ? Path.GetDirectoryName(program) : AppContext.BaseDirectory)}' {Folder}/program; chmod -R a+rX,go-w {Folder}; {string.Concat(Groups.Select(group => $"groupadd {group};"))}");
        Root($"mkdir {Folder}/installed; cp '{AppContext.BaseDirectory}/progression-login' {Folder}/installed; printf '%s\\n' '#!/bin/sh' 'exec {Program} \"$@\"' >{Folder}/installed/progression; chmod 755 {Folder}/installed/*");
        foreach ((string name, string groups) in People)
        {
            Root($"useradd -m -d {Folder}/{name} -s /bin/sh {(groups.Length > 0 ? $"-G {groups}" : "")} {name}");
        }

        Root($"{Program} example | sed 's/^code: .*/code: K-100/' >{Folder}/case.yaml; chmod 644 {Folder}/case.yaml");
        _why = As(Outsider, $"{Program} --version").Code == 0 ? null : "The program under test, or the host it needs, cannot be run by other accounts here.";
    }

    /// <summary>Where everything of the test is.</summary>
    public string Folder { get; }

    /// <summary>The program, as every account may run it.</summary>
    public string Program => Published is { } program ? $"{Folder}/program/{Path.GetFileName(program)}" : $"dotnet {Folder}/program/progression.dll";

    private static string? Published => Environment.GetEnvironmentVariable("PROGRESSION_PROGRAM");

    /// <summary>The wrapper of the administrator's page around the program.</summary>
    public string Login => $"{Folder}/installed/progression-login";

    /// <summary>The folder of the records.</summary>
    public string Records => $"{Folder}/records";

    /// <summary>Skips the test where there can be no accounts.</summary>
    internal void Need() => Assert.SkipWhen(_why is not null, _why ?? "");

    /// <summary>The clinic's file.</summary>
    internal static string Yaml(string accounts) => $"""
        accounts: {accounts}
        roles:
          therapist: [prg-therapists]
          supervisor: [prg-supervisors]
          lead: [prg-leads]

        """;

    /// <summary>Runs shell commands as an account that has signed in with nothing of the superuser's.</summary>
    internal AccountRun As(string account, string commands) => Run("setpriv",
        ["--reuid", account, "--regid", account, "--init-groups", "env", "-i", $"HOME={Folder}/{account}", "PATH=/usr/local/bin:/usr/bin:/bin", "LANG=C.UTF-8", "TERM=dumb", $"PROGRESSION_STORE={Records}", "sh", "-c", commands]);

    /// <summary>Runs shell commands as the superuser, which have to succeed.</summary>
    internal static void Root(string commands)
    {
        AccountRun run = Run("sh", ["-ec", commands]);
        Assert.True(run.Code == 0, run.Output);
    }

    public void Dispose() => Remove();

    private void Remove()
    {
        if (Environment.UserName == "root")
        {
            _ = Run("sh", ["-c", $"rm -f /etc/sudoers.d/prg-test; {string.Concat(People.Select(one => $"userdel {one.Name};"))} {string.Concat(Groups.Select(group => $"groupdel {group};"))} rm -rf {Folder}"]);
        }
    }

    private static AccountRun Run(string program, string[] words)
    {
        ProcessStartInfo start = new(program, words) { RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true, WorkingDirectory = "/" };
        using Process process = Process.Start(start)!;
        process.StandardInput.Close();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd() + errors.Result;
        process.WaitForExit();
        return new AccountRun(process.ExitCode, output);
    }
}
