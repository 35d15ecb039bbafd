using System.Diagnostics;
using System.Runtime.Versioning;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>A store's folder that two accounts share: 2770, group 3000. Run by somebody who is not the superuser, it has one account.</summary>
[SupportedOSPlatform("linux")]
internal sealed class SharedFolder : IDisposable
{
    private const string Group = "3000";
    private readonly TempFolder _outer = new();

    public SharedFolder()
    {
        Path = Directory.CreateDirectory(_outer.File("plans")).FullName;
        if (!HasTwoAccounts)
        {
            return;
        }

        // The folder above belongs to one account alone when it is made.
        File.SetUnixFileMode(_outer.Path, (UnixFileMode)0x1ED);
        Run("chown", $"root:{Group}", Path);
        Run("chmod", "2770", Path);
    }

    public static bool HasTwoAccounts => Environment.UserName == "root";

    public string Path { get; }

    /// <summary>Starts the driver as one of the accounts.</summary>
    /// <param name="account">0 or 1.</param>
    /// <param name="arguments">What the driver does.</param>
    public static Process Start(int account, params string[] arguments) => HasTwoAccounts
        ? StoreDriver.StartBy(["setpriv", "--reuid", account == 0 ? "3001" : "3002", "--regid", Group, "--clear-groups"], arguments)
        : StoreDriver.Start(arguments);

    public void Dispose() => _outer.Dispose();

    private static void Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(program, arguments);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
