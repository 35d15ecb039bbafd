using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Json;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>
/// What was put right about a visit, in a case file and as it is stored: "was" is a value where a measure is named, an answer where a sign is, else a day.
/// </summary>
internal static class VisitCorrectionFields
{
    private const string List = "corrected";

    /// <summary>Reads them from a case file.</summary>
    public static ImmutableArray<VisitCorrection> Read(Fields visit, CaseReading reading) =>
        [.. visit.Maps(List, Need.Optional).Select(fields => One(fields, reading)).OfType<VisitCorrection>()];

    /// <summary>Writes them into a case file.</summary>
    public static void Write(YamlLines lines, Assessment visit, ClinicalLibrary library) => lines.List(List, visit.Corrected, one =>
    {
        (string? what, string was) = one switch
        {
            VisitCorrection.TakenOut taken => (taken.Measure, MeasureText.Write(library.Measures[taken.Measure], taken.Was)),
            VisitCorrection.AnswerWas answer => (answer.Sign, EnumWords.Of(answer.Was)),
            _ => (null, DaySpan.Text(((VisitCorrection.DayWas)one).Was)),
        };
        lines.Value(one is VisitCorrection.AnswerWas ? "sign" : "measure", what);
        lines.Value("was", was);
        lines.Value("on", DaySpan.Text(one.On));
        lines.Text("by", one.By);
        lines.Text("why", one.Why);
    });

    /// <summary>They as they are stored.</summary>
    public static JsonArray? Json(Assessment visit) => JsonFields.List(visit.Corrected.Select(one => JsonFields.Of(
        ("measure", (one as VisitCorrection.TakenOut)?.Measure),
        ("sign", (one as VisitCorrection.AnswerWas)?.Sign),
        ("was", one switch
        {
            VisitCorrection.TakenOut taken => taken.Was,
            VisitCorrection.AnswerWas answer => EnumWords.Of(answer.Was),
            _ => JsonFields.Day(((VisitCorrection.DayWas)one).Was),
        }),
        ("on", JsonFields.Day(one.On)), ("by", one.By), ("why", one.Why))));

    /// <summary>Reads them as they are stored.</summary>
    public static ImmutableArray<VisitCorrection> Of(JsonElement visit) => JsonReading.List(visit, List, One);

    private static VisitCorrection One(JsonElement json)
    {
        (DateOnly on, string by, string? why) = (JsonReading.RequiredDay(json, "on"), JsonReading.Required(json, "by"), JsonReading.Text(json, "why"));
        return JsonReading.Text(json, "measure") is { } measure ? new VisitCorrection.TakenOut(measure, JsonReading.RequiredNumber(json, "was"), on, by, why)
            : JsonReading.Text(json, "sign") is { } sign ? new VisitCorrection.AnswerWas(sign, JsonReading.Word<Answer>(JsonReading.Required(json, "was")), on, by, why)
            : new VisitCorrection.DayWas(JsonReading.RequiredDay(json, "was"), on, by, why);
    }

    private static VisitCorrection? One(Fields fields, CaseReading reading)
    {
        Measure? measure = fields.OneOf("measure", Need.Optional, reading.Library.Measures.Keys.Except(MeasureIds.Computed)) is string id ? reading.Library.Measures[id] : null;
        string? sign = fields.Text("sign", Need.Optional);
        fields.Node("was", Need.Required);
        double? value = measure is null ? null : ReadingFields.Value(fields, "was", measure, reading.Deficits)?.Value;
        Answer? answer = measure is null && sign is not null ? fields.OneOf<Answer>("was", Need.Required) : null;
        DateOnly? day = measure is null && sign is null ? fields.Date("was", Need.Required, reading.UpToToday) : null;
        DateOnly? on = fields.Date("on", Need.Required, reading.UpToToday);
        string? by = fields.Text("by", Need.Required);
        string? why = fields.Text("why", Need.Optional, 300);
        fields.Done();
        return on is not { } when || by is null ? null
            : value is double was ? new VisitCorrection.TakenOut(measure!.Id, was, when, by, why)
            : answer is { } given ? new VisitCorrection.AnswerWas(sign!, given, when, by, why)
            : day is { } kept ? new VisitCorrection.DayWas(kept, when, by, why)
            : null;
    }
}
