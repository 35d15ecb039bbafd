using System.Text.Json.Nodes;
using Progression.Core.People;
using Progression.Records.Json;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>
/// A case as the JSON text that is stored: equal cases give equal texts. Units stand in the names; a reading stands in the unit of its measure.
/// What is not known is left out. Unlike a file a person wrote, a stored case is not measured against the library or the present day again.
/// </summary>
public static class CaseJson
{
    /// <summary>The value of the field "schema"; another form gets another number.</summary>
    public const string Schema = "case/1";

    /// <summary>The canonical text of a case.</summary>
    public static string Write(Case written)
    {
        ArgumentNullException.ThrowIfNull(written);
        return JsonFields.Text(JsonFields.Of(
            ("schema", Schema),
            ("code", written.Code.Text),
            ("born", JsonFields.Day(written.Born)),
            ("operation", JsonFields.Of(
                ("date", JsonFields.Day(written.Operation.Date)), ("side", EnumWords.Of(written.Operation.Side)), ("procedure", written.Operation.Procedure))),
            ("body_mass_kg", written.BodyMass?.Kilograms),
            ("weight_bearing", written.WeightBearing is { } load ? EnumWords.Of(load) : null),
            ("other_knee", EnumWords.Of(written.OtherKnee)),
            ("surgeon", Write(written.Surgeon)),
            ("therapist", written.Therapist),
            ("stimulator", written.Stimulator),
            ("pads", written.Pads is { } pad ? JsonFields.Of(("width_cm", pad.Width.Centimetres), ("height_cm", pad.Height?.Centimetres)) : null),
            ("plan", JsonFields.Of(("regimen", written.Regimen), ("weeks", written.Weeks), ("from", JsonFields.Day(written.PlanFrom)))),
            ("screening", Write(written.Screening)),
            ("pre_op", written.PreOp is { } before ? CaseJsonParts.Write(before) : null),
            ("assessments", JsonFields.List(written.Assessments.Select(CaseJsonParts.Write))),
            ("sessions", JsonFields.List(written.Sessions.Select(CaseJsonParts.Write))),
            ("flag_notes", JsonFields.List(written.FlagNotes.Select(CaseJsonParts.Write))),
            ("deficit_written", written.DeficitWritten is { } sign ? EnumWords.Of(sign) : null)));
    }

    /// <summary>The case of a text that <see cref="Write(Case)"/> made.</summary>
    /// <exception cref="FormatException">The text is not such a case.</exception>
    public static Case Read(string json)
    {
        return JsonReading.Of(json, "case", CaseJsonReader.Read);
    }

    /// <summary>A logged session as an object, to be put into a larger answer.</summary>
    public static JsonObject Node(SessionLog session)
    {
        ArgumentNullException.ThrowIfNull(session);
        return CaseJsonParts.Write(session);
    }

    private static JsonObject Write(SurgeonLimits surgeon) => JsonFields.Of(
        ("flexion_at_most_deg", surgeon.FlexionAtMost?.Degrees), ("no_resistance_before", JsonFields.Day(surgeon.NoResistanceBefore)), ("text", surgeon.Text));

    private static JsonObject Write(Screening screening) => JsonFields.Of(
        ("date", JsonFields.Day(screening.Date)),
        ("answers", JsonFields.Of(screening.Answers.Values.Select(answer => KeyValuePair.Create<string, JsonNode?>(answer.Item, JsonFields.Of(
            ("answer", EnumWords.Of(answer.Answer)),
            ("clearance", answer.Clearance is { } clearance
                ? JsonFields.Of(("by", clearance.By), ("on", JsonFields.Day(clearance.On)), ("text", clearance.Text))
                : null)))))));
}
