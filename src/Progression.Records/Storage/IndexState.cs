using System.Collections.Immutable;
using System.Globalization;
using LiteDB;

namespace Progression.Records.Storage;

/// <summary>What the index says of itself. It carries its own hash, as every row of the index does.</summary>
/// <param name="Mark">The mark it was made for.</param>
/// <param name="Damage">Damage of the journal known then.</param>
/// <param name="Cases">Cases in it.</param>
/// <param name="Entries">Entries in it.</param>
/// <param name="Waiting">Cases in it that wait for a review.</param>
/// <param name="HasAudit">Whether the chain of no case is in it.</param>
internal sealed record IndexState(string Mark, ImmutableArray<string> Damage, int Cases, long Entries, int Waiting, bool HasAudit)
{
    public static IndexState Empty { get; } = new("", [], 0, 0, 0, false);

    private string Sum => Sha256Text.Of(string.Create(CultureInfo.InvariantCulture, $"{Mark}{Cases}\n{Entries}\n{Waiting}\n{HasAudit}\n{string.Join('\n', Damage)}"));

    /// <exception cref="IndexDoubtException">It does not match its hash.</exception>
    public static IndexState Of(BsonDocument document)
    {
        BsonArray damage = document["damage"].AsArray;
        IndexState state = new(
            document["mark"].AsString, damage.Count == 0 ? [] : [.. damage.Select(item => item.AsString)], document["cases"].AsInt32, document["entries"].AsInt64,
            document["waiting"].AsInt32, document["audit"].AsBoolean);
        return state.Sum == document["sum"].AsString ? state : throw new IndexDoubtException("what the index says of itself does not match its hash");
    }

    public BsonDocument ToDocument() => new()
    {
        ["mark"] = Mark,
        ["damage"] = new BsonArray(Damage.Select(text => new BsonValue(text))),
        ["cases"] = Cases,
        ["entries"] = Entries,
        ["waiting"] = Waiting,
        ["audit"] = HasAudit,
        ["sum"] = Sum,
    };
}
