using System.Collections.Immutable;
using Microsoft.Win32.SafeHandles;
using Progression.Records.Json;

namespace Progression.Records.Storage;

/// <summary>
/// Takes the damaged lines out of a journal, keeps them in a file of their own, and adds an entry that names the gaps, so that work can go on. What was in
/// the damaged lines is not brought back.
/// </summary>
/// <param name="folder">The store, locked for writing.</param>
/// <param name="progress">Hears how far it is; null for nobody.</param>
internal sealed class StoreRepair(StoreFolder folder, IProgress<WorkDone>? progress)
{
    /// <summary>Repairs where there is something to repair.</summary>
    /// <param name="by">Who asked for it.</param>
    /// <param name="at">When.</param>
    /// <param name="note">Makes the body of the entry from the hashes it must hold as <see cref="JournalGap.Member"/>.</param>
    public RepairReport Run(Actor by, DateTimeOffset at, Func<ImmutableArray<string>, string> note)
    {
        using RevisionJournal present = new(folder.Open(folder.Journal));
        using JournalSwap swap = new(folder);
        List<JournalSlice> bad = [];
        JournalFindings before = JournalAudit.Run(present.Slices(), null, slice => swap.Add(JournalLine.Write(slice.Line!.Entry)), bad.Add);
        if (before.Damage.IsEmpty)
        {
            return new RepairReport([], 0, before.Entries, null);
        }

        SetAside(present, bad);
        JournalEntry? audit = null;
        JournalFindings kept = swap.Findings(progress, slice => audit = slice.Line!.Entry.Stamp.Kind == RecordKind.Audit ? slice.Line.Entry : audit);
        ImmutableArray<string> breaks = [.. kept.Breaks.Select(one => one.LineHash).OfType<string>().Distinct()];
        swap.Add(JournalLine.Write(Entry(kept.Last, audit, (by, at, note(breaks)))));
        JournalFindings after = swap.Findings(progress);
        return after.Damage.IsEmpty
            ? new RepairReport(before.Damage, bad.Count, after.Entries, swap.Commit(at))
            : throw new StoreException(StoreFault.Corrupt, $"The journal cannot be repaired: {after.Damage[0]}. Restore it from a backup.");
    }

    private static JournalEntry Entry(JournalSlice? last, JournalEntry? audit, (Actor By, DateTimeOffset At, string Body) what)
    {
        string body = CanonicalJson.TryOf(what.Body, out string? canonical, out string? problem) ? canonical : throw new ArgumentException(problem, nameof(what));
        RevisionRef? basis = audit?.Stamp.Reference;
        int revision = (basis?.Revision ?? 0) + 1;
        DateTimeOffset at = what.At.ToUniversalTime();
        RevisionStamp stamp = new(
            AuditChain.Code, RecordKind.Audit, revision, JournalEntry.HashOf(AuditChain.Code, RecordKind.Audit, new(revision, basis?.Hash ?? ""), body),
            basis?.Hash, what.By, at.AddTicks(-(at.Ticks % TimeSpan.TicksPerMillisecond)));
        return new((last?.Line!.Entry.Sequence ?? 0) + 1, stamp, 1, 1, body, last?.Line!.Hash);
    }

    // Whatever becomes of the rest, these bytes are in two places from here on.
    private void SetAside(RevisionJournal present, List<JournalSlice> bad)
    {
        using SafeFileHandle aside = folder.Open(folder.Damaged);
        foreach (JournalSlice slice in bad)
        {
            RandomAccess.Write(aside, present.ReadBytes(slice.Place), RandomAccess.GetLength(aside));
        }

        RandomAccess.FlushToDisk(aside);
    }
}
