using System.Diagnostics;

namespace Progression.Records.Tests.Storage;

/// <summary>The second process of these tests.</summary>
internal static class StoreDriver
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "Progression.StoreDriver.dll");

    public static Process Start(params string[] arguments) => StartBy([], arguments);

    /// <summary>Starts it as the last argument of other commands, such as one that sets the umask.</summary>
    public static Process StartBy(IReadOnlyList<string> before, params string[] arguments)
    {
        string[] command = [.. before, Environment.ProcessPath is { } path && Path.GetFileName(path) == "dotnet" ? path : "dotnet", Program, .. arguments];
        ProcessStartInfo start = new(command[0], command[1..]) { RedirectStandardOutput = true, RedirectStandardInput = true };
        return Process.Start(start)!;
    }

    /// <summary>All it printed, when it has ended.</summary>
    public static async Task<string[]> Lines(Process process, CancellationToken cancellation)
    {
        string text = await process.StandardOutput.ReadToEndAsync(cancellation);
        await process.WaitForExitAsync(cancellation);
        return text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
