using System.Diagnostics;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: a process stops in the middle of its work (SIGSTOP) and goes on later, or never.</summary>
public sealed class StoppedHolderTests : IDisposable
{
    private readonly StoreCopy _shared = new();

    [Fact]
    public async Task Others_say_who_holds_the_records_and_nothing_breaks()
    {
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        LiteDbPlanStore store = new(_shared.Options with { LockDeadline = TimeSpan.FromSeconds(1) });
        Random random = new(3);
        (int busy, int free) = (0, 0);
        using Process writer = StoreDriver.Start("append", _shared.File(""), "K-1", "writer", "1000000");
        List<string> confirmed = [(await writer.StandardOutput.ReadLineAsync(cancellation))!];
        Task reading = Task.Run(async () => { while (await writer.StandardOutput.ReadLineAsync(CancellationToken.None) is { } line) { confirmed.Add(line); } }, cancellation);
        for (int round = 0; round < 30; round++)
        {
            await Task.Delay(random.Next(30), cancellation);
            Signal(writer, "STOP");
            switch (store.Append(Sample.Plan($"K-R{round}", null, "{}")))
            {
                case AppendResult.Busy { Holder: { } holder }:
                    Assert.Equal(writer.Id, holder.ProcessId);
                    busy++;
                    break;
                case var other:
                    Assert.IsType<AppendResult.Saved>(other);
                    free++;
                    break;
            }

            Signal(writer, "CONT");
        }

        writer.Kill();
        await reading;
        HashSet<string> kept = [.. _shared.Store.History("K-1", RecordKind.Plan).Select(stamp => $"saved {stamp.Revision} {stamp.Hash}")];
        Assert.DoesNotContain(confirmed, line => line.Split(' ') is ["saved", _, { Length: 64 }] && !kept.Contains(line));
        Assert.True(_shared.Store.Verify().IsSound);
        Assert.NotEqual(0, busy);
        Figures.Print($"30 stops of a writer: {busy} times others were told who holds the records, {free} times it held nothing; {confirmed.Count} confirmed, none lost");
    }

    public void Dispose() => _shared.Dispose();

    private static void Signal(Process process, string signal)
    {
        using Process kill = Process.Start("kill", [$"-{signal}", $"{process.Id}"]);
        kill.WaitForExit();
    }
}
