using System.Diagnostics;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: a backup is made while people work.</summary>
public sealed class BackupUnderLoadTests : IDisposable
{
    private const int Backups = 40;
    private readonly StoreCopy _shared = new();
    private readonly TempFolder _copies = new();

    [Fact]
    public async Task Forty_backups_under_load_restore_to_equal_heads()
    {
        Process[] writers = [.. Enumerable.Range(1, 2).Select(number => StoreDriver.Start("append", _shared.File(""), $"K-{number}", $"writer-{number}", "1000000"))];
        List<BackupReport> reports = [];
        try
        {
            await Task.WhenAll(writers.Select(async writer => Assert.NotNull(await writer.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken))));
            Array.ForEach(writers, writer => _ = writer.StandardOutput.ReadToEndAsync(CancellationToken.None));
            for (int number = 0; number < Backups; number++)
            {
                reports.Add(_shared.Store.BackUp(_copies.File($"copy-{number}")));
            }
        }
        finally
        {
            Array.ForEach(writers, writer => writer.Kill());
        }

        List<string> hashes = [];
        _shared.Store.Walk(entry => { hashes.Add(entry.LineHash); return true; });
        for (int number = 0; number < Backups; number++)
        {
            using StoreCopy restored = new();
            Assert.Null(restored.Store.Restore(_copies.File($"copy-{number}"), null, Sample.Monday).Problem);
            VerifyReport verified = restored.Store.Verify();

            Assert.Empty(verified.Problems);
            Assert.Equal(reports[number].HeadHash, verified.TailHash);
            Assert.Equal(hashes[(int)reports[number].Last - 1], verified.TailHash);
        }

        Assert.True(reports[^1].Last > reports[0].Last, "Nobody saved meanwhile.");
        Figures.Print($"{Backups} backups while {reports[^1].Last - reports[0].Last} entries were saved: {Backups} restored, {Backups} heads equal");
    }

    public void Dispose()
    {
        _shared.Dispose();
        _copies.Dispose();
    }
}
