using LiteDB;

namespace Progression.Records.Storage;

/// <summary>The rows of the cases that wait for a review, so that the queue need not go through all cases. Each carries its hash.</summary>
/// <param name="waiting">The collection.</param>
internal sealed class WaitingRows(ILiteCollection<BsonDocument> waiting)
{
    /// <summary>Every row.</summary>
    public IEnumerable<CaseRow> Rows() => waiting.FindAll().Select(Checked);

    /// <summary>Keeps the row of a case that waits and takes out that of one that no longer does; says whether it waits.</summary>
    /// <param name="row">The row as it is now.</param>
    /// <param name="waited">Whether it was kept before.</param>
    public bool Put(CaseRow row, bool waited)
    {
        bool waits = row.Fields.ContainsKey(CaseRow.Waiting);
        if (waits)
        {
            byte[] bytes = ListBlock.Write([row]);
            waiting.Upsert(new BsonDocument { ["_id"] = row.CaseCode, ["row"] = bytes, ["sum"] = Sha256Text.Of(bytes) });
        }
        else if (waited)
        {
            waiting.Delete(row.CaseCode);
        }

        return waits;
    }

    private static CaseRow Checked(BsonDocument found)
    {
        byte[] bytes = found["row"].AsBinary;
        return found["sum"].AsString == Sha256Text.Of(bytes) && ListBlock.Read(bytes).Single() is { } row && row.CaseCode == found["_id"].AsString
            ? row
            : throw new IndexDoubtException("a row of the queue does not match its hash");
    }
}
