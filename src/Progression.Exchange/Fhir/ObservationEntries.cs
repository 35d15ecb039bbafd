using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Exchange.Fhir;

/// <summary>What was measured and seen at the visits: an Observation for each reading and each answer, and one for a lag that follows from two of them.</summary>
internal static class ObservationEntries
{
    public static void Add(FhirDraft draft)
    {
        Case patient = draft.Order.Patient;
        IEnumerable<(Assessment Visit, string When)> visits =
            [.. patient.PreOp is { } before ? [(before, "pre-op")] : ImmutableArray<(Assessment, string)>.Empty, .. patient.Assessments.Select(visit => (visit, "visit"))];
        foreach ((Assessment visit, string when) in visits)
        {
            foreach (Reading reading in visit.Readings.Values.OrderBy(reading => draft.Order.Library.Measures.GetValueOrDefault(reading.Measure)?.Place))
            {
                draft.Add(Name(draft, (visit, when), reading.Measure), OfReading(draft, visit, reading));
            }

            AddLag(draft, (visit, when));
            foreach ((string sign, Answer answer) in visit.SignsSeen)
            {
                draft.Add(Name(draft, (visit, when), sign), OfSign(draft, visit, (sign, answer)));
            }
        }
    }

    /// <summary>What is measured, as a concept: the public codes there are, ours, and the title.</summary>
    public static JsonNode Measured(FhirDraft draft, string measure)
    {
        Side side = draft.Order.Patient.Operation.Side;
        return FhirNode.Concept(
            draft.Order.Library.Measures.GetValueOrDefault(measure)?.Title ?? measure,
            [.. draft.Order.Codes.Sent(measure, side).Select(code => FhirNode.Coding(code.System, code.Code)), FhirNode.Coding(FhirSystems.Measure, measure)])!;
    }

    /// <summary>A value of a measure with its unit; as words where the unit has no UCUM code, and bare where the library does not know the measure (any more).</summary>
    public static (string Name, JsonNode Value) Value(FhirDraft draft, string measure, double value)
    {
        Measure? of = draft.Order.Library.Measures.GetValueOrDefault(measure);
        return of is null ? ("valueQuantity", FhirNode.Quantity(value, null))
            : UcumUnit.Of(measure, of.Unit) is { } unit ? ("valueQuantity", FhirNode.Quantity(value, unit))
            : ("valueString", FhirNode.Words(MeasureText.Write(of, value))!);
    }

    private static string Name(FhirDraft draft, (Assessment Visit, string When) at, string id) =>
        draft.OfCase("observation", string.Create(CultureInfo.InvariantCulture, $"{at.When}|{at.Visit.Date:yyyy-MM-dd}|{id}"));

    private static JsonObject OfReading(FhirDraft draft, Assessment visit, Reading reading) => FhirNode.Resource(
        "Observation",
        ("status", reading.Corrected.IsEmpty ? "final" : "corrected"),
        ("code", Measured(draft, reading.Measure)),
        ("subject", FhirDraft.To(draft.Patient)),
        ("effectiveDateTime", FhirNode.Day(visit.Date)),
        ("performer", FhirNode.List(Named(reading.Rater ?? visit.Rater))),
        Value(draft, reading.Measure, reading.Value),
        ("note", FhirNode.List(reading.Corrected.Select(one => (JsonNode?)FhirNode.Of(("text", FhirNode.Words(Correction(draft, reading.Measure, one))))))),
        ("bodySite", Site(draft, reading.Measure)),
        ("device", Named(reading.Device)),
        ("component", FhirNode.List(Details(draft, reading))));

    private static JsonObject OfSign(FhirDraft draft, Assessment visit, (string Id, Answer Answer) sign) => FhirNode.Resource(
        "Observation",
        ("status", "final"),
        ("code", FhirNode.Concept(Question(draft, sign.Id), FhirNode.Coding(FhirSystems.Sign, sign.Id))),
        ("subject", FhirDraft.To(draft.Patient)),
        ("effectiveDateTime", FhirNode.Day(visit.Date)),
        ("performer", FhirNode.List(Named(visit.Rater))),
        ("valueBoolean", sign.Answer == Answer.Unknown ? null : sign.Answer == Answer.Yes),
        ("dataAbsentReason", sign.Answer == Answer.Unknown
            ? FhirNode.Concept(null, FhirNode.Coding("http://terminology.hl7.org/CodeSystem/data-absent-reason", "unknown"))
            : null));

    private static void AddLag(FhirDraft draft, (Assessment Visit, string When) at)
    {
        if (KneeState.At(at.Visit, draft.Order.Patient).Lag is not { } lag || !draft.Order.Library.Measures.ContainsKey(MeasureIds.Lag))
        {
            return;
        }

        draft.Add(Name(draft, at, MeasureIds.Lag), FhirNode.Resource(
            "Observation",
            ("status", "final"),
            ("code", Measured(draft, MeasureIds.Lag)),
            ("subject", FhirDraft.To(draft.Patient)),
            ("effectiveDateTime", FhirNode.Day(at.Visit.Date)),
            Value(draft, MeasureIds.Lag, lag.Degrees),
            ("bodySite", Site(draft, MeasureIds.Lag)),
            ("derivedFrom", FhirNode.List(new[] { MeasureIds.ExtensionActive, MeasureIds.ExtensionPassive }.Select(id => (JsonNode?)FhirDraft.To(Name(draft, at, id)))))));
    }

    private static IEnumerable<JsonNode?> Details(FhirDraft draft, Reading reading) =>
    [
        .. reading.Each.Select(trial => FhirNode.Of(("code", Detail(FhirSystems.Trial, "One trial")), Value(draft, reading.Measure, trial))),
        reading is { Trials: int trials, Each.IsEmpty: true } ? FhirNode.Of(("code", Detail(FhirSystems.Trials, "Trials behind the mean")), ("valueInteger", trials)) : null,
        FhirNode.Words(reading.Position) is { } position ? FhirNode.Of(("code", Detail(FhirSystems.Position, "Position")), ("valueString", position)) : null,
        reading.Steps is int steps ? FhirNode.Of(("code", Detail(FhirSystems.Steps, "Steps of the staircase")), ("valueInteger", steps)) : null,
    ];

    private static JsonNode? Detail(string code, string text) => FhirNode.Concept(text, FhirNode.Coding(FhirSystems.Detail, code));

    // Somebody or something of which only a name is known: a reference without an entry.
    private static JsonObject? Named(string? name) => FhirNode.Words(name) is { } words ? FhirNode.Of(("display", words)) : null;

    private static JsonNode? Site(FhirDraft draft, string measure) => MeasureIds.Units.ContainsKey(measure) && !OfNoKnee(measure)
        ? FhirNode.Concept(measure is MeasureIds.OtherTorque or MeasureIds.OtherForce ? $"{FhirDraft.Word(Other(draft))} knee" : draft.Knee)
        : null;

    // An arm's length and a straight-leg raise are of the leg; percentages say themselves what they are of.
    private static bool OfNoKnee(string measure) => measure is MeasureIds.LeverArm or MeasureIds.StraightLegRaises;

    private static Side Other(FhirDraft draft) => draft.Order.Patient.Operation.Side == Side.Left ? Side.Right : Side.Left;

    private static string Question(FhirDraft draft, string sign) => Signs.Questions.GetValueOrDefault(sign)
        ?? draft.Order.Library.RedFlags.SelectMany(flag => flag.Questions).FirstOrDefault(question => question.Id == sign)?.Text
        ?? sign;

    private static string Correction(FhirDraft draft, string measure, Correction one) =>
        $"{(draft.Order.Library.Measures.TryGetValue(measure, out Measure? of) ? MeasureText.Write(of, one.Was) : MeasureText.Amount(one.Was))} until {one.On:yyyy-MM-dd}, put right by {one.By}{(one.Why is null ? "" : $": {one.Why}")}";
}
