using System.Diagnostics;
using System.Security.Cryptography;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>
/// The turnstile: two files, always taken in the order gate, lock. A waiting writer stands in the gate, so that readers who
/// come later wait behind it and it cannot starve. The system releases both when a process ends, however it ends.
/// Held for milliseconds, never while somebody is asked something.
/// </summary>
internal sealed class StoreLock : IDisposable
{
    private readonly SafeFileHandle _held;
    private readonly StopGuard _guard;

    private StoreLock(SafeFileHandle held, StopGuard guard) => (_held, _guard) = (held, guard);

    // A shorter wait is not worth a word.
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(200);

    /// <summary>Waits for the lock; what it waits for is told, and who hears it may break the waiting off.</summary>
    /// <exception cref="StoreException">Busy: not free before the deadline. Refused: this folder cannot be locked.</exception>
    public static StoreLock Take(StoreFolder folder, bool exclusive, TimeSpan deadline, IProgress<WorkDone>? progress = null)
    {
        int operation = exclusive ? NativeFile.LockExclusive : NativeFile.LockShared;
        StopGuard guard = new();
        SafeFileHandle? held = null;
        try
        {
            Stopwatch waited = Stopwatch.StartNew();
            using SafeFileHandle gate = folder.Open(folder.Gate);
            Wait(gate, folder.Gate, (operation, deadline - waited.Elapsed), progress);
            held = folder.Open(folder.Lock);
            Wait(held, folder.Lock, (operation, deadline - waited.Elapsed), progress);
            return new StoreLock(held, guard);
        }
        catch
        {
            held?.Dispose();
            guard.Dispose();
            throw;
        }
    }

    /// <summary>Releases the lock.</summary>
    public void Dispose()
    {
        _held.Dispose();
        _guard.Dispose();
    }

    // Polled, because the blocking call has no deadline; with jitter, so that those who wait do not all come at once.
    private static void Wait(SafeFileHandle file, string name, (int Operation, TimeSpan Deadline) until, IProgress<WorkDone>? progress)
    {
        Stopwatch waited = Stopwatch.StartNew();
        string? task = null;
        while (true)
        {
            int error = NativeFile.Lock(file, until.Operation | NativeFile.LockWithoutWaiting);
            if (error == 0)
            {
                return;
            }

            if (error is not NativeFile.WouldBlock and not NativeFile.Interrupted)
            {
                throw StoreFolder.Failure(error, $"lock '{name}'");
            }

            if (waited.Elapsed >= until.Deadline)
            {
                throw Busy(file);
            }

            if (waited.Elapsed >= Short)
            {
                progress?.Report(new(task ??= $"waiting for the store, in use by {LockTable.HolderOf(file)?.ToString() ?? "another process"}", 0, 0));
            }

            Thread.Sleep(RandomNumberGenerator.GetInt32(1, 9));
        }
    }

    private static StoreException Busy(SafeFileHandle file)
    {
        LockHolder? holder = LockTable.HolderOf(file);
        return new StoreException(
            StoreFault.Busy,
            $"The store is in use by {holder?.ToString() ?? "another process"}; try again when it has finished.")
        { Holder = holder };
    }
}
