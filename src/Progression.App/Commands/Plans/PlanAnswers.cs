using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Progression.App.Commands.Reviews;
using Progression.App.Grid;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Records.Plans;

namespace Progression.App.Commands.Plans;

/// <summary>What the plan commands answer as JSON. The forms are stable: a change of meaning gets another schema number. They are described in shared/schema.</summary>
internal static class PlanAnswers
{
    /// <summary>The findings as JSON.</summary>
    public static JsonObject Findings(PlanAtHand at, ImmutableArray<Finding> findings) => new()
    {
        ["schema"] = "findings/1",
        ["code"] = at.Case.Code.Text,
        ["signature"] = ReviewAnswers.Signature(at.Standing),
        ["worst"] = findings.IsEmpty ? null : FindingWords.Word(findings.Max(finding => finding.Severity)),
        ["findings"] = List(findings),
    };

    /// <summary>A draft as JSON: the plan in its stored form, the figures of each week, the findings.</summary>
    public static JsonObject Draft(PlanAtHand at, ImmutableArray<Finding> findings) => new()
    {
        ["schema"] = "draft/1",
        ["caution"] = PlanText.Caution,
        ["signature"] = ReviewAnswers.Signature(at.Standing),
        ["plan"] = PlanJson.Node(at.Plan),
        ["figures"] = new JsonArray([.. PlanFigures.Of(at.Plan, at.Library).Select(Figures)]),
        ["findings"] = List(findings),
    };

    /// <summary>An answer to why as JSON.</summary>
    public static JsonObject Why(Explanation why) => new()
    {
        ["schema"] = "why/1",
        ["heading"] = why.Heading,
        ["reasons"] = new JsonArray([.. why.Reasons.Select(reason => (JsonNode?)reason)]),
        ["inputs"] = PlanJson.Inputs(why.Inputs) ?? [],
        ["rule"] = why.Rule,
        ["limits"] = new JsonArray([.. why.Limits.Select(PlanJson.Limit)]),
        ["source"] = PlanJson.Source(why.Source),
        ["would_change"] = why.WouldChange,
        ["findings"] = List(why.Findings),
    };

    private static JsonArray List(ImmutableArray<Finding> findings) => new([.. findings.Select(One)]);

    private static JsonObject One(Finding finding) => new()
    {
        ["rule"] = finding.Rule,
        ["severity"] = FindingWords.Word(finding.Severity),
        ["text"] = finding.Text,
        ["cells"] = new JsonArray([.. finding.Cells.Select(Cell)]),
        ["inputs"] = PlanJson.Inputs(finding.Inputs) ?? [],
        ["limits"] = new JsonArray([.. finding.Limits.Select(PlanJson.Limit)]),
        ["source"] = PlanJson.Source(finding.Source),
        ["cure"] = finding.Cure is not { } cure ? null : new JsonObject
        {
            ["text"] = cure.Text,
            ["changes"] = new JsonArray([.. cure.Changes.Select(Change)]),
        },
    };

    private static JsonObject Change(CellChange change)
    {
        JsonObject cell = Cell(change.Address);
        cell["content"] = PlanJson.Content(change.Content);
        return cell;
    }

    private static JsonObject Cell(CellAddress address) => new() { ["lane"] = address.Lane, ["week"] = address.Week };

    private static JsonObject Figures(WeekFigures week) => new()
    {
        ["week"] = week.Week,
        ["planned_days"] = week.PlannedDays,
        ["stim_sessions"] = week.StimSessions,
        ["stim_contractions"] = week.StimContractions,
        ["stim_clock_min"] = week.StimMinutes,
        ["voluntary_quadriceps_contractions"] = week.Quads.Contractions,
        ["voluntary_to_stimulated"] = week.VoluntaryToStim,
        ["quadriceps_load_change_percent"] = week.QuadsChange,
        ["longest_day_min"] = week.MinutesOnLongestDay,
        ["muscles"] = new JsonArray([.. week.Work.Select(Muscle)]),
    };

    private static JsonObject Muscle(KeyValuePair<MuscleGroup, MuscleWork> work) => new()
    {
        ["muscle"] = work.Key.ToString().ToLowerInvariant(),
        ["contractions"] = work.Value.Contractions,
        ["contraction_s"] = work.Value.Seconds,
        ["load_kg_repetitions"] = work.Value.KilogramRepetitions,
    };
}
