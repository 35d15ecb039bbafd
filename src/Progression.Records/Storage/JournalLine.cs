using System.Buffers.Text;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Progression.Records.Json;

namespace Progression.Records.Storage;

/// <summary>
/// One line of the journal: <c>J1 length hash payload</c> and a line feed, where length counts the payload's bytes, hash is
/// their SHA-256, and payload is canonical JSON. <c>J1</c> is the version of the format.
/// </summary>
/// <param name="Entry">What it says.</param>
/// <param name="Hash">Hash of the payload, which the next line repeats.</param>
internal sealed record JournalLine(JournalEntry Entry, string Hash)
{
    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    /// <summary>An entry as bytes, line feed included.</summary>
    public static byte[] Write(JournalEntry entry)
    {
        byte[] payload = Encoding.UTF8.GetBytes(Payload(entry));
        return [.. Head(payload.Length, Sha256Text.Of(payload)), .. payload, (byte)'\n'];
    }

    /// <summary>The hash that the line of an entry will have.</summary>
    public static string HashOf(JournalEntry entry) => Sha256Text.Of(Payload(entry));

    /// <summary>Reads a line without its line feed; a line that is not whole gives null and the reason.</summary>
    public static JournalLine? Read(ReadOnlySpan<byte> line, out string fault)
    {
        fault = "";
        if (line is [(byte)'J', >= (byte)'2' and <= (byte)'9', (byte)' ', ..])
        {
            fault = $"a newer version of this program wrote it (form {Encoding.ASCII.GetString(line[..2])}); update the program";
            return null;
        }

        if (!line.StartsWith("J1 "u8)
            || !Utf8Parser.TryParse(line[3..], out int length, out _)
            || length < 0 || length > line.Length)
        {
            fault = "it does not begin as a line of this journal";
            return null;
        }

        ReadOnlySpan<byte> payload = line[^length..];
        string hash = Sha256Text.Of(payload);
        if (!line[..^length].SequenceEqual(Head(length, hash)))
        {
            fault = "its content does not match its hash";
            return null;
        }

        return Parse(payload.ToArray(), hash, out fault);
    }

    private static byte[] Head(int length, string hash) =>
        Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"J1 {length} {hash} "));

    private static string Payload(JournalEntry entry)
    {
        RevisionStamp stamp = entry.Stamp;
        string at = stamp.At.UtcDateTime.ToString(TimeFormat, CultureInfo.InvariantCulture);
        return string.Create(CultureInfo.InvariantCulture, $$"""
            {"at":"{{at}}","body":{{entry.Body}},"by":{{CanonicalJson.Quoted(stamp.By.UserId)}},"case":{{CanonicalJson.Quoted(stamp.CaseCode)}},"hash":"{{stamp.Hash}}","kind":"{{stamp.Kind.Word()}}","name":{{CanonicalJson.Quoted(stamp.By.Name)}},"part":{{entry.Part}},"parts":{{entry.Parts}},"prev":{{OrNull(entry.PreviousLine)}},"prior":{{OrNull(stamp.PreviousHash)}},"rev":{{stamp.Revision}},"seq":{{entry.Sequence}}}
            """);
    }

    private static string OrNull(string? hash) => hash is null ? "null" : $"\"{hash}\"";

    // The hash has vouched for the bytes; what can still be wrong is that another version wrote them.
    private static JournalLine? Parse(byte[] payload, string hash, out string fault)
    {
        fault = "";
        try
        {
            using JsonDocument document = JsonDocument.Parse(payload);
            JsonElement root = document.RootElement;
            if (RecordKindWords.Parse(Text("kind")) is not { } kind)
            {
                fault = $"it holds a '{Text("kind")}', which this version of the program does not know";
                return null;
            }

            RevisionStamp stamp = new(
                Text("case")!, kind, root.GetProperty("rev").GetInt32(), Text("hash")!, Text("prior"),
                new(Text("by")!, Text("name")!),
                DateTimeOffset.ParseExact(Text("at")!, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal));
            return new(
                new(root.GetProperty("seq").GetInt64(), stamp, root.GetProperty("part").GetInt32(),
                    root.GetProperty("parts").GetInt32(), root.GetProperty("body").GetRawText(), Text("prev")),
                hash);

            string? Text(string name) => root.GetProperty(name).GetString();
        }
        catch (Exception error) when (error is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            fault = "its hash is right but its fields are not those of this version: " + error.Message;
            return null;
        }
    }
}
