using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>
/// A store in one folder: an append-only journal, which is the record, and a LiteDB index made from it. Any number of processes
/// on one machine may use it at once; a call locks, works and lets go. It holds nothing open in between.
/// </summary>
public sealed partial class LiteDbPlanStore(StoreOptions options) : IPlanStore
{
    /// <inheritdoc/>
    public CaseView? Load(string caseCode) => Run(exclusive: false, session =>
    {
        IndexedCase? found = session.Index.Find(caseCode);
        return found is null
            ? AbsentUnlessDamaged<CaseView>(session, $"case '{caseCode}'")
            : new CaseView(caseCode, [.. found.Chains.Select(chain => Forward(Required(session, chain.Stamp)))], session.Damage);
    });

    /// <inheritdoc/>
    public CasePage List(CaseQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return query.PageOf(List(row => row).Cases);
    }

    /// <inheritdoc/>
    public CaseList<T> List<T>(Func<CaseRow, T> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return Run(exclusive: false, session => new CaseList<T>(session.Mark.Saves, session.Index.List(of)));
    }

    /// <inheritdoc/>
    public AppendResult Append(Submission submission)
    {
        if (SubmissionCheck.Read(submission, out string problem) is not { } ready)
        {
            return new AppendResult.Refused(problem);
        }

        try
        {
            StoreHead? head = null;
            AppendResult result = Run(exclusive: true, session =>
            {
                long before = session.Mark.Last;
                AppendResult settled = new Landing(session, ready).Settle();
                head = session.Mark.Last > before ? new StoreHead(session.Mark.Last, session.Mark.TailHash!) : null;
                return settled;
            });
            if (head is not null)
            {
                options.Saved(head);
            }

            return result;
        }
        catch (StoreException fault)
        {
            return fault.Fault switch
            {
                StoreFault.Busy => new AppendResult.Busy(fault.Holder),
                StoreFault.NoSpace => new AppendResult.NoSpace(),
                StoreFault.Corrupt => new AppendResult.Corrupt(fault.Message),
                _ => new AppendResult.Refused(fault.Message),
            };
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<RevisionStamp> History(string caseCode, RecordKind kind) => Run(exclusive: false, session =>
    {
        int last = session.Index.Find(caseCode)?.Head(kind)?.Revision ?? 0;
        return Enumerable.Range(1, last)
            .Select(revision => session.Read(caseCode, kind, revision)?.Stamp).OfType<RevisionStamp>().ToImmutableArray();
    });

    /// <inheritdoc/>
    public StoredRevision? Read(string caseCode, RecordKind kind, int revision) => Run(exclusive: false, session =>
        session.Read(caseCode, kind, revision) is { } found
            ? Forward(found)
            : AbsentUnlessDamaged<StoredRevision>(session, $"revision {revision} of {kind.Word()} '{caseCode}'"));

    /// <inheritdoc/>
    public CaseList<T> Waiting<T>(Func<CaseRow, T> of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return Run(exclusive: false, session => new CaseList<T>(session.Mark.Saves, session.Index.Waiting(of)));
    }

    /// <inheritdoc/>
    public long Generation() => Run(exclusive: false, session => session.Mark.Saves);

    /// <inheritdoc/>
    public bool HasChangedSince(long generation) => new StoreGlance(options.Folder).Saves() != generation
        && (Directory.Exists(options.Folder) ? Generation() != generation : generation != 0);

    /// <inheritdoc/>
    public StoreStatus Status() => Run(exclusive: false, session =>
    {
        IndexState state = session.Index.State!;
        return new StoreStatus(state.Cases, state.Entries, session.Mark.Last, session.Mark.Length, session.Mark.TailHash, session.Damage);
    });

    /// <inheritdoc/>
    public VerifyReport Verify()
    {
        (VerifyReport? found, bool isNews) = (null, false);
        while (found is null)
        {
            StoreVerification verification = new(options.Progress);
            using (JournalCopy copy = Run(exclusive: false, session => session.CopyOfJournal()))
            {
                verification.Read(copy);
            }

            (found, isNews) = Run(exclusive: false, session =>
            {
                VerifyReport? report = verification.Against(session);
                return (report, report is not null && !report.Problems.SequenceEqual(session.Damage));
            });
        }

        if (isNews)
        {
            // So that damage found here stops writing, and an index that differs is not used again.
            _ = Telling(notices => Repaired("a verification found something new", notices, (_, rebuilt) => rebuilt));
        }

        return found;
    }

    /// <inheritdoc/>
    public RebuildReport Rebuild() =>
        Telling(notices => Repaired("somebody asked for it", notices, (_, report) => report));

    /// <inheritdoc/>
    public JournalReading Walk(Func<StoredEntry, bool> take, IProgress<WorkDone>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(take);
        using JournalCopy copy = Run(exclusive: false, session => session.CopyOfJournal());
        return copy.Read("reading the journal", line => take(StoredEntry.Of(line)), progress);
    }

    /// <inheritdoc/>
    public JournalReading Export(Stream target, long after = 0, IProgress<WorkDone>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(target);
        long written = 0;
        using JournalCopy copy = Run(exclusive: false, session => session.CopyOfJournal());
        JournalReading reading = copy.Read("writing the records out", line => Write(line.Entry), progress);
        return reading with { Entries = written };

        bool Write(JournalEntry entry)
        {
            if (entry.Sequence > after)
            {
                target.Write(JournalLine.Write(entry));
                written++;
            }

            return true;
        }
    }

    /// <inheritdoc/>
    public ImportReport Import(Stream source)
    {
        ArgumentNullException.ThrowIfNull(source);
        JournalIntake intake = JournalIntake.From(source, options.Progress);
        return Run(exclusive: true, session => intake.Into(session));
    }

    private StoredRevision Forward(StoredRevision found) => found with { Body = options.Schemas.Forward(found.Stamp, found.Body) };

    // In a damaged journal "there is none" would be a claim nobody can make.
    private static T? AbsentUnlessDamaged<T>(StoreSession session, string what)
        where T : class => session.Damage.IsEmpty
        ? null
        : throw new StoreException(StoreFault.Corrupt, $"No {what} can be read, and the journal is damaged: {string.Join("; ", session.Damage)}.");

    private static StoredRevision Required(StoreSession session, RevisionStamp stamp) =>
        session.Read(stamp.CaseCode, stamp.Kind, stamp.Revision)
        ?? throw new IndexDoubtException($"{stamp.Kind.Word()} '{stamp.CaseCode}' has no revision {stamp.Revision}");

    private T Run<T>(bool exclusive, Func<StoreSession, T> work) => Telling(notices =>
    {
        try
        {
            using StoreSession session = StoreSession.Open(options, exclusive, notices);
            return work(session);
        }
        catch (IndexDoubtException doubt)
        {
            return Repaired(doubt.Message, notices, (session, _) => work(session));
        }
    });

    private T Repaired<T>(string doubt, List<StoreNotice> notices, Func<StoreSession, RebuildReport, T> work)
    {
        try
        {
            using StoreSession session = StoreSession.Repaired(options, doubt, notices, out RebuildReport report);
            return work(session, report);
        }
        catch (IndexDoubtException still)
        {
            throw new StoreException(StoreFault.Corrupt, $"The index could not be made from the journal: {still.Message}", still);
        }
    }

    // Those who are told may use the store: by then everything is closed.
    private T Telling<T>(Func<List<StoreNotice>, T> work)
    {
        List<StoreNotice> notices = [];
        try
        {
            return work(notices);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw StoreFolder.Failure(error, "use the store");
        }
        finally
        {
            notices.ForEach(options.Notify);
        }
    }
}
