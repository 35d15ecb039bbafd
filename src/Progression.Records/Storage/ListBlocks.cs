using LiteDB;

namespace Progression.Records.Storage;

/// <summary>The rows of the list in the index, some in a document, so that ten thousand are read in a few hundred steps. Each document carries its hash.</summary>
/// <param name="blocks">The collection.</param>
internal sealed class ListBlocks(ILiteCollection<BsonDocument> blocks)
{
    private readonly Dictionary<int, Dictionary<string, CaseRow>> _touched = [];
    private int? _last;

    /// <summary>Every row, block by block.</summary>
    public IEnumerable<CaseRow> Rows() => blocks.FindAll().SelectMany(Checked);

    /// <summary>The block that takes a new case.</summary>
    public int ForNew()
    {
        int last = _last ?? (blocks.LongCount() is > 0 and long count ? (int)count : 1);
        _last = Block(last).Count < ListBlock.MostRows ? last : last + 1;
        return _last.Value;
    }

    /// <summary>Puts a row into a block in place of the one of the same case; kept until <see cref="Write"/>.</summary>
    public void Put(int block, CaseRow row) => Block(block)[row.CaseCode] = row;

    /// <summary>Writes every block that was touched.</summary>
    public void Write()
    {
        foreach ((int block, Dictionary<string, CaseRow> rows) in _touched)
        {
            byte[] bytes = ListBlock.Write(rows.Values);
            blocks.Upsert(new BsonDocument { ["_id"] = block, ["rows"] = bytes, ["sum"] = Sha256Text.Of(bytes) });
        }

        _touched.Clear();
    }

    private Dictionary<string, CaseRow> Block(int number)
    {
        if (!_touched.TryGetValue(number, out Dictionary<string, CaseRow>? rows))
        {
            rows = blocks.FindById(number) is { } found ? Checked(found).ToDictionary(row => row.CaseCode, StringComparer.Ordinal) : new(StringComparer.Ordinal);
            _touched[number] = rows;
        }

        return rows;
    }

    private static IEnumerable<CaseRow> Checked(BsonDocument block)
    {
        byte[] bytes = block["rows"].AsBinary;
        return block["sum"].AsString == Sha256Text.Of(bytes) ? ListBlock.Read(bytes) : throw new IndexDoubtException("rows of the list do not match their hash");
    }
}
