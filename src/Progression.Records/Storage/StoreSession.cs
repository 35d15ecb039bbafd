using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>
/// The store, locked and open, for the milliseconds of one call. Nothing else opens its files. On opening it makes sure that
/// index and journal agree, and where they do not, it makes the index again.
/// </summary>
internal sealed partial class StoreSession : IDisposable
{
    private readonly StoreOptions _options;
    private readonly StoreFolder _folder;
    private readonly ICollection<StoreNotice> _notices;
    private readonly Stack<IDisposable> _open = new();
    private readonly SafeFileHandle _markFile;
    private readonly SafeFileHandle _indexFile;
    private readonly bool _exclusive;
    private IndexMark _mark = new(0, 0, 0, 0, 0, null, 0);
    private RevisionIndex? _index;
    private bool _isInMemory;

    private StoreSession(StoreOptions options, bool exclusive, ICollection<StoreNotice> notices)
    {
        (_options, _folder, _exclusive, _notices) = (options, new StoreFolder(options.Folder), exclusive, notices);
        try
        {
            _folder.Prepare();
            _open.Push(StoreLock.Take(_folder, exclusive, options.LockDeadline, options.Progress));
            Journal = new RevisionJournal(_folder.Open(_folder.Journal));
            _open.Push(Journal);
            _open.Push(_markFile = _folder.Open(_folder.Mark));
            _open.Push(_indexFile = _folder.Open(_folder.Index));
        }
        catch
        {
            Dispose();
            throw;
        }
    }

    public RevisionJournal Journal { get; }

    public RevisionIndex Index => _index!;

    public IndexMark Mark => _mark;

    /// <summary>What is known to be damaged in the journal; empty when nothing is.</summary>
    public ImmutableArray<string> Damage { get; private set; } = [];

    /// <summary>Opens the store. A session that only reads becomes an exclusive one when there is something to repair.</summary>
    public static StoreSession Open(StoreOptions options, bool exclusive, ICollection<StoreNotice> notices)
    {
        StoreSession session = new(options, exclusive, notices);
        string doubt = session.Join();
        if (doubt.Length > 0 && !exclusive)
        {
            session.Dispose();
            session = new(options, exclusive: true, notices);
            doubt = session.Join();
        }

        if (doubt.Length > 0)
        {
            session.RepairOrClose(doubt);
        }

        return session;
    }

    /// <summary>Opens the store and makes the index again in any case.</summary>
    public static StoreSession Repaired(StoreOptions options, string doubt, ICollection<StoreNotice> notices, out RebuildReport report)
    {
        StoreSession session = new(options, exclusive: true, notices);
        report = session.RepairOrClose(doubt);
        return session;
    }

    /// <summary>A revision, read from the journal and checked; null when there is none.</summary>
    /// <exception cref="IndexDoubtException">What the index points to is not that revision.</exception>
    public StoredRevision? Read(string caseCode, RecordKind kind, int revision)
    {
        if (Index.PlaceOf(caseCode, kind, revision) is not { } place)
        {
            return Index.Find(caseCode)?.Has(kind, revision) == true
                ? throw new IndexDoubtException($"{kind.Word()} '{caseCode}' has no revision {revision} in it")
                : null;
        }

        JournalEntry? entry = Journal.ReadAt(place, out string fault)?.Entry;
        return entry is not null && entry.Stamp.CaseCode == caseCode && entry.Stamp.Kind == kind
            && entry.Stamp.Revision == revision && entry.RevisionHash == entry.Stamp.Hash
            ? new StoredRevision(entry.Stamp, entry.Body)
            : throw new IndexDoubtException($"{kind.Word()} '{caseCode}' revision {revision} was not where it should be: {fault}");
    }

    /// <summary>Makes entries durable in the journal, then brings the index up to date.</summary>
    public void Record(IReadOnlyList<JournalEntry> entries)
    {
        // Before anything is written, so that a body whose fields cannot be taken is refused and not half recorded.
        Dictionary<JournalEntry, ImmutableSortedDictionary<string, string>> fields = entries.ToDictionary(entry => entry, FieldsOf);
        List<JournalSlice> slices = [];
        long offset = Journal.Length;
        foreach (JournalEntry entry in entries)
        {
            slices.Add(JournalSlice.Of(entry, offset));
            offset = slices[^1].Place.End;
        }

        Journal.Append([.. entries.SelectMany(JournalLine.Write)]);
        long saves = entries.LastOrDefault(entry => entry.Stamp.Kind != RecordKind.Audit)?.Sequence ?? Mark.Saves;
        Finish(slices, entry => fields[entry], IndexMark.After(slices[^1], saves, offset, _options.FieldsVersion));
    }

    /// <summary>The journal as it is now, to be read after the lock has been released: what is written is never changed.</summary>
    public JournalCopy CopyOfJournal() => new(_folder.Open(_folder.Journal), Journal.Length);

    /// <summary>Throws when the disk has less room than a save may need.</summary>
    public void RequireRoom()
    {
        if (_folder.FreeBytes() < _options.MinimumFreeBytes)
        {
            throw new StoreException(StoreFault.NoSpace, FormattableString.Invariant(
                $"Less than {_options.MinimumFreeBytes} bytes are free on the disk; nothing was saved."));
        }
    }

    /// <summary>Closes everything and releases the lock, in the reverse of the order of opening.</summary>
    public void Dispose()
    {
        _index?.Dispose();
        while (_open.TryPop(out IDisposable? opened))
        {
            opened.Dispose();
        }
    }

    // Empty when journal, mark and index agree and the index is open; else why not.
    private string Join()
    {
        if (ReadMark() is not { } mark)
        {
            return "it has not been made yet, or making it was interrupted";
        }

        if (mark.Length != Journal.Length || mark.FieldsVersion != _options.FieldsVersion)
        {
            return "it was made from another state of the journal";
        }

        if (mark.TailHash is not null && Journal.ReadAt(new(mark.LastOffset, mark.LastLength), out _)?.Hash != mark.TailHash)
        {
            return "the journal does not end as it did when the index was made";
        }

        try
        {
            _index = RevisionIndex.Open(new StoreStream(_indexFile, _exclusive));
            if (_index.State is not { } state || state.Mark != mark.Text)
            {
                return "its database is of another time";
            }

            (_mark, Damage) = (mark, state.Damage);
            return "";
        }
        catch (IndexDoubtException doubt)
        {
            return doubt.Message;
        }
    }

    private IndexMark? ReadMark() => IndexMark.Read(_markFile);

    // The mark goes last, and only after the index is on disk: see IndexMark.
    private void Finish(
        IReadOnlyList<JournalSlice> slices, Func<JournalEntry, ImmutableSortedDictionary<string, string>> fields, IndexMark mark)
    {
        Index.Add(slices, fields, mark.Text, Damage);
        if (!_isInMemory)
        {
            WriteMark(mark.Text);
        }

        _mark = mark;
    }

    private void WriteMark(string text)
    {
        try
        {
            RandomAccess.FlushToDisk(_indexFile);
            RandomAccess.Write(_markFile, Encoding.ASCII.GetBytes(text), 0);
            RandomAccess.SetLength(_markFile, text.Length);
        }
        catch (IOException error)
        {
            // The journal has the entries already: only the index is behind.
            throw new IndexDoubtException("it could not be written: " + error.Message, error);
        }
    }

    private ImmutableSortedDictionary<string, string> FieldsOf(JournalEntry entry)
    {
        using JsonDocument body = JsonDocument.Parse(_options.Schemas.Forward(entry.Stamp, entry.Body));
        return _options.Fields(entry.Stamp.Kind, body.RootElement).ToImmutableSortedDictionary(StringComparer.Ordinal);
    }
}
