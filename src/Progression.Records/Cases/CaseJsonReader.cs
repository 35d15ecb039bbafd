using System.Text.Json;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;
using static Progression.Records.Json.JsonReading;

namespace Progression.Records.Cases;

/// <summary>Reads what <see cref="CaseJson"/> writes. A text of another form ends in one of the exceptions that <see cref="CaseJson.Read"/> turns into its own.</summary>
internal static class CaseJsonReader
{
    /// <summary>The case.</summary>
    public static Case Read(JsonElement json)
    {
        string? schema = Text(json, "schema");
        JsonElement operation = json.GetProperty("operation");
        JsonElement plan = json.GetProperty("plan");
        return schema != CaseJson.Schema ? throw new ArgumentException($"It is of the form {schema}, not {CaseJson.Schema}.") : new Case
        {
            Code = CaseCode.Parse(Required(json, "code")) ?? throw new ArgumentException("Its code is not a case code."),
            Born = Day(json, "born"),
            Operation = new Operation(RequiredDay(operation, "date"), Word<Side>(Required(operation, "side")), Required(operation, "procedure")),
            BodyMass = Amount(json, "body_mass_kg", Mass.FromKilograms),
            WeightBearing = Text(json, "weight_bearing") is string load ? Word<WeightBearing>(load) : null,
            OtherKnee = Word<OtherKnee>(Required(json, "other_knee")),
            Surgeon = Surgeon(json.GetProperty("surgeon")),
            Therapist = Text(json, "therapist"),
            Stimulator = Text(json, "stimulator"),
            Pads = json.TryGetProperty("pads", out JsonElement pads) ? Pad(pads) : null,
            Screening = Screening(json.GetProperty("screening")),
            PreOp = Part(json, "pre_op", CaseJsonParts.Assessment),
            Assessments = List(json, "assessments", CaseJsonParts.Assessment),
            Sessions = List(json, "sessions", CaseJsonParts.Session),
            FlagNotes = List(json, "flag_notes", CaseJsonParts.FlagNote),
            DeficitWritten = Text(json, "deficit_written") is string sign ? Word<DeficitSign>(sign) : null,
            Regimen = Text(plan, "regimen"),
            Weeks = Whole(plan, "weeks"),
            PlanFrom = Day(plan, "from"),
        };
    }

    private static SurgeonLimits Surgeon(JsonElement json) => new()
    {
        FlexionAtMost = Amount(json, "flexion_at_most_deg", Angle.FromDegrees),
        NoResistanceBefore = Day(json, "no_resistance_before"),
        Text = Text(json, "text"),
    };

    private static PadSize Pad(JsonElement json)
    {
        Length width = Length.FromCentimetres(json.GetProperty("width_cm").GetDouble());
        return Amount(json, "height_cm", Length.FromCentimetres) is Length height ? PadSize.Rectangle(width, height) : PadSize.Round(width);
    }

    private static Screening Screening(JsonElement json) => new(Day(json, "date"), Map(json, "answers", (item, answer) =>
        new ScreeningAnswer(item, Word<Answer>(Required(answer, "answer")), answer.TryGetProperty("clearance", out JsonElement clearance)
            ? new Clearance(Required(clearance, "by"), RequiredDay(clearance, "on"), Required(clearance, "text"))
            : null)));
}
