using System.Collections.Immutable;
using System.Text;

namespace Progression.Records.Storage;

/// <summary>
/// Rows of the list as bytes: first every text that occurs, once each, then the rows as numbers of texts. Names, dates and sets of answers are the same in
/// many rows, so that reading a list costs little more than reading what differs.
/// </summary>
internal static class ListBlock
{
    /// <summary>Rows in a block. A save writes one block again, a list reads all of them.</summary>
    public const int MostRows = 64;

    public static byte[] Write(IEnumerable<CaseRow> rows)
    {
        Dictionary<string, int> numbers = [];
        using MemoryStream body = new();
        using (BinaryWriter writer = new(body, Encoding.UTF8, leaveOpen: true))
        {
            foreach (CaseRow row in rows)
            {
                writer.Write7BitEncodedInt(Number(row.CaseCode));
                writer.Write7BitEncodedInt(row.Heads.Length);
                foreach (CaseHead head in row.Heads)
                {
                    writer.Write7BitEncodedInt((int)head.Kind);
                    writer.Write7BitEncodedInt(head.Revision);
                    writer.Write7BitEncodedInt(Number(head.By.UserId));
                    writer.Write7BitEncodedInt(Number(head.By.Name));
                    writer.Write(head.At.UtcTicks);
                }

                writer.Write7BitEncodedInt(row.Fields.Count);
                foreach ((string name, string text) in row.Fields)
                {
                    writer.Write7BitEncodedInt(Number(name));
                    writer.Write7BitEncodedInt(Number(text));
                }
            }
        }

        return [.. Texts(numbers.Keys), .. body.ToArray()];

        int Number(string text) => numbers.TryGetValue(text, out int known) ? known : numbers[text] = numbers.Count;
    }

    public static IEnumerable<CaseRow> Read(byte[] block)
    {
        using BinaryReader reader = new(new MemoryStream(block), Encoding.UTF8);
        string[] texts = new string[reader.Read7BitEncodedInt()];
        for (int text = 0; text < texts.Length; text++)
        {
            texts[text] = reader.ReadString();
        }

        Dictionary<(int, int), Actor> actors = [];
        while (reader.BaseStream.Position < block.Length)
        {
            yield return Row(reader, texts, actors);
        }
    }

    private static CaseRow Row(BinaryReader reader, string[] texts, Dictionary<(int, int), Actor> actors)
    {
        string code = texts[reader.Read7BitEncodedInt()];
        CaseHead[] heads = new CaseHead[reader.Read7BitEncodedInt()];
        for (int head = 0; head < heads.Length; head++)
        {
            RecordKind kind = (RecordKind)reader.Read7BitEncodedInt();
            int revision = reader.Read7BitEncodedInt();
            (int User, int Name) by = (reader.Read7BitEncodedInt(), reader.Read7BitEncodedInt());
            if (!actors.TryGetValue(by, out Actor? actor))
            {
                actors[by] = actor = new Actor(texts[by.User], texts[by.Name]);
            }

            heads[head] = new CaseHead(kind, revision, actor, new DateTimeOffset(reader.ReadInt64(), TimeSpan.Zero));
        }

        string[] pairs = new string[2 * reader.Read7BitEncodedInt()];
        for (int at = 0; at < pairs.Length; at++)
        {
            pairs[at] = texts[reader.Read7BitEncodedInt()];
        }

        return new CaseRow(code, ImmutableArray.Create(heads), FieldCollection.OfPairs(pairs));
    }

    private static byte[] Texts(Dictionary<string, int>.KeyCollection texts)
    {
        using MemoryStream bytes = new();
        using (BinaryWriter writer = new(bytes, Encoding.UTF8, leaveOpen: true))
        {
            writer.Write7BitEncodedInt(texts.Count);
            foreach (string text in texts)
            {
                writer.Write(text);
            }
        }

        return bytes.ToArray();
    }
}
