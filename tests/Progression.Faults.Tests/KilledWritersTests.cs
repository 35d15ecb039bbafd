using System.Collections.Concurrent;
using System.Diagnostics;
using System.Runtime.Versioning;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: a process is killed at any moment.</summary>
[SupportedOSPlatform("linux")]
public sealed class KilledWritersTests
{
    private const int Writers = 8;
    private const int Rounds = 4;
    private int _started;
    private int _killed;
    private long _confirmed;
    private long _entries;
    private long _torn;

    [Fact]
    public async Task A_thousand_kills_over_eight_writers_of_two_accounts_lose_nothing_that_was_confirmed()
    {
        int kills = int.TryParse(Environment.GetEnvironmentVariable("FAULT_KILLS"), out int fewer) ? fewer : 1000;

        // In stores of their own, because a writer that was killed makes the next one read the whole journal.
        for (int round = 0; round < Rounds; round++)
        {
            using SharedFolder shared = new();
            ConcurrentDictionary<string, ConcurrentBag<string>> confirmed = new();
            _started = 0;
            await Task.WhenAll(Enumerable.Range(0, Writers).Select(slot => Task.Run(() => Slot(shared, slot, kills / Rounds, confirmed))));
            Judge(shared, confirmed);
        }

        Figures.Print($"{_killed} kills, {Writers} writers, {(SharedFolder.HasTwoAccounts ? 2 : 1)} accounts: {_confirmed} confirmed, all of {_entries} entries whole, 0 lost; {_torn} bytes of unconfirmed saves moved aside");
    }

    private void Judge(SharedFolder shared, ConcurrentDictionary<string, ConcurrentBag<string>> confirmed)
    {
        List<StoreNotice> notices = [];
        LiteDbPlanStore store = new(new StoreOptions(shared.Path, Sample.Fields) { Notify = notices.Add });
        foreach ((string code, ConcurrentBag<string> lines) in confirmed)
        {
            HashSet<string> kept = [.. store.History(code, RecordKind.Plan).Select(stamp => $"saved {stamp.Revision} {stamp.Hash}")];
            Assert.DoesNotContain(lines, line => !kept.Contains(line));
            Assert.Equal(lines.Count, lines.Distinct().Count());
            _confirmed += lines.Count;
        }

        VerifyReport report = store.Verify();
        Assert.Empty(report.Problems);
        Assert.DoesNotContain(notices, notice => notice.Kind > StoreNoticeKind.TornTailCut);
        FileInfo torn = new(Path.Combine(shared.Path, "plans.journal.torn"));
        (_entries, _torn) = (_entries + report.Entries, _torn + (torn.Exists ? torn.Length : 0));
    }

    private async Task Slot(SharedFolder shared, int slot, int kills, ConcurrentDictionary<string, ConcurrentBag<string>> confirmed)
    {
        Random random = new(slot);
        ConcurrentBag<string> lines = confirmed.GetOrAdd($"K-{slot % 4}", _ => []);
        for (int start = 0; Interlocked.Increment(ref _started) <= kills; start++)
        {
            using Process writer = SharedFolder.Start(slot % 2, "append", shared.Path, $"K-{slot % 4}", $"writer-{slot}-{start}", "100000");
            for (int wait = random.Next(1, 4); wait > 0; wait--)
            {
                Take(lines, await writer.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));
            }

            await Task.Delay(random.Next(12), TestContext.Current.CancellationToken);
            writer.Kill();
            Interlocked.Increment(ref _killed);
            foreach (string line in await StoreDriver.Lines(writer, TestContext.Current.CancellationToken))
            {
                Take(lines, line);
            }
        }
    }

    // A kill may cut the line that was being printed; a whole one has number and hash. Any other line is an answer the writer did not want.
    private static void Take(ConcurrentBag<string> lines, string? line)
    {
        if (line?.Split(' ') is ["saved", _, { Length: 64 }])
        {
            lines.Add(line);
        }
        else if (line is not null)
        {
            Assert.StartsWith("s", line, StringComparison.Ordinal);
        }
    }
}
