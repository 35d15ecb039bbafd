using System.Text.Json;
using System.Text.Json.Nodes;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Records.Json;
using Progression.Records.Yaml;
using static Progression.Records.Json.JsonReading;

namespace Progression.Records.Cases;

/// <summary>The parts of a stored case that grow with time: assessments, logged sessions, notes on red flags. A field that is missing was not recorded.</summary>
internal static class CaseJsonParts
{
    public static JsonObject Write(Assessment assessment) => JsonFields.Of(
        ("date", JsonFields.Day(assessment.Date)),
        ("rater", assessment.Rater),
        ("readings", JsonFields.Of(assessment.Readings.Values.Select(reading => KeyValuePair.Create<string, JsonNode?>(reading.Measure, Write(reading))))),
        ("signs", JsonFields.Of(assessment.SignsSeen.Select(sign => KeyValuePair.Create<string, JsonNode?>(sign.Key, EnumWords.Of(sign.Value))))),
        ("corrected", VisitCorrectionFields.Json(assessment)));

    public static Assessment Assessment(JsonElement json) => new(
        RequiredDay(json, "date"), Map(json, "readings", Reading), Map(json, "signs", (_, answer) => Word<Answer>(answer.GetString()!)))
    {
        Rater = Text(json, "rater"),
        Corrected = VisitCorrectionFields.Of(json),
    };

    public static JsonObject Write(SessionLog session) => JsonFields.Of(
        ("date", JsonFields.Day(session.Date)),
        ("contractions", session.Contractions),
        ("peak_mA", session.Peak?.Milliamperes),
        ("comfort", session.Comfort),
        ("evoked_Nm", session.Evoked?.NewtonMetres),
        ("strong_contraction_tolerated", session.StrongContractionTolerated),
        ("exercises", JsonFields.List(session.Exercises.Select(Write))),
        ("pain_before", session.PainBefore),
        ("pain_after", session.PainAfter),
        ("pain_next_morning", session.PainNextMorning),
        ("skin", session.Skin is { } skin ? EnumWords.Of(skin) : null),
        ("adherence_percent", session.Adherence?.Percent),
        ("note", session.Note));

    public static SessionLog Session(JsonElement json) => new(RequiredDay(json, "date"), RequiredWhole(json, "contractions"))
    {
        Peak = Amount(json, "peak_mA", Current.FromMilliamperes),
        Comfort = Whole(json, "comfort"),
        Evoked = Amount(json, "evoked_Nm", Torque.FromNewtonMetres),
        StrongContractionTolerated = json.TryGetProperty("strong_contraction_tolerated", out JsonElement strong) ? strong.GetBoolean() : null,
        Exercises = List(json, "exercises", Exercise),
        PainBefore = Whole(json, "pain_before"),
        PainAfter = Whole(json, "pain_after"),
        PainNextMorning = Whole(json, "pain_next_morning"),
        Skin = Text(json, "skin") is string skin ? Word<SkinCheck>(skin) : null,
        Adherence = Amount(json, "adherence_percent", Percentage.FromPercent),
        Note = Text(json, "note"),
    };

    public static JsonObject Write(FlagNote note) =>
        JsonFields.Of(("flag", note.Flag), ("on", JsonFields.Day(note.On)), ("by", note.By), ("text", note.Text));

    public static FlagNote FlagNote(JsonElement json) =>
        new(Required(json, "flag"), RequiredDay(json, "on"), Required(json, "by"), Required(json, "text"));

    private static JsonObject Write(Reading reading) => JsonFields.Of(
        ("value", reading.Value),
        ("trials", reading.Trials),
        ("each", JsonFields.List(reading.Each.Select(value => (JsonNode?)value))),
        ("rater", reading.Rater),
        ("device", reading.Device),
        ("position", reading.Position),
        ("steps", reading.Steps),
        ("corrected", JsonFields.List(reading.Corrected.Select(Write))));

    private static Reading Reading(string measure, JsonElement json) => new(measure, RequiredNumber(json, "value"))
    {
        Trials = Whole(json, "trials"),
        Each = List(json, "each", value => value.GetDouble()),
        Rater = Text(json, "rater"),
        Device = Text(json, "device"),
        Position = Text(json, "position"),
        Steps = Whole(json, "steps"),
        Corrected = List(json, "corrected", Correction),
    };

    private static JsonObject Write(Correction correction) => JsonFields.Of(
        ("was", correction.Was), ("on", JsonFields.Day(correction.On)), ("by", correction.By), ("why", correction.Why));

    private static Correction Correction(JsonElement json) =>
        new(RequiredNumber(json, "was"), RequiredDay(json, "on"), Required(json, "by"), Text(json, "why"));

    private static JsonObject Write(ExerciseDone done) => JsonFields.Of(
        ("exercise", done.Exercise),
        ("sets", JsonFields.List(done.Sets.Select(set => JsonFields.Of(("repetitions", set.Repetitions), ("load_kg", set.Load?.Kilograms))))),
        ("time_s", done.Time?.Seconds));

    private static ExerciseDone Exercise(JsonElement json) => new(
        Required(json, "exercise"), List(json, "sets", set => new SetDone(Whole(set, "repetitions"), Amount(set, "load_kg", Mass.FromKilograms))))
    {
        Time = Amount(json, "time_s", Duration.FromSeconds),
    };
}
