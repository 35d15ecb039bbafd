namespace Progression.Records.Storage;

/// <summary>
/// Keeps the revisions of all cases. Every call is one transaction and leaves nothing open; what it returns is a copy.
/// Reading calls throw <see cref="StoreException"/> when the store is busy, damaged or not permitted.
/// </summary>
public interface IPlanStore
{
    /// <summary>The newest revision of each chain of a case; null when nothing was ever saved under that code.</summary>
    CaseView? Load(string caseCode);

    /// <summary>Cases with the fields taken from their newest revisions.</summary>
    CasePage List(CaseQuery query);

    /// <summary>Takes something of every case, and drops the rest: for lists of thousands.</summary>
    /// <typeparam name="T">What is taken.</typeparam>
    /// <param name="of">Takes it from a row; it must not use the store.</param>
    CaseList<T> List<T>(Func<CaseRow, T> of);

    /// <summary>
    /// Saves all drafts or none. A draft that is not based on the newest revision of its chain is a conflict, unless exactly
    /// this revision was saved before by the same account: then the answer is the one given then.
    /// </summary>
    AppendResult Append(Submission submission);

    /// <summary>All revisions of a chain, oldest first; empty when there is none.</summary>
    IReadOnlyList<RevisionStamp> History(string caseCode, RecordKind kind);

    /// <summary>One revision, its hash checked; null when there is no such revision.</summary>
    StoredRevision? Read(string caseCode, RecordKind kind, int revision);

    /// <summary>Takes something of every case that waits for a review, by <see cref="CaseRow.Waiting"/>, without looking at the others.</summary>
    /// <typeparam name="T">What is taken.</typeparam>
    /// <param name="of">Takes it from a row; it must not use the store.</param>
    CaseList<T> Waiting<T>(Func<CaseRow, T> of);

    /// <summary>Number of the last entry that is a save, 0 for an empty store. Every save raises it; an audit entry does not, so looking changes nothing.</summary>
    long Generation();

    /// <summary>Whether somebody saved since <see cref="Generation"/> was this. Cheap enough to be asked every second: while nothing changes it waits for nobody.</summary>
    bool HasChangedSince(long generation);

    /// <summary>How much there is, from what is kept for it; quick whatever the size.</summary>
    StoreStatus Status();

    /// <summary>Reads everything and checks every hash and chain.</summary>
    VerifyReport Verify();

    /// <summary>Makes everything that is derived from the journal again.</summary>
    RebuildReport Rebuild();

    /// <summary>
    /// Goes through every entry there is at the moment of the call, oldest first, a line at a time and without keeping others waiting. A damaged line is
    /// passed over and named; so is a place where the chain is broken.
    /// </summary>
    /// <param name="take">Given each whole entry; false stops. It may use the store.</param>
    /// <param name="progress">Hears how far it is. Default: nobody.</param>
    JournalReading Walk(Func<StoredEntry, bool> take, IProgress<WorkDone>? progress = null);

    /// <summary>Writes journal lines to a stream, oldest first. A damaged line is left out and named.</summary>
    /// <param name="target">Where to write.</param>
    /// <param name="after">Leaves out entries up to and with this number. Default 0: everything.</param>
    /// <param name="progress">Hears how far it is. Default: nobody.</param>
    JournalReading Export(Stream target, long after = 0, IProgress<WorkDone>? progress = null);

    /// <summary>Takes in exported lines that continue this store's own chain; anything else adds nothing.</summary>
    ImportReport Import(Stream source);
}
