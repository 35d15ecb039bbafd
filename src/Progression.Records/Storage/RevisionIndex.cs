using System.Collections.Immutable;
using System.Globalization;
using LiteDB;
using LiteDB.Engine;

namespace Progression.Records.Storage;

/// <summary>
/// The LiteDB database: for each revision its place in the journal, for each case what lists show, and one document that says
/// from which journal all this was made. It holds nothing that the journal does not, and whatever goes wrong in it is a
/// reason to make it again. The engine's log is kept in memory: <see cref="IndexMark"/> tells when a write was not finished.
/// </summary>
internal sealed class RevisionIndex : IDisposable
{
    private const string StateId = "state";
    private const int PageSize = 8192; // LiteDB's; a database of another length was cut, perhaps where this call does not look.
    private readonly LiteDatabase _database;
    private readonly ILiteCollection<BsonDocument> _state;
    private readonly ILiteCollection<BsonDocument> _cases;
    private readonly ILiteCollection<BsonDocument> _places;
    private readonly ListBlocks _list;
    private readonly WaitingRows _waiting;

    private RevisionIndex(LiteDatabase database)
    {
        _database = database;
        _state = database.GetCollection("state");
        _cases = database.GetCollection("cases");
        _places = database.GetCollection("places");
        _list = new ListBlocks(database.GetCollection("list"));
        _waiting = new WaitingRows(database.GetCollection("waiting"));
    }

    /// <summary>From which journal it was made, and what was counted then; null when it holds nothing.</summary>
    public IndexState? State => Guarded(() => _state.FindById(StateId) is { } state ? IndexState.Of(state) : null);

    /// <summary>Opens a database, making it when the stream is empty. Codes are compared byte for byte.</summary>
    /// <exception cref="IndexDoubtException">This is not such a database.</exception>
    public static RevisionIndex Open(Stream data) => Guarded(() => data.Length % PageSize != 0 ? throw new IndexDoubtException("its database was cut") : new RevisionIndex(new LiteDatabase(
        new LiteEngine(new EngineSettings
        {
            DataStream = data,
            LogStream = new MemoryStream(),
            TempStream = new MemoryStream(),
            Collation = Collation.Binary,
        }),
        new BsonMapper())));

    /// <summary>A case; null when there is none.</summary>
    /// <exception cref="IndexDoubtException">It should be there and is not: the engine has no checksums, and a flipped bit in a key or a link hides a row.</exception>
    public IndexedCase? Find(string caseCode) => Guarded(() => _cases.FindById(caseCode) is { } found ? Checked(found)
        : IsKnown(caseCode) ? throw new IndexDoubtException($"'{caseCode}' cannot be found in it") : null);

    private bool IsKnown(string caseCode) => caseCode == AuditChain.Code ? State?.HasAudit == true : Enumerable.Contains(List(row => row.CaseCode), caseCode);

    /// <summary>All cases.</summary>
    public IReadOnlyList<IndexedCase> All() => Guarded(() => _cases.FindAll().Select(Checked).ToList());

    /// <summary>Takes something of every case as the list has it, without looking at the cases one by one.</summary>
    public ImmutableArray<T> List<T>(Func<CaseRow, T> of) => Taken(_list.Rows(), of, state => state.Cases);

    /// <summary>The same of every case that waits for a review.</summary>
    public ImmutableArray<T> Waiting<T>(Func<CaseRow, T> of) => Taken(_waiting.Rows(), of, state => state.Waiting);

    // Rows carry their hash, so as many different ones as were counted are all of them.
    private ImmutableArray<T> Taken<T>(IEnumerable<CaseRow> from, Func<CaseRow, T> of, Func<IndexState, int> count)
    {
        HashSet<string> codes = new(StringComparer.Ordinal);
        ImmutableArray<T>.Builder taken = ImmutableArray.CreateBuilder<T>();
        using IEnumerator<CaseRow> rows = from.GetEnumerator();
        while (Guarded(rows.MoveNext))
        {
            codes.Add(rows.Current.CaseCode);
            taken.Add(of(rows.Current)); // Outside the guard: what goes wrong here is not the index's fault.
        }

        return codes.Count == taken.Count && taken.Count == count(State ?? IndexState.Empty)
            ? taken.DrainToImmutable()
            : throw new IndexDoubtException("it does not hold as many rows as it should");
    }

    /// <summary>Where a revision is in the journal; null when there is none.</summary>
    public JournalPlace? PlaceOf(string caseCode, RecordKind kind, int revision) => Guarded(() =>
        _places.FindById(PlaceId(caseCode, kind, revision)) is { } found
            ? new JournalPlace(found["offset"].AsInt64, found["length"].AsInt32)
            : null);

    /// <summary>How many revisions it knows.</summary>
    public long Count() => Guarded(() => _places.LongCount());

    /// <summary>Adds lines and replaces the state, at once, down into the stream.</summary>
    public void Add(
        IReadOnlyList<JournalSlice> slices, Func<JournalEntry, ImmutableSortedDictionary<string, string>> fields, string mark, ImmutableArray<string> damage) =>
        Guarded(() =>
        {
            IndexState before = State ?? IndexState.Empty;
            _database.BeginTrans();
            IndexState after = slices.Aggregate(before, (state, slice) => Add(state, (slice.Place, slice.Line!.Entry.Stamp), fields(slice.Line.Entry)));
            _list.Write();
            BsonDocument state = (after with { Mark = mark, Damage = damage }).ToDocument();
            state["_id"] = StateId;
            _state.Upsert(state);
            _database.Commit();
            _database.Checkpoint();
            return true;
        });

    /// <summary>Closes the engine. Everything worth keeping has been written when it was added.</summary>
    public void Dispose() => _database.Dispose();

    private IndexState Add(IndexState state, (JournalPlace Place, RevisionStamp Stamp) line, ImmutableSortedDictionary<string, string> fields)
    {
        (JournalPlace place, RevisionStamp stamp) = line;
        _places.Upsert(new BsonDocument
        {
            ["_id"] = PlaceId(stamp.CaseCode, stamp.Kind, stamp.Revision),
            ["offset"] = place.Offset,
            ["length"] = place.Length,
        });
        BsonDocument? known = _cases.FindById(stamp.CaseCode);
        IndexedCase row = (known is null ? new(stamp.CaseCode, []) : Checked(known)).With(new(stamp, fields));
        int block = known?["block"].AsInt32 ?? (IsListed(row) ? _list.ForNew() : 0);
        bool waited = known?["waits"].AsBoolean ?? false;
        bool waits = false;
        if (IsListed(row))
        {
            CaseRow shown = row.ToRow();
            _list.Put(block, shown);
            waits = _waiting.Put(shown, waited);
        }

        string json = row.ToJson();
        _cases.Upsert(new BsonDocument { ["_id"] = stamp.CaseCode, ["row"] = json, ["sum"] = Sha256Text.Of(json), ["block"] = block, ["waits"] = waits });
        return state with
        {
            Entries = state.Entries + 1,
            Cases = state.Cases + (known is null && IsListed(row) ? 1 : 0),
            Waiting = state.Waiting + (waits ? 1 : 0) - (waited ? 1 : 0),
            HasAudit = state.HasAudit || !IsListed(row),
        };
    }

    /// <summary>Whether lists show a row: every case, and not the chain that is of none.</summary>
    public static bool IsListed(IndexedCase row) => row.CaseCode != AuditChain.Code;

    // The engine has no checksums: without this one, a flipped bit in a row would be shown as it is.
    private static IndexedCase Checked(BsonDocument found)
    {
        string json = found["row"].AsString;
        return found["sum"].AsString == Sha256Text.Of(json) && IndexedCase.FromJson(json) is { } row && row.CaseCode == found["_id"].AsString
            ? row
            : throw new IndexDoubtException("a row of the index does not match its hash");
    }

    private static string PlaceId(string caseCode, RecordKind kind, int revision) =>
        string.Create(CultureInfo.InvariantCulture, $"{caseCode}/{kind.Word()}/{revision:D8}");

    // A damaged database fails in many ways, few of them LiteException; every one has the same cure.
    private static T Guarded<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception error) when (error is not IndexDoubtException)
        {
            throw new IndexDoubtException(error.Message, error);
        }
    }
}
