using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;

namespace Progression.Exchange.Fhir;

/// <summary>What is to be done: a ServiceRequest for each stretch of weeks in which the stim, or an exercise with its dose, stays the same.</summary>
internal static class OrderEntries
{
    private const string EveryDay = "d";

    /// <summary>Adds the orders.</summary>
    /// <returns>Their names, in the order of the grid.</returns>
    public static List<string> Add(FhirDraft draft, PlanRevision plan, string status)
    {
        List<string> added = [];
        foreach (PlanStretch stretch in plan.Lanes.SelectMany(lane => PlanStretch.Of(plan, lane)))
        {
            JsonObject? order = stretch.Content switch
            {
                StimCell { Rung: not Rung.Stopped } stim => Order(draft, stretch, status, OfStim(draft, plan, stim)),
                ActiveCell active => Order(draft, stretch, status, OfExercise(draft, active)),
                _ => null,
            };
            if (order is not null)
            {
                added.Add(draft.OfPlan("order", string.Create(CultureInfo.InvariantCulture, $"{stretch.Lane.Id}|{stretch.First}")));
                draft.Add(added[^1], order);
            }
        }

        return added;
    }

    private static JsonObject Order(FhirDraft draft, PlanStretch stretch, string status, OrderedWork work)
    {
        PlanRevision plan = draft.Order.Plan!;
        (DateOnly start, DateOnly end) = stretch.Days(plan);
        return FhirNode.Resource(
            "ServiceRequest",
            ("requisition", FhirNode.Identifier(FhirSystems.Plan, $"{draft.Code}/{draft.Revision}")),
            ("status", status),
            ("intent", "plan"),
            ("category", FhirNode.List(FhirNode.Concept(stretch.Lane.Title))),
            ("code", work.Code),
            ("orderDetail", FhirNode.List(work.Details.Select(detail => FhirNode.Concept(detail)))),
            ("quantityQuantity", work.Quantity),
            ("subject", FhirDraft.To(draft.Patient)),
            ("occurrenceTiming", FhirNode.Of(("repeat", FhirNode.Of(
                ("boundsPeriod", FhirNode.Period(start, end)),
                ("duration", work.Minutes is double minutes ? JsonValue.Create(minutes) : null),
                ("durationUnit", work.Minutes is null ? null : "min"),
                ("frequency", work.TimesPerDay),
                ("period", 1),
                ("periodUnit", EveryDay),
                ("dayOfWeek", Days(work.Days)))))),
            ("authoredOn", draft.Order.Saved is { } stamp ? FhirNode.Instant(stamp.At) : null),
            ("requester", draft.Order.Saved is { } by ? draft.To(by.UserId, by.Name) : null),
            ("bodySite", FhirNode.List(work.Site is { } site ? FhirNode.Concept(site) : null)));
    }

    private static OrderedWork OfStim(FhirDraft draft, PlanRevision plan, StimCell stim)
    {
        LadderRung rung = draft.Order.Library.RungOf(stim.Rung);
        StimSettings? settings = draft.Order.Library.Regimens.GetValueOrDefault(plan.Regimen) is { } regimen ? StimSettings.From(regimen) : null;
        return new OrderedWork(
            FhirNode.Concept($"Electrical stimulation of the quadriceps: {rung.Title}", FhirNode.Coding(FhirSystems.Rung, Word(stim.Rung))),
            [
                $"{stim.Contractions} contractions a session",
                .. Told("on", settings?.On), .. Told("off", settings?.Off), .. Told("rate", settings?.Rate), .. Told("pulse width", settings?.Width),
                .. draft.Order.Patient.Pads is { } pads ? [$"pads {pads}"] : Array.Empty<string>(),
                "as strong as is tolerated, never painful",
            ],
            (stim.SessionsPerDay, stim.Days))
        {
            Site = $"{FhirDraft.Word(draft.Order.Patient.Operation.Side)} thigh",
            Quantity = FhirNode.Quantity(stim.Contractions, new UcumUnit("{contractions}", null)),
        };
    }

    private static OrderedWork OfExercise(FhirDraft draft, ActiveCell active)
    {
        Exercise? exercise = draft.Order.Library.Exercises.GetValueOrDefault(active.Exercise);
        ExerciseDose dose = active.Dose;
        return new OrderedWork(
            FhirNode.Concept(exercise?.Title ?? active.Exercise, FhirNode.Coding(FhirSystems.Exercise, active.Exercise)),
            [
                .. dose.Repetitions is int repetitions ? [$"{dose.Sets} x {repetitions} repetitions"] : Array.Empty<string>(),
                .. Told("hold", dose.Hold),
                .. dose.Load is { } load ? [$"load {load}"] : Array.Empty<string>(),
                .. exercise is null ? Array.Empty<string>() : [exercise.Position],
            ],
            (dose.TimesPerDay, dose.Days))
        {
            Minutes = dose.Bout is { } bout ? bout.Seconds / 60 : null,
            Quantity = dose.Repetitions is null ? null : FhirNode.Quantity(dose.Sets * dose.Repetitions.Value, new UcumUnit("{repetitions}", null)),
        };
    }

    private static IEnumerable<string> Told<T>(string name, Quantity<T>? value)
        where T : Quantity<T> => value is null ? [] : [$"{name} {value}"];

    private static JsonArray? Days(DaysOfWeek days) => days.Count == 7
        ? null
        : FhirNode.List(Enumerable.Range(1, 7).Select(day => (DayOfWeek)(day % 7)).Where(days.Contains).Select(day => (JsonNode?)JsonValue.Create(day.ToString()[..3].ToLowerInvariant())));

    private static string Word(Rung rung) => rung switch
    {
        Rung.Familiarise => "familiarise",
        Rung.HighVolume => "high-volume",
        Rung.Reduced => "reduced",
        Rung.LowVolume => "low-volume",
        _ => "stopped",
    };

    /// <summary>What an order says of the work itself.</summary>
    /// <param name="Code">What is done.</param>
    /// <param name="Details">How, in words.</param>
    /// <param name="When">How often on which days.</param>
    private sealed record OrderedWork(JsonNode? Code, IEnumerable<string> Details, (int TimesPerDay, DaysOfWeek Days) When)
    {
        public int TimesPerDay => When.TimesPerDay;

        public DaysOfWeek Days => When.Days;

        /// <summary>How much each time; null where it is told in time.</summary>
        public JsonNode? Quantity { get; init; }

        /// <summary>How long each time; null where it is told in repetitions.</summary>
        public double? Minutes { get; init; }

        public string? Site { get; init; }
    }
}
