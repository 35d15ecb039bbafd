using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Checks;

/// <summary>Answers why, for any cell.</summary>
public static class Why
{
    private static readonly Source Arithmetic = new("Standard definitions: sums over the planned days of the week", Standing.Derived);

    private static readonly Source Gate = new("Screening before surface stimulation: each item with its own source in the library", Standing.Derived);

    /// <summary>Why a cell is as it is. Findings are those of <see cref="PlanCheck.Check"/> for the same plan.</summary>
    public static Explanation Of(Case patient, PlanRevision plan, ClinicalLibrary library, ImmutableArray<Finding> findings, CellAddress address)
    {
        Lane? lane = plan.LaneOf(address.Lane);
        ImmutableArray<Finding> here = [.. findings.Where(finding => finding.Cells.Contains(address))];
        if (lane is null)
        {
            return plan.StimBarred.IsEmpty || address.Lane is not (Lanes.Stim or Lanes.WithStim)
                ? Empty($"{address}", $"The plan has no lane \"{address.Lane}\".", here)
                : Barred(plan, findings, address);
        }

        string heading = $"{lane.Title}, week {address.Week}";
        return lane.Id == Lanes.Done ? WhyDone.Of(patient, plan, library, (lane, address.Week), here)
            : lane.Band == Band.Checks ? OfCheck(plan, library, (lane, address.Week), here)
            : plan.At(address) is { } cell ? OfCell(patient, plan, library, (lane, address.Week, cell)) with { Findings = here }
            : WhyExpected.Inputs(patient, library, (lane, address.Week)) is { Length: > 0 } expected ? Empty(heading, "Nothing is planned here; this is what to expect.", here) with { Inputs = expected }
            : Empty(heading, address.Week < plan.FirstWeek ? "Before the plan's first day: what is done is done." : "Nothing is planned here.", here);
    }

    private static Explanation Empty(string heading, string reason, ImmutableArray<Finding> findings) => new()
    {
        Heading = heading,
        Reasons = [reason],
        Rule = "EMPTY",
        Source = Arithmetic,
        WouldChange = "An edit of the cell.",
        Findings = findings,
    };

    private static Explanation Barred(PlanRevision plan, ImmutableArray<Finding> findings, CellAddress address)
    {
        ImmutableArray<Finding> stops = [.. findings.Where(finding => finding.Severity == Severity.Stop)];
        return new Explanation
        {
            Heading = $"{address}: no stim",
            Reasons = stops.IsEmpty ? plan.StimBarred : ["Stim is barred, so the plan has no such lane."],
            Inputs = [.. stops.SelectMany(stop => stop.Inputs).Distinct()],
            Rule = "STIM-BARRED",
            Source = Gate,
            WouldChange = "An answer, a clearance or a reading that lifts the bar, and then a new draft.",
            Findings = stops,
        };
    }

    private static Explanation OfCell(Case patient, PlanRevision plan, ClinicalLibrary library, (Lane Lane, int Week, PlanCell Cell) at)
    {
        Basis basis = at.Cell.Basis;
        List<string> reasons = [];
        if (at.Cell.Pin is { } pin)
        {
            string suggested = pin.Suggested is null ? "nothing" : CellNotation.Text(at.Lane, pin.Suggested, library);
            reasons.Add($"Pinned by hand{(pin.Reason is null ? "" : $": {pin.Reason.TrimEnd('.', ' ')}")}. The draft would put: {suggested}.");
        }

        reasons.Add(basis.Reason);
        string content = at.Cell.Content is null ? "empty" : CellNotation.Text(at.Lane, at.Cell.Content, library);
        return new Explanation
        {
            Heading = $"{at.Lane.Title}, week {at.Week}: {content}",
            Reasons = [.. reasons],
            Inputs = [.. Measured(patient, library, (at.Lane, at.Week)), .. WhyExpected.Inputs(patient, library, (at.Lane, at.Week)), .. basis.Inputs, .. StimSums(plan, library, (at.Lane, at.Week))],
            Rule = basis.Rule,
            Limits = basis.Limits,
            Source = basis.Source,
            WouldChange = basis.WouldChange,
        };
    }

    private static IEnumerable<Input> Measured(Case patient, ClinicalLibrary library, (Lane Lane, int Week) at) =>
        at.Lane.Measure is null
            ? []
            : patient.Assessments.Select(one => KneeState.At(one, patient))
                .Where(state => state.Week == at.Week && state.Value(at.Lane.Measure) is not null)
                .Select(state => new Input($"Measured {LadderFacts.Day(state.Date)}", $"{Number.Text(state.Value(at.Lane.Measure)!.Value, 1)} {library.Measures[at.Lane.Measure].Unit}"));

    private static IEnumerable<Input> StimSums(PlanRevision plan, ClinicalLibrary library, (Lane Lane, int Week) at)
    {
        if (at.Lane.Band != Band.Stim)
        {
            return [];
        }

        WeekFigures week = PlanFigures.Of(plan, library)[at.Week - 1];
        return
        [
            new Input("Sessions this week", $"{week.StimSessions}"),
            new Input("Contractions this week", $"{week.StimContractions}"),
            new Input("Stim time this week", week.StimMinutes is double minutes ? $"{Number.Text(minutes, 1)} min by the clock" : "not computed: the regimen leaves its timing open"),
        ];
    }

    private static Explanation OfCheck(PlanRevision plan, ClinicalLibrary library, (Lane Lane, int Week) at, ImmutableArray<Finding> findings)
    {
        WeekFigures week = PlanFigures.Of(plan, library)[Math.Clamp(at.Week, 1, plan.Weeks) - 1];
        (string reason, Limit limit, ImmutableArray<Input> inputs) = at.Lane.Id switch
        {
            Lanes.Pairing => ("Voluntary quadriceps contractions divided by stimulated ones.", library.Limit(LimitIds.PairingRatio), PairingInputs(week)),
            Lanes.Load => ("Quadriceps contraction time outside stim, a full week of it, against the week before.", library.Limit(LimitIds.LoadRise), LoadInputs(plan, library, week)),
            _ => ("Minutes on the longest day: stim sessions by the clock, exercises with holds and the rest between sets.", library.Limit(LimitIds.MinutesPerDay),
                [new Input("Longest day", $"{Number.Text(Math.Ceiling(week.MinutesOnLongestDay))} min"), new Input("Stim this week", week.StimMinutes is double minutes ? $"{Number.Text(minutes, 0)} min" : "timing open")]),
        };
        return new Explanation
        {
            Heading = $"{at.Lane.Title}, week {at.Week}: {CheckText.Of(at.Lane, week, library)}",
            Reasons = [reason],
            Inputs = inputs,
            Rule = at.Lane.Id switch { Lanes.Pairing => "PAIR-RATIO", Lanes.Load => "LOAD-RISE", _ => "TIME-DAY" },
            Limits = [limit],
            Source = Arithmetic,
            WouldChange = "The stim and exercise cells of the week.",
            Findings = findings,
        };
    }

    private static ImmutableArray<Input> PairingInputs(WeekFigures week) =>
        [new("Voluntary contractions", $"{week.Quads.Contractions}"), new("Stimulated contractions", $"{week.StimContractions}")];

    private static ImmutableArray<Input> LoadInputs(PlanRevision plan, ClinicalLibrary library, WeekFigures week)
    {
        WeekFigures? before = week.Week > 1 ? PlanFigures.Of(plan, library)[week.Week - 2] : null;
        return
        [
            new("This week", $"{Number.Text(week.QuadsAlone.Seconds / 60, 1)} min in seven days"),
            new("The week before", before is null || before.PlannedDays == 0 ? "not planned" : $"{Number.Text(before.QuadsAlone.Seconds / 60, 1)} min in seven days"),
            .. week.Work.Select(work => new Input($"All work of the {work.Key.ToString().ToLowerInvariant()}", WorkWords(work.Value))),
        ];
    }

    private static string WorkWords(MuscleWork work) =>
        $"{work.Contractions} contractions, {Number.Text(work.Seconds / 60, 1)} min under contraction"
        + (work.KilogramRepetitions > 0 ? $", {Number.Text(work.KilogramRepetitions, 0)} kg x repetitions" : "");
}
