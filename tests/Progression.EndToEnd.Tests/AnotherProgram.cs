using System.Diagnostics;

namespace Progression.EndToEnd.Tests;

/// <summary>Runs a script beside the tests with Debian's own Python, which has the readers that the scripts use.</summary>
internal static class AnotherProgram
{
    private const string Python = "/usr/bin/python3";

    /// <summary>What a script prints; it fails clearly when the script does.</summary>
    public static string Run(string script, string input, params string[] args)
    {
        ProcessStartInfo start = new(Python, [Path.Combine(AppContext.BaseDirectory, script), .. args]) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        Task<string> told = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        string printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{Python} {script}: {told.Result}");
        return printed;
    }
}
