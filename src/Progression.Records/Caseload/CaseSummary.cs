using System.Globalization;
using System.Text.Json;
using Progression.Core.Caseload;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Cases;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>
/// The short texts of a case that lists show and judge by. Days are year-month-day, so they sort as text. They hold what was recorded and nothing that was
/// concluded from it: what is due, behind or blocked is reckoned from them when a list is read (<see cref="CaseFactsReader"/>).
/// </summary>
public static class CaseSummary
{
    /// <summary>The day of the operation.</summary>
    public const string Operation = "operation";

    /// <summary>Which knee.</summary>
    public const string Side = "side";

    /// <summary>The day of the latest assessment; missing when there is none.</summary>
    public const string LastAssessed = "assessed";

    /// <summary>The day of the latest logged session; missing when none was logged.</summary>
    public const string LastSession = "session";

    /// <summary>The regimen of the plan; missing when there is no plan.</summary>
    public const string Regimen = "regimen";

    /// <summary>Weeks of the plan; missing when there is no plan.</summary>
    public const string Weeks = "weeks";

    /// <summary>The therapist as the case names them; missing when it does not.</summary>
    public const string Therapist = "therapist";

    /// <summary>The screening answers; missing when nothing was answered.</summary>
    internal const string Screened = "screened";

    /// <summary>The signs asked at any visit; missing when none was.</summary>
    internal const string Signs = "signs";

    /// <summary>What was measured and answered at each visit; missing when there was none.</summary>
    internal const string Visits = "visits";

    /// <summary>The notes on red flags; missing when there are none.</summary>
    internal const string Notes = "notes";

    /// <summary>First day of treatment, days of treatment since the latest assessment, "s" when there was stim; of every case.</summary>
    internal const string Treated = "treated";

    /// <summary>A letter for each week of the plan: the rung of its stim.</summary>
    internal const string Stim = "stim";

    /// <summary>The revision of the plan that was signed last; missing while none was.</summary>
    public const string Signed = "signed";

    /// <summary>When the review was asked for that waits for an answer, UTC; missing when none does.</summary>
    public const string Waiting = CaseRow.Waiting;

    /// <summary>When the plan was returned, UTC; missing when it was not, or when somebody has asked again.</summary>
    public const string Returned = "returned";

    /// <summary>How many kept forecasts have been scored; missing when none were kept.</summary>
    public const string ForecastsScored = "scored";

    /// <summary>How many of those had their reading inside the band; missing when none were kept.</summary>
    public const string ForecastHits = "hits";

    /// <summary>A count among the fields of a row; 0 when it is missing.</summary>
    public static int Count(CaseRow row, string field)
    {
        ArgumentNullException.ThrowIfNull(row);
        return int.TryParse(row.Fields.GetValueOrDefault(field), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : 0;
    }

    /// <summary>A day among the fields of a row; null when it is missing.</summary>
    public static DateOnly? Day(CaseRow row, string field)
    {
        ArgumentNullException.ThrowIfNull(row);
        return DateOnly.TryParseExact(row.Fields.GetValueOrDefault(field), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;
    }

    /// <summary>Takes them from a stored body.</summary>
    public static IReadOnlyDictionary<string, string> Of(RecordKind kind, JsonElement body)
    {
        Dictionary<string, string> fields = [];
        if (kind == RecordKind.Case && body.TryGetProperty("operation", out JsonElement operation) && operation.ValueKind == JsonValueKind.Object)
        {
            Take(fields, Operation, operation, "date");
            Take(fields, Side, operation, "side");
            TakeLastDay(fields, LastAssessed, body, "assessments");
            TakeLastDay(fields, LastSession, body, "sessions");
            Take(fields, Therapist, body, "therapist");
            TakeFacts(fields, body);
        }
        else if (kind == RecordKind.Plan)
        {
            Take(fields, Regimen, body, "regimen");
            Take(fields, Weeks, body, "weeks");
            TakeStim(fields, body);
        }
        else if (kind == RecordKind.Review)
        {
            WaitingReview.Take(fields, body);
        }
        else if (kind == RecordKind.Forecasts && body.TryGetProperty("forecasts", out JsonElement forecasts) && forecasts.ValueKind == JsonValueKind.Array)
        {
            JsonElement[] inside = [.. forecasts.EnumerateArray().Select(Inside).OfType<JsonElement>()];
            fields[ForecastsScored] = inside.Length.ToString(CultureInfo.InvariantCulture);
            fields[ForecastHits] = inside.Count(one => one.ValueKind == JsonValueKind.True).ToString(CultureInfo.InvariantCulture);
        }

        return fields;
    }

    /// <summary>What is kept to judge a case by; nothing when the body is not a whole case.</summary>
    private static void TakeFacts(Dictionary<string, string> fields, JsonElement body)
    {
        if (Whole(body) is not { } patient)
        {
            return;
        }

        CaseFacts facts = CaseFacts.Of(patient);
        int? first = facts.FirstTreated is DateOnly day ? PostOpWeek.DayOf(facts.Operation, day) : null;
        fields[Treated] = string.Create(CultureInfo.InvariantCulture, $"{first}/{string.Join(',', facts.TreatedSince)}/{(facts.Stimulated ? "s" : "")}");
        (string Name, string? Text)[] texts =
        [
            (Screened, CaseFactsText.Of(facts.Screening)), (Signs, facts.Signs.IsEmpty ? null : string.Join(',', facts.Signs)),
            (Visits, CaseFactsText.Of(facts.Visits)), (Notes, CaseFactsText.Of(facts.Notes, facts.Operation)),
        ];
        foreach ((string name, string? text) in texts.Where(one => one.Text is not null))
        {
            fields[name] = text!;
        }
    }

    private static Case? Whole(JsonElement body)
    {
        try
        {
            return CaseJsonReader.Read(body);
        }
        catch (Exception failure) when (failure is InvalidOperationException or KeyNotFoundException or ArgumentException or FormatException)
        {
            return null;
        }
    }

    private static void TakeStim(Dictionary<string, string> fields, JsonElement body)
    {
        if (!body.TryGetProperty("weeks", out JsonElement last) || !last.TryGetInt32(out int weeks) || weeks is < 1 or > PostOpWeek.Longest
            || !body.TryGetProperty("cells", out JsonElement cells) || cells.ValueKind != JsonValueKind.Array)
        {
            return;
        }

        char[] letters = new string('-', weeks).ToCharArray();
        foreach (JsonElement cell in cells.EnumerateArray().Where(cell => cell.TryGetProperty("lane", out JsonElement lane) && lane.ValueEquals(Lanes.Stim)))
        {
            if (cell.TryGetProperty("content", out JsonElement content) && content.TryGetProperty("contractions", out JsonElement count) && count.GetInt32() > 0
                && cell.GetProperty("week").GetInt32() is int week && week >= 1 && week <= weeks)
            {
                letters[week - 1] = char.ToUpperInvariant(content.GetProperty("rung").GetString()![0]);
            }
        }

        fields[Stim] = new string(letters);
    }

    /// <summary>Whether the reading lay inside, of a kept forecast that was scored; null of any other.</summary>
    private static JsonElement? Inside(JsonElement kept) =>
        kept.ValueKind == JsonValueKind.Object && kept.TryGetProperty("score", out JsonElement score) && score.ValueKind == JsonValueKind.Object
            && score.TryGetProperty("inside", out JsonElement inside) ? inside : null;

    private static void TakeLastDay(Dictionary<string, string> fields, string name, JsonElement from, string list)
    {
        if (from.TryGetProperty(list, out JsonElement items) && items.ValueKind == JsonValueKind.Array && items.GetArrayLength() > 0)
        {
            Take(fields, name, items[items.GetArrayLength() - 1], "date");
        }
    }

    private static void Take(Dictionary<string, string> fields, string name, JsonElement from, string property)
    {
        if (from.ValueKind == JsonValueKind.Object && from.TryGetProperty(property, out JsonElement value))
        {
            fields[name] = value.ToString();
        }
    }
}
