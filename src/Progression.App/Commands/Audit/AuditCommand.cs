using System.Collections.Immutable;
using System.CommandLine;
using Progression.App.Stores;
using Progression.Core.Clinic;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Records.Audit;
using Progression.Records.Storage;

namespace Progression.App.Commands.Audit;

/// <summary><c>progression audit</c>: who did what with the records, and whether the chain that says so is whole.</summary>
internal sealed class AuditCommand(CommandOutput output, CliEnvironment environment, StorePlace stores)
{
    private const int HashDigits = 64;

    private static readonly ImmutableArray<(string Word, AuditFormat Value)> Formats = [.. Enum.GetValues<AuditFormat>().Select(format => (format.ToString().ToLowerInvariant(), format))];

    private readonly Option<string?> _case = new("--case") { Description = "Only with this case.", HelpName = "CODE" };
    private readonly Option<string?> _person = new("--person") { Description = "Only by this account: its name or its number.", HelpName = "WHO" };
    private readonly Option<string?> _act = new("--act") { Description = $"Only this: {string.Join(", ", AuditEvent.Acts)}.", HelpName = "WHAT" };
    private readonly Option<string?> _since = new("--since") { Description = "Only on this day or later.", HelpName = "DAY" };
    private readonly Option<string?> _until = new("--until") { Description = "Only on this day or earlier.", HelpName = "DAY" };
    private readonly Option<string?> _head = new("--head") { Description = "A hash from the system's log, a signed plan or a backup: tells which entry it is of, and fails where it is of none.", HelpName = "HASH" };
    private readonly Option<string?> _format = new("--format") { Description = "text, json or csv. Default: text.", HelpName = "FORMAT" };

    internal Command Build()
    {
        ExampledCommand command = new("audit", "Searches who did what with the records, and says whether the chain of entries is whole.", $"""
            Examples:
              progression audit --case EXAMPLE-07 --since -7
              progression audit --person anna --act viewed --format csv
              progression audit --act refused

            Every save, view, review, refusal and every work on the records as a whole is one entry. Changing one breaks the chain from
            there on, which is told here. A chain that was written anew from its beginning can be told only by a head kept elsewhere: --head.
            JSON: schema "audit/1" with events, head, entries, damage.
            {ExitCode.Help}
            """)
        { _case, _person, _act, _since, _until, _head, _format, stores.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        GivenOptions given = new(line);
        (AuditQuery query, AuditFormat format, string? head) = Asked(given);
        if (given.Problems.Count > 0)
        {
            output.Problems("audit", given.Problems);
            return ExitCode.Usage;
        }

        string folder = stores.Folder(line);
        if (!Directory.Exists(folder))
        {
            output.Message($"progression audit: there are no records in {Found.Of(folder)}.");
            return ExitCode.NoInput;
        }

        OpenRecords records = stores.Records(folder);
        if (records.Trail.Refusal(ClinicAct.ReadAudit, query.CaseCode) is { } refused)
        {
            output.Message($"progression audit: {SafeText.OneLine(refused)}");
            return ExitCode.NotPermitted;
        }

        AuditAnswer answer = Search(records.Store, query, head);
        answer.Tell(output, format, environment.Clock.LocalTimeZone);
        return answer.Reading.Damage.IsEmpty && (head is null || answer.HeadOf is not null) ? ExitCode.Good : ExitCode.BadData;
    }

    private AuditAnswer Search(IPlanStore store, AuditQuery query, string? head)
    {
        ImmutableArray<AuditEvent>.Builder events = ImmutableArray.CreateBuilder<AuditEvent>();
        long? headOf = null;
        JournalReading reading = store.Walk(entry =>
        {
            headOf = entry.LineHash == head ? entry.Number : headOf;
            AuditEvent done = AuditEvent.Of(entry);
            if (query.Takes(done))
            {
                events.Add(done);
            }

            return true;
        }, new ProgressLines(output, environment.Clock));
        return new AuditAnswer(events.ToImmutable(), reading, head, headOf);
    }

    private (AuditQuery Query, AuditFormat Format, string? Head) Asked(GivenOptions given)
    {
        CaseCode? code = given.Take(_case, (field, text) => CaseCode.Parse(text ?? "") is { } read
            ? Entered<CaseCode>.Good(read)
            : Entered<CaseCode>.Bad(new Problem(field, "This is not the code of a case.", CaseCode.Allowed, Found.Of(text ?? ""))));
        string? person = given.Take(_person, Word);
        string? act = given.Word(_act, [.. AuditEvent.Acts.Select((word, index) => (word, index))]) is int chosen ? AuditEvent.Acts[chosen] : null;
        DateOnly? since = Day(given, _since);
        DateOnly? until = Day(given, _until);
        string? head = given.Take(_head, Hash);
        AuditFormat format = given.Word(_format, Formats) ?? AuditFormat.Text;
        return (new AuditQuery { CaseCode = code?.Text, Person = person, Act = act, From = Start(since), Before = Start(until?.AddDays(1)) }, format, head);
    }

    private DateOnly? Day(GivenOptions given, Option<string?> option)
    {
        DateOnly today = DateOnly.FromDateTime(environment.Clock.GetLocalNow().DateTime);
        return given.Take(option, (field, text) => DayText.Read(field, text, new DayRange(new DateOnly(2000, 1, 1), today, today)))?.Value;
    }

    private DateTimeOffset? Start(DateOnly? day)
    {
        if (day is not { } given)
        {
            return null;
        }

        DateTime midnight = given.ToDateTime(TimeOnly.MinValue);
        return new DateTimeOffset(midnight, environment.Clock.LocalTimeZone.GetUtcOffset(midnight));
    }

    private static Entered<string> Word(string field, string? text) => (text ?? "").Trim() is { Length: > 0 } word
        ? Entered<string>.Good(word)
        : Entered<string>.Bad(new Problem(field, "The account is missing.", "its name or its number", ""));

    private static Entered<string> Hash(string field, string? text) => (text ?? "").Trim().ToLowerInvariant() is { Length: HashDigits } hash && hash.All(char.IsAsciiHexDigitLower)
        ? Entered<string>.Good(hash)
        : Entered<string>.Bad(new Problem(field, "This is not a head.", $"{HashDigits} hexadecimal digits", Found.Of(text ?? "")));
}
