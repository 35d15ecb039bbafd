using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.Entry;
using Progression.Records.Audit;
using Progression.Records.Storage;

namespace Progression.App.Commands.Audit;

/// <summary>What the search came to.</summary>
/// <param name="Events">What was asked for, oldest first.</param>
/// <param name="Reading">What reading the whole chain came to.</param>
/// <param name="Head">The hash that was asked about; null for none.</param>
/// <param name="HeadOf">Number of the entry that has it; null for none.</param>
internal sealed record AuditAnswer(ImmutableArray<AuditEvent> Events, JournalReading Reading, string? Head, long? HeadOf)
{
    private static readonly string[] Columns = ["number", "at", "account", "name", "act", "case", "record", "revision", "hash", "what"];

    /// <summary>Prints it.</summary>
    internal void Tell(CommandOutput output, AuditFormat format, TimeZoneInfo zone)
    {
        switch (format)
        {
            case AuditFormat.Json:
                output.Json(Json());
                break;
            case AuditFormat.Csv:
                output.Data(string.Join('\n', Events.Select(done => Cells(done)).Prepend(Columns).Select(row => string.Join(',', row.Select(Quoted)))));
                output.Message(string.Join('\n', Closing()));
                break;
            default:
                output.Data(string.Join('\n', Events.Select(done => Line(done, zone)).Concat(Closing())));
                break;
        }
    }

    private static string Line(AuditEvent done, TimeZoneInfo zone)
    {
        string with = done.CaseCode is null ? "" : $" {done.CaseCode}";
        string which = (done.Record, done.Revision) switch
        {
            (null, _) => "",
            ({ } kind, null) => $" {kind}",
            ({ } kind, { } revision) => $" {kind} revision {revision.Revision}",
        };
        string what = done.What.Length == 0 ? "" : $" ({done.What})";
        return SafeText.OneLine(string.Create(CultureInfo.InvariantCulture,
            $"{TimeZoneInfo.ConvertTime(done.At, zone):yyyy-MM-dd HH:mm:ss}  {done.By.Name} [{done.By.UserId}]  {done.Act}{with}{which}{what}"));
    }

    private IEnumerable<string> Closing()
    {
        yield return string.Create(CultureInfo.InvariantCulture, $"{Events.Length:N0} of {Reading.Entries:N0} entries.");
        yield return Reading.HeadHash is { } hash ? $"Head: entry {Reading.Last}, {hash}" : "There is no entry.";
        yield return Reading.Damage.IsEmpty ? "The chain is whole: no entry in it was changed." : "THE CHAIN IS NOT WHOLE:";
        foreach (string damage in Reading.Damage)
        {
            yield return $"  {SafeText.OneLine(damage)}";
        }

        foreach (string gap in Reading.Gaps)
        {
            yield return $"Repaired, with a gap: {SafeText.OneLine(gap)}";
        }

        if (Head is not null)
        {
            yield return HeadOf is { } number ? $"The head asked about is that of entry {number}." : "THE HEAD ASKED ABOUT IS NOT IN THIS CHAIN: these are other records, or they were written anew.";
        }
    }

    private JsonObject Json() => new()
    {
        ["schema"] = "audit/1",
        ["events"] = new JsonArray([.. Events.Select(Json)]),
        ["entries"] = Reading.Entries,
        ["last"] = Reading.Last,
        ["head"] = Reading.HeadHash,
        ["whole"] = Reading.Damage.IsEmpty,
        ["damage"] = new JsonArray([.. Reading.Damage.Select(damage => JsonValue.Create(damage))]),
        ["gaps"] = new JsonArray([.. Reading.Gaps.Select(gap => JsonValue.Create(gap))]),
        ["head_of"] = HeadOf,
    };

    private static JsonObject Json(AuditEvent done) => new()
    {
        ["number"] = done.Number,
        ["at"] = Utc(done),
        ["account"] = done.By.UserId,
        ["name"] = done.By.Name,
        ["act"] = done.Act,
        ["case"] = done.CaseCode,
        ["record"] = done.Record,
        ["revision"] = done.Revision?.Revision,
        ["hash"] = done.Revision?.Hash,
        ["what"] = done.What.Length == 0 ? null : done.What,
    };

    private static string[] Cells(AuditEvent done) =>
    [
        done.Number.ToString(CultureInfo.InvariantCulture), Utc(done), done.By.UserId, done.By.Name, done.Act, done.CaseCode ?? "", done.Record ?? "",
        done.Revision?.Revision.ToString(CultureInfo.InvariantCulture) ?? "", done.Revision?.Hash ?? "", done.What,
    ];

    private static string Utc(AuditEvent done) => done.At.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);

    // A cell that begins like a formula would be reckoned by a spreadsheet that opens the file.
    private static string Quoted(string cell)
    {
        string safe = SafeText.OneLine(cell);
        safe = safe.Length > 0 && "=+-@".Contains(safe[0], StringComparison.Ordinal) ? $"'{safe}" : safe;
        return safe.AsSpan().ContainsAny(",\"") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
