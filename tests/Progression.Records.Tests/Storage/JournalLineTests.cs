using System.Security.Cryptography;
using System.Text;
using Progression.Records.Json;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class JournalLineTests
{
    private static readonly JournalEntry Entry = new(
        7, new("K-1", RecordKind.Plan, 2, new string('a', 64), new string('b', 64), new("1001", "Robin \"R\" Example"), Sample.Monday),
        1, 2, """{"weeks":6}""", new string('c', 64));

    // The format is a promise to files that exist: this text may not change without a new version at its head.
    [Fact]
    public void Writes_the_documented_line()
    {
        string payload = "{\"at\":\"2026-03-02T08:30:00.250Z\",\"body\":{\"weeks\":6},\"by\":\"1001\",\"case\":\"K-1\",\"hash\":\"" + new string('a', 64)
            + "\",\"kind\":\"plan\",\"name\":\"Robin \\\"R\\\" Example\",\"part\":1,\"parts\":2,\"prev\":\"" + new string('c', 64)
            + "\",\"prior\":\"" + new string('b', 64) + "\",\"rev\":2,\"seq\":7}";
        string hash = Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(payload))).ToLowerInvariant();

        Assert.Equal($"J1 {payload.Length} {hash} {payload}\n", Encoding.UTF8.GetString(JournalLine.Write(Entry)));
        Assert.Equal(payload, CanonicalJson.Of(payload));
    }

    [Fact]
    public void Reads_back_what_it_wrote()
    {
        byte[] line = JournalLine.Write(Entry);

        Assert.Equal(new JournalLine(Entry, JournalLine.HashOf(Entry)), JournalLine.Read(line.AsSpan(0, line.Length - 1), out _));
    }

    [Fact]
    public void A_kind_of_a_later_version_is_named_and_not_guessed()
    {
        string payload = Encoding.UTF8.GetString(JournalLine.Write(Entry)).Split(' ', 4)[3].TrimEnd('\n').Replace("\"plan\"", "\"video\"", StringComparison.Ordinal);
        string hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(payload)));

        Assert.Null(JournalLine.Read(Encoding.UTF8.GetBytes($"J1 {payload.Length} {hash} {payload}"), out string fault));
        Assert.Contains("'video'", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("J1")]
    [InlineData("J2 2 x {}")]
    [InlineData("J1 -2 x {}")]
    [InlineData("J1 99999999999999 x {}")]
    [InlineData("J1 2 44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a {}")]
    public void A_line_that_is_not_ours_is_not_read(string line) =>
        Assert.Null(JournalLine.Read(Encoding.UTF8.GetBytes(line), out _));
}
