using System.Collections.Immutable;
using Progression.App.Grid;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

/// <summary>An invented case in its third week with a plan of six, one safety rule and one that warns.</summary>
internal static class Sample
{
    public static readonly DateOnly Operated = new(2026, 11, 2);
    public static readonly DateOnly Today = new(2026, 11, 18);
    private static readonly Source Practice = new("Invented for the tests", Standing.CommonPractice);
    private static readonly Basis Drafted = new(
        "DRAFT-07", "The lag is not closed, so volume stays high.", [new Input("Extension lag, 16 Nov", "8 deg")],
        [new Limit(LimitIds.LagClosed, "Lag that counts as closed", 5, "deg", Practice)], Practice, "A lag of at most 5 deg at two assessments.");

    public static GridState State => GridState.Open(Desk, Plan());

    public static PlanDesk Desk { get; } = new()
    {
        Case = Patient(),
        Library = SampleLibrary.Library,
        Today = Today,
        Check = Check,
        Explain = Explain,
    };

    public static PlanRevision Plan(int weeks = 6)
    {
        ImmutableDictionary<CellAddress, PlanCell>.Builder cells = ImmutableDictionary.CreateBuilder<CellAddress, PlanCell>();
        for (int week = 2; week <= weeks; week++)
        {
            Put(cells, "flexion", week, $"{60 + (10 * week)} deg");
            Put(cells, "extension", week, $"{Math.Max(0, 12 - (2 * week))} deg");
            Put(cells, "strength", week, $"{20 + (5 * week)} %");
            Put(cells, Lanes.Stim, week, week < 4 ? "high 15x2 daily" : week < 6 ? "reduced 15x1 5d" : "stopped");
            Put(cells, "quads-strength", week, week < 4 ? "quad-set 3x10 hold 5 s 2/day" : "leg-raise 3x10 hold 5 s daily");
            Put(cells, "bend", week, $"heel-slide 3x{8 + week} 2/day");
            Put(cells, "walking", week, $"walk {5 * week} min 2/day");
        }
        Put(cells, Lanes.Seen, 3, "climbs stairs one at a time");
        return new()
        {
            Code = CaseCode.Parse("K-014")!,
            Operation = Operated,
            Weeks = weeks,
            From = new DateOnly(2026, 11, 10),
            Regimen = "sample-course",
            LibraryVersion = "sample-1",
            Lanes = Lanes.For(withStim: true),
            Cells = cells.ToImmutable(),
        };
    }

    public static GridState At(GridState state, string lane, int week) => GridMoves.To(state, new CellAddress(lane, week));

    public static GridState Press(GridState state, params string[] keys) =>
        keys.Aggregate(state, (now, key) => GridScreen.Definition.Press(now, key, key.Length == 1 ? key : key == "Space" ? " " : null).State);

    public static GridState Type(GridState state, string text) => GridScreen.Definition.Paste(Press(state, "Ctrl+U"), text);

    private static void Put(ImmutableDictionary<CellAddress, PlanCell>.Builder cells, string lane, int week, string text)
    {
        Lane found = Lanes.For(withStim: true).First(one => one.Id == lane);
        CellEdit edit = CellNotation.Read(found, text, SampleLibrary.Library).Value ?? throw new ArgumentException(text);
        cells[new(lane, week)] = new PlanCell(edit.Content, Drafted, null);
    }

    private static Case Patient() => new()
    {
        Code = CaseCode.Parse("K-014")!,
        Operation = new(Operated, Side.Right, "total knee replacement"),
        Assessments = [Visit(new(2026, 11, 9), 62, 18, 6), Visit(new(2026, 11, 16), 78, 14, 6)],
    };

    private static Assessment Visit(DateOnly date, double flexion, double active, double passive) => new(
        date,
        new[]
        {
            new Reading(MeasureIds.FlexionActive, flexion), new Reading(MeasureIds.ExtensionActive, active), new Reading(MeasureIds.ExtensionPassive, passive),
        }.ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal),
        ImmutableSortedDictionary<string, Answer>.Empty);

    private static ImmutableArray<Finding> Check(PlanRevision plan) =>
    [
        .. Enumerable.Range(1, plan.Weeks).Where(week => plan.ContentAt("walking", week) is ActiveCell { Dose.Bout.Seconds: > 1200 }).Select(LongWalk),
        .. Enumerable.Range(1, plan.Weeks)
            .Where(week => plan.ContentAt(Lanes.Stim, week) is StimCell { Rung: not Rung.Stopped } && plan.ContentAt("quads-strength", week) is null)
            .Select(Lonely),
    ];

    private static Finding LongWalk(int week) => new()
    {
        Rule = "LOAD-02",
        Severity = Severity.Warning,
        Text = $"Week {week} asks for long walks.",
        Source = Practice,
        Cells = [new("walking", week)],
        Cure = new("Shorten the walk with the patient.", []),
    };

    private static Finding Lonely(int week) => new()
    {
        Rule = "PAIR-01",
        Severity = Severity.Severe,
        Text = $"Week {week} has stim and no voluntary quadriceps work.",
        Inputs = [new("Voluntary contractions", "0")],
        Source = Practice,
        Cells = [new("quads-strength", week), new(Lanes.Stim, week)],
        Cure = new($"Put quad sets into week {week}.",
            [new(new("quads-strength", week), new ActiveCell("quad-set", ExerciseDose.InRepetitions(3, 10)))]),
    };

    private static Explanation Explain(PlanRevision plan, ImmutableArray<Finding> findings, CellAddress address)
    {
        Basis basis = plan.At(address)?.Basis ?? Drafted;
        return new()
        {
            Heading = $"{plan.LaneOf(address.Lane)!.Title}, week {address.Week}: {CellNotation.Text(plan.LaneOf(address.Lane)!, plan.At(address)?.Content, SampleLibrary.Library)}",
            Reasons = [basis.Reason],
            Inputs = basis.Inputs,
            Rule = basis.Rule,
            Limits = basis.Limits,
            Source = basis.Source,
            WouldChange = basis.WouldChange,
            Findings = [.. findings.Where(finding => finding.Cells.Contains(address))],
        };
    }
}
