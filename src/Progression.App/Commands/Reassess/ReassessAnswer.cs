using System.Globalization;
using System.Text.Json.Nodes;
using Progression.App.Grid;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Core.Rules;
using Progression.Records.Plans;

namespace Progression.App.Commands.Reassess;

/// <summary>What <c>reassess</c> answers, also as JSON; the form is stable and described in shared/schema.</summary>
/// <param name="Patient">The case with the visit.</param>
/// <param name="Standing">The plan that stood.</param>
/// <param name="Library">The clinical library.</param>
/// <param name="Found">What the visit comes to.</param>
/// <param name="Decision">What was decided and saved; null when nothing was.</param>
internal sealed record ReassessAnswer(Case Patient, PlanRevision Standing, ClinicalLibrary Library, Reassessment Found, PlanDecision? Decision)
{
    /// <summary>The latest visit; null when the case has none.</summary>
    public DateOnly? Day => Patient.Assessments.IsEmpty ? null : Patient.Assessments[^1].Date;

    /// <summary>The changes that the latest visit shows.</summary>
    public IEnumerable<Change> Changes => Found.Comparison.Rows.Select(row => row.Last).OfType<Change>().Where(change => change.To == Day);

    /// <summary>The forecasts of the milestone lanes, in the order of the grid.</summary>
    public IEnumerable<(Measure Measure, ForecastAnswer Answer)> Forecasts =>
        from measure in Lanes.For(withStim: true).Select(lane => lane.Measure).OfType<string>()
        where Found.Forecasts.ContainsKey(measure)
        select (Library.Measures[measure], Found.Forecasts[measure]);

    public JsonObject Json() => new()
    {
        ["schema"] = "reassess/1",
        ["caution"] = PlanText.Caution,
        ["code"] = Patient.Code.Text,
        ["assessment"] = Day is { } day ? Text(day) : null,
        ["flags"] = new JsonArray([.. Found.Flags.Where(flag => flag.Raised != Truth.DoesNotHold).Select(Flag)]),
        ["verdict"] = Found.Verdict is { } verdict ? Verdict(verdict) : null,
        ["changes"] = new JsonArray([.. Changes.Select(Changed)]),
        ["forecasts"] = new JsonArray([.. Forecasts.Select(one => Forecast(one.Measure, one.Answer))]),
        ["proposal"] = Found.Proposal.Value is { } proposal ? new JsonArray([.. proposal.Changes.Select(Proposed)]) : null,
        ["no_proposal"] = Words(Found.Proposal.Problems.Select(problem => problem.ToString())),
        ["decision"] = Decision is { } decision
            ? new JsonObject { ["proposed"] = decision.Proposed, ["taken"] = decision.Taken, ["reason"] = decision.Reason }
            : null,
    };

    private static JsonObject Flag(FlagState flag) => new()
    {
        ["id"] = flag.Flag.Id,
        ["title"] = flag.Flag.Title,
        ["shows"] = flag.Raised == Truth.Holds ? "yes" : "not known",
        ["open"] = flag.IsOpen,
        ["since"] = flag.Since is { } since ? Text(since) : null,
        ["inputs"] = PlanJson.Inputs(flag.Inputs) ?? [],
        ["checklist"] = Words(flag.IsOpen ? flag.Flag.Checklist : []),
    };

    private static JsonObject Verdict(LadderVerdict verdict) => new()
    {
        ["outcome"] = verdict.OutcomeWords,
        ["from"] = RungWord(verdict.From),
        ["to"] = RungWord(verdict.To),
        ["rule"] = verdict.DecidedBy.Id,
        ["title"] = verdict.DecidedBy.Title,
        ["conditions"] = Words(verdict.Results.FirstOrDefault(result => result.Rule == verdict.DecidedBy)?.Conditions.Select(one => one.ToString()) ?? []),
        ["false_advance"] = verdict.FalseAdvance,
        ["would_change"] = Words(verdict.WouldChange),
        ["to_measure"] = Words(verdict.ToMeasure),
    };

    private static JsonObject Changed(Change change) => new()
    {
        ["measure"] = change.Measure.Id,
        ["title"] = change.Measure.Title,
        ["unit"] = change.Measure.Unit,
        ["from"] = Text(change.From),
        ["old"] = Math.Round(change.Old, 6),
        ["new"] = Math.Round(change.New, 6),
        ["words"] = change.Words,
        ["possibly_worse"] = change.PossiblyWorse,
        ["notes"] = Words(change.Notes),
    };

    private static JsonObject Forecast(Measure measure, ForecastAnswer answer) => new()
    {
        ["measure"] = measure.Id,
        ["title"] = measure.Title,
        ["why_not"] = answer.WhyNot,
        ["basis"] = answer.Forecast?.BasisWords,
        ["surprise"] = answer.Forecast?.Surprise?.Words,
        ["milestones"] = new JsonArray([.. (answer.Forecast?.Milestones ?? []).Select(one => new JsonObject
        {
            ["id"] = one.Milestone.Id,
            ["week"] = one.Milestone.Week,
            ["chance_true"] = one.ChanceTrue,
            ["words"] = one.Words,
        })]),
    };

    private static JsonObject Proposed(ProposedChange change) => new()
    {
        ["lane"] = change.Address.Lane,
        ["week"] = change.Address.Week,
        ["old"] = PlanJson.Content(change.Old),
        ["new"] = PlanJson.Content(change.New),
        ["reason"] = change.Reason,
        ["confidence"] = change.Confidence,
        ["rule"] = change.Basis.Rule,
        ["pinned"] = change.IsPinned,
        ["with"] = change.With?.Lane,
    };

    private static string RungWord(Rung rung) => rung switch
    {
        Rung.Familiarise => "familiarise",
        Rung.HighVolume => "high volume",
        Rung.Reduced => "reduced",
        Rung.LowVolume => "low volume",
        _ => "stopped",
    };

    private static JsonArray Words(IEnumerable<string> words) => new([.. words.Select(word => (JsonNode?)word)]);

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
