using System.Diagnostics;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class SeveralProcessesTests : IDisposable
{
    private readonly StoreCopy _shared = new();

    [Fact]
    public async Task Four_processes_saving_to_one_chain_lose_nothing()
    {
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        List<Process> writers = [.. Enumerable.Range(1, 4).Select(number => StoreDriver.Start("append", _shared.File(""), "K-1", $"writer-{number}", "50"))];
        string[][] confirmed = await Task.WhenAll(writers.Select(writer => StoreDriver.Lines(writer, cancellation)));

        IReadOnlyList<RevisionStamp> history = _shared.Store.History("K-1", RecordKind.Plan);
        Assert.Equal(Enumerable.Range(1, 200), history.Select(stamp => stamp.Revision));
        Assert.Equal(
            history.Select(stamp => $"saved {stamp.Revision} {stamp.Hash}").Order(StringComparer.Ordinal),
            confirmed.SelectMany(lines => lines).Order(StringComparer.Ordinal));
        Assert.True(_shared.Store.Verify().IsSound);
        Assert.Empty(_shared.Notices);
    }

    [Fact]
    public async Task Processes_killed_while_saving_lose_nothing_that_was_confirmed()
    {
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        Random random = new(7);
        List<string> confirmed = [];
        for (int round = 0; round < 8; round++)
        {
            Process[] writers = [.. Enumerable.Range(1, 2).Select(number => StoreDriver.Start("append", _shared.File(""), "K-1", $"round-{round}-{number}", "100000"))];
            for (int line = random.Next(1, 20); line > 0; line--)
            {
                confirmed.Add((await writers[line % 2].StandardOutput.ReadLineAsync(cancellation))!);
            }

            await Task.Delay(random.Next(20), cancellation);
            Array.ForEach(writers, writer => writer.Kill());
            string[][] lines = await Task.WhenAll(writers.Select(writer => StoreDriver.Lines(writer, cancellation)));

            // A kill may cut the last line that was being printed; a whole one has number and hash.
            confirmed.AddRange(lines.SelectMany(printed => printed).Where(line => line.Split(' ') is ["saved", _, { Length: 64 }]));
        }

        Assert.NotEmpty(confirmed);
        HashSet<string> kept = [.. _shared.Store.History("K-1", RecordKind.Plan).Select(stamp => $"saved {stamp.Revision} {stamp.Hash}")];
        Assert.DoesNotContain(confirmed, line => !kept.Contains(line));
        Assert.True(_shared.Store.Verify().IsSound);
        Assert.DoesNotContain(_shared.Notices, notice => notice.Kind > StoreNoticeKind.TornTailCut);
    }

    [Fact]
    public async Task A_store_that_another_process_holds_is_busy_and_names_it()
    {
        using Process holder = StoreDriver.Start("hold", _shared.File(""));
        Assert.Equal("held", await holder.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken));
        LiteDbPlanStore store = new(_shared.Options with { LockDeadline = TimeSpan.FromMilliseconds(200) });

        AppendResult result = store.Append(Sample.Plan("K-1", null, "{}"));
        StoreException fault = Assert.Throws<StoreException>(() => store.Load("K-1"));

        Assert.Equal(holder.Id, Assert.IsType<AppendResult.Busy>(result).Holder!.ProcessId);
        Assert.Equal((StoreFault.Busy, holder.Id), (fault.Fault, fault.Holder!.ProcessId));
        Assert.Contains($"process {holder.Id} (dotnet, user ", fault.Message, StringComparison.Ordinal);
        holder.Kill();
        await holder.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.IsType<AppendResult.Saved>(store.Append(Sample.Plan("K-1", null, "{}")));
    }

    [Fact]
    public async Task A_process_told_to_stop_in_the_middle_of_a_save_stops_after_it()
    {
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        using Process holder = StoreDriver.Start("pause", _shared.File(""));
        Assert.Equal("held", await holder.StandardOutput.ReadLineAsync(cancellation));
        using (Process stop = Process.Start("kill", ["-TSTP", $"{holder.Id}"]))
        {
            await stop.WaitForExitAsync(cancellation);
        }

        await Task.Delay(300, cancellation);
        Assert.NotEqual('T', State());
        await holder.StandardInput.WriteLineAsync("go on".AsMemory(), cancellation);
        for (int tries = 0; tries < 200 && State() != 'T'; tries++)
        {
            await Task.Delay(50, cancellation);
        }

        Assert.Equal('T', State());
        Assert.NotNull(new LiteDbPlanStore(_shared.Options with { LockDeadline = TimeSpan.FromSeconds(5) }).Load("HOLD-1"));
        holder.Kill();

        // The name in brackets may hold blanks; the state follows it.
        char State() => File.ReadAllText($"/proc/{holder.Id}/stat").Split(") ")[^1][0];
    }

    public void Dispose() => _shared.Dispose();
}
