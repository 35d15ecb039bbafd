using System.Collections.Concurrent;
using System.Diagnostics;
using System.Runtime.Versioning;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: a process is killed at any moment.</summary>
[SupportedOSPlatform("linux")]
public sealed class KilledWritersTests : IDisposable
{
    private const int Writers = 8;
    private readonly SharedFolder _shared = new();
    private readonly ConcurrentDictionary<string, ConcurrentBag<string>> _confirmed = new();
    private int _killed;

    [Fact]
    public async Task A_thousand_kills_over_eight_writers_of_two_accounts_lose_nothing_that_was_confirmed()
    {
        int kills = int.TryParse(Environment.GetEnvironmentVariable("FAULT_KILLS"), out int fewer) ? fewer : 1000;
        await Task.WhenAll(Enumerable.Range(0, Writers).Select(slot => Task.Run(() => Slot(slot, kills))));
        List<StoreNotice> notices = [];
        LiteDbPlanStore store = new(new StoreOptions(_shared.Path, Sample.Fields) { Notify = notices.Add });

        int confirmed = 0;
        foreach ((string code, ConcurrentBag<string> lines) in _confirmed)
        {
            HashSet<string> kept = [.. store.History(code, RecordKind.Plan).Select(stamp => $"saved {stamp.Revision} {stamp.Hash}")];
            Assert.DoesNotContain(lines, line => !kept.Contains(line));
            Assert.Equal(lines.Count, lines.Distinct().Count());
            confirmed += lines.Count;
        }

        VerifyReport report = store.Verify();
        Assert.Empty(report.Problems);
        Assert.DoesNotContain(notices, notice => notice.Kind > StoreNoticeKind.TornTailCut);
        long torn = File.Exists(Path.Combine(_shared.Path, "plans.journal.torn")) ? new FileInfo(Path.Combine(_shared.Path, "plans.journal.torn")).Length : 0;
        Figures.Print($"{_killed} kills, {Writers} writers, {(SharedFolder.HasTwoAccounts ? 2 : 1)} accounts: {confirmed} confirmed, all of {report.Entries} entries whole, 0 lost; {torn} bytes of unconfirmed saves moved aside");
    }

    public void Dispose() => _shared.Dispose();

    private async Task Slot(int slot, int kills)
    {
        Random random = new(slot);
        string code = $"K-{slot % 4}";
        for (int round = 0; Interlocked.Increment(ref _killed) <= kills; round++)
        {
            using Process writer = SharedFolder.Start(slot % 2, "append", _shared.Path, code, $"writer-{slot}-{round}", "100000");
            for (int lines = random.Next(1, 4); lines > 0; lines--)
            {
                Take(code, await writer.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));
            }

            await Task.Delay(random.Next(12), TestContext.Current.CancellationToken);
            writer.Kill();
            foreach (string line in await StoreDriver.Lines(writer, TestContext.Current.CancellationToken))
            {
                Take(code, line);
            }
        }

        Interlocked.Decrement(ref _killed);
    }

    // A kill may cut the line that was being printed; a whole one has number and hash. Any other line is an answer the writer did not want.
    private void Take(string code, string? line)
    {
        if (line?.Split(' ') is ["saved", _, { Length: 64 }])
        {
            _confirmed.GetOrAdd(code, _ => []).Add(line);
        }
        else if (line is not null)
        {
            Assert.StartsWith("s", line, StringComparison.Ordinal);
        }
    }
}
