using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class StoreLockTests : IDisposable
{
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(60);
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(30);
    private readonly TempFolder _folder = new();

    [Fact]
    public void Readers_share_and_a_writer_is_alone()
    {
        StoreFolder folder = new(_folder.Path);
        using (StoreLock.Take(folder, exclusive: false, Short))
        using (StoreLock.Take(folder, exclusive: false, Short))
        {
            Assert.Equal(StoreFault.Busy, Assert.Throws<StoreException>(() => StoreLock.Take(folder, exclusive: true, Short)).Fault);
        }

        using StoreLock writer = StoreLock.Take(folder, exclusive: true, Short);
        Assert.Throws<StoreException>(() => StoreLock.Take(folder, exclusive: false, Short));
        Assert.Throws<StoreException>(() => StoreLock.Take(folder, exclusive: true, Short));
    }

    [Fact]
    public void Excludes_by_file_and_not_by_the_name_it_was_reached_by()
    {
        using TempFolder beside = new();
        Directory.CreateSymbolicLink(beside.File("link"), _folder.Path);
        using StoreLock writer = StoreLock.Take(new StoreFolder(_folder.Path), exclusive: true, Short);

        StoreException fault = Assert.Throws<StoreException>(() => StoreLock.Take(new StoreFolder(beside.File("link")), exclusive: true, Short));

        Assert.Equal(Environment.ProcessId, fault.Holder!.ProcessId);
    }

    [Fact]
    public async Task A_waiting_writer_goes_before_readers_who_come_later()
    {
        StoreFolder folder = new(_folder.Path);
        StoreLock reader = StoreLock.Take(folder, exclusive: false, Short);
        Task<StoreLock> writer = Task.Run(() => StoreLock.Take(folder, exclusive: true, Long), TestContext.Current.CancellationToken);
        while (!IsRefused())
        {
            await Task.Delay(5, TestContext.Current.CancellationToken);
        }

        Assert.False(writer.IsCompleted);
        reader.Dispose();
        (await writer).Dispose();
        StoreLock.Take(folder, exclusive: false, Long).Dispose();

        // The lock itself is only shared; what refuses a second reader is the writer in the gate.
        bool IsRefused()
        {
            try
            {
                StoreLock.Take(folder, exclusive: false, TimeSpan.Zero).Dispose();
                return false;
            }
            catch (StoreException)
            {
                return true;
            }
        }
    }

    public void Dispose() => _folder.Dispose();
}
