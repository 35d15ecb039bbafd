namespace Progression.Records.Storage;

/// <summary>One submission meeting the store under the exclusive lock: seen before, in conflict, or new.</summary>
internal sealed class Landing(StoreSession session, Submission submission)
{
    /// <summary>Decides, and records what is new.</summary>
    /// <exception cref="StoreException">The journal is damaged, or the disk is full.</exception>
    public AppendResult Settle()
    {
        IndexedCase? current = session.Index.Find(submission.CaseCode);
        List<RevisionStamp> wanted = [.. submission.Drafts.Select(draft => StampFor(OnTop(draft, current)))];
        List<RevisionStamp?> there = [.. wanted.Select(Landed)];
        if (there.All(stamp => stamp is not null))
        {
            return new AppendResult.Saved([.. there.Select(stamp => stamp!)]);
        }

        if (!session.Damage.IsEmpty)
        {
            throw new StoreException(StoreFault.Corrupt, $"Nothing is saved while the journal is damaged: {string.Join("; ", session.Damage)}.");
        }

        List<RecordKind> stale = [.. Expected().Where(one => current?.Head(one.Kind)?.Reference != one.Revision).Select(one => one.Kind)];
        if (stale.Count > 0)
        {
            return new AppendResult.Conflict([.. stale.Select(kind => current?.Head(kind)).OfType<RevisionStamp>()]);
        }

        session.RequireRoom();
        session.Record(EntriesFor(wanted));
        return new AppendResult.Saved([.. wanted]);
    }

    private IEnumerable<(RecordKind Kind, RevisionRef? Revision)> Expected() =>
    [
        .. submission.Drafts.Where(draft => draft.Kind != RecordKind.Audit).Select(draft => (draft.Kind, draft.BasedOn)),
        .. submission.Requires.Select(one => (one.Kind, (RevisionRef?)one.Revision)),
    ];

    // What happened is added to what happened before, whatever that was.
    private static Draft OnTop(Draft draft, IndexedCase? current) =>
        draft.Kind == RecordKind.Audit ? draft with { BasedOn = current?.Head(RecordKind.Audit)?.Reference } : draft;

    private RevisionStamp StampFor(Draft draft)
    {
        int revision = (draft.BasedOn?.Revision ?? 0) + 1;
        string hash = JournalEntry.HashOf(submission.CaseCode, draft.Kind, new(revision, draft.BasedOn?.Hash ?? ""), draft.Body);
        return new(submission.CaseCode, draft.Kind, revision, hash, draft.BasedOn?.Hash, submission.By, submission.At);
    }

    // The time may differ: whoever did not hear the answer asks again later.
    private RevisionStamp? Landed(RevisionStamp wanted)
    {
        RevisionStamp? there = session.Read(wanted.CaseCode, wanted.Kind, wanted.Revision)?.Stamp;
        return there?.Hash == wanted.Hash && there.By.UserId == wanted.By.UserId ? there : null;
    }

    private List<JournalEntry> EntriesFor(List<RevisionStamp> stamps)
    {
        List<JournalEntry> entries = [];
        string? previous = session.Mark.TailHash;
        for (int index = 0; index < stamps.Count; index++)
        {
            JournalEntry entry = new(
                session.Mark.Last + index + 1, stamps[index], index + 1, stamps.Count, submission.Drafts[index].Body, previous);
            entries.Add(entry);
            previous = JournalLine.HashOf(entry);
        }

        return entries;
    }
}
