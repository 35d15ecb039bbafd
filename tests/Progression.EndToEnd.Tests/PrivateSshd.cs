using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Progression.EndToEnd.Tests;

/// <summary>
/// A real sshd on 127.0.0.1 that is there for one test: its own port, host key and settings, and a throw-away key for each account. It needs the superuser,
/// because only then sshd can become somebody else.
/// </summary>
internal sealed class PrivateSshd : IDisposable
{
    private static int _daemons;
    private readonly int _port;
    private readonly Process _daemon;

    /// <param name="accounts">The accounts that get a key.</param>
    /// <param name="settings">What follows the least that an sshd needs: as the administrator's page has it.</param>
    public PrivateSshd(IEnumerable<string> accounts, string settings)
    {
        // sshd trusts keys only where nobody else may write, so not below the folder for temporary files.
        Folder = Directory.CreateDirectory($"/srv/progression-sshd-{Environment.ProcessId}-{Interlocked.Increment(ref _daemons)}").FullName;
        Directory.CreateDirectory("/run/sshd");
        Run("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-f", In("host"));
        Directory.CreateDirectory(In("keys"));
        foreach (string account in accounts)
        {
            Run("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", account, "-f", Key(account));
            File.Copy(Key(account) + ".pub", Path.Combine(In("keys"), account));
        }

        _port = FreePort();
        File.WriteAllText(In("config"), $"""
            Port {_port.ToString(CultureInfo.InvariantCulture)}
            ListenAddress 127.0.0.1
            HostKey {In("host")}
            PidFile none
            AuthorizedKeysFile {In("keys")}/%u
            UsePAM no
            KbdInteractiveAuthentication no
            Subsystem sftp internal-sftp
            {settings}
            """);
        Run("/usr/sbin/sshd", "-t", "-f", In("config"));
        _daemon = Process.Start(new ProcessStartInfo("/usr/sbin/sshd", ["-D", "-f", In("config"), "-E", In("log")]))!;
        WaitUntilItListens();
    }

    /// <summary>Where its keys, settings and log are; readable for all, writable for the superuser.</summary>
    public string Folder { get; }

    /// <summary>What it wrote down.</summary>
    public string Log => File.ReadAllText(In("log"));

    /// <summary>A command line that signs an account in.</summary>
    /// <param name="account">The account.</param>
    /// <param name="options">What comes before the host: "-t", "-L ...".</param>
    /// <param name="command">What is asked for there; empty for nothing.</param>
    public string Line(string account, string options = "-t", string command = "") =>
        $"ssh {options} {string.Join(' ', Options(account))} {account}@127.0.0.1 {command}".TrimEnd();

    /// <summary>Signs an account in without a terminal and gives what came back.</summary>
    public (int Code, string Output, string Errors) Try(string account, string[] options, params string[] command) =>
        Run("ssh", [.. options, .. Options(account), $"{account}@127.0.0.1", .. command], TimeSpan.FromSeconds(20));

    /// <summary>Copies or lists files, as an account.</summary>
    /// <param name="program">sftp or scp.</param>
    /// <param name="account">The account.</param>
    /// <param name="words">What follows the options, with the host spelled out.</param>
    public (int Code, string Output, string Errors) Copy(string program, string account, params string[] words) =>
        Run(program, [.. Common(account), "-P", Port, .. words], TimeSpan.FromSeconds(20));

    public void Dispose()
    {
        _daemon.Kill(entireProcessTree: true);
        _daemon.WaitForExit();
        _daemon.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private string Port => _port.ToString(CultureInfo.InvariantCulture);

    private string In(string name) => Path.Combine(Folder, name);

    private string Key(string account) => In($"id-{account}");

    private string[] Options(string account) => [.. Common(account), "-p", Port];

    private string[] Common(string account) =>
    [
        "-q", "-F", "none", "-i", Key(account), "-o", "IdentitiesOnly=yes", "-o", "BatchMode=yes",
        "-o", "StrictHostKeyChecking=no", "-o", "UserKnownHostsFile=/dev/null",
    ];

    private void WaitUntilItListens()
    {
        for (int turn = 0; turn < 100; turn++)
        {
            try
            {
                using TcpClient there = new();
                there.Connect(IPAddress.Loopback, _port);
                return;
            }
            catch (SocketException)
            {
                Thread.Sleep(50);
            }
        }

        throw new TimeoutException($"sshd does not listen: {(File.Exists(In("log")) ? Log : "no log")}");
    }

    private static int FreePort()
    {
        using TcpListener any = new(IPAddress.Loopback, 0);
        any.Start();
        return ((IPEndPoint)any.LocalEndpoint).Port;
    }

    private static void Run(string program, params string[] words)
    {
        (int code, _, string errors) = Run(program, words, TimeSpan.FromSeconds(30));
        if (code != 0)
        {
            throw new InvalidOperationException($"{program} ended with {code}: {errors}");
        }
    }

    private static (int Code, string Output, string Errors) Run(string program, string[] words, TimeSpan patience)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, words)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        process.StandardInput.Close();
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(patience))
        {
            process.Kill(entireProcessTree: true);
            return (-1, "", "It did not come to an end.");
        }

        return (process.ExitCode, output.Result, errors.Result);
    }
}
