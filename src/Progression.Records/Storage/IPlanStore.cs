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

    /// <summary>Number of the last entry, 0 for an empty store. It changes with every save, so screens ask it whether to read again.</summary>
    long Generation();

    /// <summary>Reads everything and checks every hash and chain.</summary>
    VerifyReport Verify();

    /// <summary>Makes everything that is derived from the journal again.</summary>
    RebuildReport Rebuild();

    /// <summary>Writes journal lines to a stream, oldest first.</summary>
    /// <param name="target">Where to write.</param>
    /// <param name="after">Leaves out entries up to and with this number. Default 0: everything.</param>
    /// <returns>How many entries were written.</returns>
    long Export(Stream target, long after = 0);

    /// <summary>Takes in exported lines that continue this store's own chain; anything else adds nothing.</summary>
    ImportReport Import(Stream source);
}
