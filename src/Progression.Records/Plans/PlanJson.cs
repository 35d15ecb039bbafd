using System.Text.Json.Nodes;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Records.Json;
using Progression.Records.Yaml;

namespace Progression.Records.Plans;

/// <summary>
/// A plan as the JSON text that is stored and handed out: equal plans give equal texts. Units stand in the names; what is empty is left out.
/// Cells stand lane by lane as in the grid, each lane's weeks in order.
/// </summary>
public static class PlanJson
{
    /// <summary>The value of the field "schema"; another form gets another number.</summary>
    public const string Schema = "plan/1";

    /// <summary>The canonical text of a plan.</summary>
    public static string Write(PlanRevision plan) => JsonFields.Text(Node(plan));

    /// <summary>The same as an object, to be put into a larger answer.</summary>
    public static JsonObject Node(PlanRevision plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return JsonFields.Of(
            ("schema", Schema),
            ("code", plan.Code.Text),
            ("operation", JsonFields.Day(plan.Operation)),
            ("weeks", plan.Weeks),
            ("from", JsonFields.Day(plan.From)),
            ("open_from", plan.OpenFrom == plan.From ? null : JsonFields.Day(plan.OpenFrom)),
            ("regimen", plan.Regimen),
            ("library", plan.LibraryVersion),
            ("stim_barred", JsonFields.List(plan.StimBarred.Select(reason => (JsonNode?)reason))),
            ("decision", plan.Decision is { } decision ? Write(decision) : null),
            ("lanes", JsonFields.List(plan.Lanes.Select(Write))),
            ("cells", JsonFields.List(
                from lane in plan.Lanes
                from week in Enumerable.Range(1, plan.Weeks)
                let cell = plan.At(new CellAddress(lane.Id, week))
                where cell is not null
                select Write(lane, week, cell))));
    }

    /// <summary>The plan of a text that <see cref="Write(PlanRevision)"/> made.</summary>
    /// <exception cref="FormatException">The text is not such a plan.</exception>
    public static PlanRevision Read(string json) => JsonReading.Of(json, "plan", PlanJsonReader.Read);

    /// <summary>A cell's content as an object; null for an empty cell.</summary>
    public static JsonObject? Content(CellContent? content) => content switch
    {
        StimCell stim => JsonFields.Of(
            ("kind", "stim"), ("rung", EnumWords.Of(stim.Rung)), ("contractions", stim.Contractions),
            ("sessions_per_day", stim.SessionsPerDay), ("days", stim.Days.ToString())),
        ActiveCell active => JsonFields.Of(("kind", "exercise"), ("exercise", active.Exercise), ("dose", Write(active.Dose))),
        TargetCell target => JsonFields.Of(("kind", "target"), ("value", target.Value)),
        SkillCell skill => JsonFields.Of(("kind", "skills"), ("text", skill.Text)),
        _ => null,
    };

    /// <summary>A threshold as an object.</summary>
    public static JsonObject Limit(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return JsonFields.Of(
            ("id", limit.Id), ("title", limit.Title), ("value", limit.Value), ("unit", limit.Unit), ("source", Source(limit.Source)));
    }

    /// <summary>A source as an object.</summary>
    public static JsonObject Source(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return JsonFields.Of(("text", source.Text), ("standing", EnumWords.Of(source.Standing)));
    }

    /// <summary>Inputs as a list of name and value; null when there are none.</summary>
    public static JsonArray? Inputs(IEnumerable<Input> inputs) =>
        JsonFields.List(inputs.Select(input => JsonFields.Of(("name", input.Name), ("value", input.Value))));

    private static JsonObject Write(PlanDecision decision) => JsonFields.Of(
        ("assessment", JsonFields.Day(decision.Assessment)), ("proposed", decision.Proposed), ("taken", decision.Taken), ("reason", decision.Reason));

    private static JsonObject Write(Lane lane) => JsonFields.Of(
        ("id", lane.Id), ("band", EnumWords.Of(lane.Band)), ("title", lane.Title), ("short", lane.Short), ("measure", lane.Measure),
        ("slot", lane.Slot is { } slot ? EnumWords.Of(slot) : null));

    private static JsonObject Write(Lane lane, int week, PlanCell cell) => JsonFields.Of(
        ("lane", lane.Id),
        ("week", week),
        ("content", Content(cell.Content)),
        ("basis", JsonFields.Of(
            ("rule", cell.Basis.Rule),
            ("reason", cell.Basis.Reason),
            ("inputs", Inputs(cell.Basis.Inputs)),
            ("limits", JsonFields.List(cell.Basis.Limits.Select(Limit))),
            ("source", Source(cell.Basis.Source)),
            ("would_change", cell.Basis.WouldChange))),
        ("pin", cell.Pin is { } pin ? JsonFields.Of(("suggested", Content(pin.Suggested)), ("reason", pin.Reason)) : null));

    private static JsonObject Write(ExerciseDose dose) => JsonFields.Of(
        ("sets", dose.Repetitions is null ? null : dose.Sets),
        ("repetitions", dose.Repetitions),
        ("bout_s", dose.Bout?.Seconds),
        ("hold_s", dose.Hold?.Seconds),
        ("load_kg", dose.Load?.Mass?.Kilograms),
        ("load_percent_of_maximum", dose.Load?.OfMaximum?.Percent),
        ("load_effort", dose.Load?.Effort),
        ("times_per_day", dose.TimesPerDay),
        ("days", dose.Days.ToString()));
}
