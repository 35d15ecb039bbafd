using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace Progression.Records.Storage;

/// <content>Looking after the files of the store: what a server database would have tools of its own for.</content>
public sealed partial class LiteDbPlanStore
{
    /// <summary>
    /// Copies all records to a new file, checks the copy whole and puts its hash beside it in a file that ends in ".sha256". Others are kept waiting for a
    /// moment only: the journal is never changed, so it is copied without the lock.
    /// </summary>
    /// <param name="path">The file; there must be none of that name.</param>
    /// <exception cref="StoreException">The records are damaged, or the file cannot be made; there is no file then.</exception>
    public BackupReport BackUp(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return Telling(_ =>
        {
            using NewFile hash = NewFile.Begin(path + ".sha256");
            using NewFile file = NewFile.Begin(path);
            using JournalCopy copy = Run(exclusive: false, session => session.CopyOfJournal());
            string sha256 = copy.WriteTo(file.Content, options.Progress);
            file.Content.Position = 0;
            JournalReading reading = JournalCopy.Check(file.Content, "checking the copy", options.Progress);
            if (!reading.Damage.IsEmpty)
            {
                throw new StoreException(StoreFault.Corrupt, $"The records are damaged, so a copy is no backup: {string.Join("; ", reading.Damage)}.");
            }

            hash.Content.Write(Encoding.UTF8.GetBytes($"{sha256}  {Path.GetFileName(path)}\n"));
            file.Finish();
            hash.Finish();
            return new BackupReport(reading.Entries, reading.Last, reading.HeadHash, file.Length, sha256, reading.Gaps);
        });
    }

    /// <summary>
    /// Puts the records back from a file. What was saved since and goes on from the file's last entry is kept. The files as they were are moved aside together.
    /// </summary>
    /// <param name="path">A backup, or any file of journal lines from the first on.</param>
    /// <param name="dropNewer">How many entries of the records here may be left out; it must be the exact number. Null for none.</param>
    /// <param name="at">When, for the name of the folder aside.</param>
    public RestoreReport Restore(string path, long? dropNewer, DateTimeOffset at)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return Telling(_ =>
        {
            using FileStream source = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            if (WrongHash(path, source) is { } problem)
            {
                return new RestoreReport(0, 0, 0, null, problem);
            }

            RestoreReport report = Locked(folder => new StoreRestore(folder, options.Progress).From(source, dropNewer, at));
            if (report.Problem is null)
            {
                Rebuild();
            }

            return report;
        });
    }

    /// <summary>Takes damaged lines out of the journal, keeps them in a file beside it, and adds an audit entry that names the gap. Saving works again then.</summary>
    /// <param name="by">Who asked for it.</param>
    /// <param name="at">When.</param>
    /// <param name="note">The body of the audit entry; it holds the hashes it is given as <see cref="JournalGap.Member"/>.</param>
    public RepairReport Repair(Actor by, DateTimeOffset at, Func<ImmutableArray<string>, string> note)
    {
        ArgumentNullException.ThrowIfNull(by);
        ArgumentNullException.ThrowIfNull(note);
        return Telling(_ =>
        {
            RepairReport report = Locked(folder => new StoreRepair(folder, options.Progress).Run(by, at, note));
            Rebuild();
            return report;
        });
    }

    private T Locked<T>(Func<StoreFolder, T> work)
    {
        StoreFolder folder = new(options.Folder);
        folder.Prepare();
        using StoreLock held = StoreLock.Take(folder, exclusive: true, options.LockDeadline);
        return work(folder);
    }

    // The hash beside the file says whether it is still what was written; without it, only the lines speak for themselves.
    private static string? WrongHash(string path, FileStream source)
    {
        if (!File.Exists(path + ".sha256"))
        {
            return null;
        }

        string told = File.ReadAllText(path + ".sha256").Split(' ')[0].Trim();
        string found = Convert.ToHexStringLower(SHA256.HashData(source));
        source.Position = 0;
        return told == found ? null : $"The file does not match '{path}.sha256': that tells {told}, the file has {found}. Nothing was changed.";
    }
}
