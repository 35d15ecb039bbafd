using System.Collections.Immutable;
using Progression.App.Propose;
using Progression.App.Tests.Chart;
using Progression.App.Tests.Grid;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Core.Rules;

namespace Progression.App.Tests.Propose;

/// <summary>An invented proposal: stim goes down together with its own exercise, a walk grows, and one change meets a pinned cell.</summary>
internal static class SampleProposal
{
    private static readonly Source Practice = new("Invented for the tests", Standing.CommonPractice);
    private static readonly Limit LagClosed = new(LimitIds.LagClosed, "Lag that counts as closed", 5, "deg", Practice);

    public static CellAddress Stim { get; } = new(Lanes.Stim, 4);

    public static CellAddress Along { get; } = new(Lanes.WithStim, 4);

    public static CellAddress Walk { get; } = new("walking", 4);

    public static CellAddress Pinned { get; } = new("bend", 5);

    public static ProposeState State => ProposeState.Open(Desk);

    public static ProposeState None => ProposeState.Open(Desk with { Changes = [] });

    public static ProposeState Impossible => ProposeState.Open(Desk with
    {
        Assessment = null,
        Changes = [],
        Problems = [new Problem("weeks", "The assessment lies in week 6, and the plan has no week after it.", "7 to 26 weeks", "6")],
    });

    public static ProposeDesk Desk { get; } = new()
    {
        Code = Progression.Core.People.CaseCode.Parse("K-014")!,
        Title = "K-014  right knee, operated 2 Nov 2026",
        Assessment = new DateOnly(2026, 11, 23),
        Changes =
        [
            Change(Stim, "high 15x2 daily", "reduced 15x1 5d"),
            Change(Along, "set-with-stim 3x10 daily", "set-with-stim 3x10 5d") with { With = Stim },
            Change(Walk, "walk 15 min 2/day", "walk 20 min 2/day"),
            Change(Pinned, "heel-slide 3x10 2/day", "heel-slide 3x13 2/day") with { IsPinned = true },
        ],
        Lanes = Lanes.For(withStim: true),
        Verdict = Verdict,
        Flags = [],
        Forecasts = new Dictionary<string, ForecastAnswer>
        {
            [MeasureIds.FlexionActive] = new(SampleChart.Flexion.Forecast, null),
            [MeasureIds.Lag] = new(null, "Both extensions have to be measured at two visits first."),
        }.ToImmutableSortedDictionary(StringComparer.Ordinal),
        Library = SampleLibrary.Library,
    };

    public static RedFlag CalfSigns { get; } = new()
    {
        Id = "calf-signs",
        Title = "Signs of a clot in the calf",
        Questions = [],
        Checklist = ["Calf tender, swollen or warm on one side?", "Follow the clinic's protocol."],
        Source = Practice,
    };

    /// <summary>The same visit with too little strength to go down.</summary>
    public static LadderVerdict Held => Verdict with
    {
        To = Rung.HighVolume,
        Outcome = LadderOutcome.Hold,
        DecidedBy = Recheck,
        Results = [new(StepDown, Truth.DoesNotHold, [Lag, new("index at least 40 %", Truth.DoesNotHold, []) { Margin = "4 % under the limit" }]), .. Verdict.Results.Skip(2)],
    };

    private static LadderVerdict Verdict => new()
    {
        Date = new DateOnly(2026, 11, 23),
        From = Rung.HighVolume,
        To = Rung.Reduced,
        Outcome = LadderOutcome.StepDown,
        DecidedBy = StepDown,
        Results =
        [
            new(Stop, Truth.DoesNotHold, [Lag, new("strength at least 55 % of the pre-op value", Truth.DoesNotHold, [new("Share of pre-op", "46 %")]) { Margin = "9 % under the limit" }]),
            new(StepDown, Truth.Holds, [Lag]),
            new(Recheck, Truth.NotKnown, [new("evoked torque rises", Truth.NotKnown, [new("Evoked torque", "not measured")]) { Missing = "measure the evoked torque" }]),
        ],
    };

    private static Judged Lag => new("extension lag at most 5 deg at two assessments", Truth.Holds, [new("Extension lag, 23 Nov", "3 deg")])
    {
        Limits = [LagClosed],
        Margin = "2 deg to spare",
        Gaps = [new("extension lag", 3, 5, "deg", AtMost: true) { StandardErrors = 0.5 }],
    };

    private static LadderRule StepDown => Rule("STIM-LADDER-04", "Step down one rung when the lag is closed.", LadderOutcome.StepDown);

    private static LadderRule Stop => Rule("STIM-LADDER-02", "Stop stim when the lag is closed and strength has come back.", LadderOutcome.Stop);

    private static LadderRule Recheck => Rule("STIM-LADDER-06", "Check pads and settings when the muscle does not answer.", LadderOutcome.Hold);

    private static LadderRule Rule(string id, string title, LadderOutcome then) => new()
    {
        Id = id,
        Title = title,
        When = [],
        Then = then,
        Advice = "Fewer contractions at the same intensity; active work goes on.",
        Source = Practice,
        KnownLimits = "none",
    };

    private static ProposedChange Change(CellAddress address, string old, string now) => new()
    {
        Address = address,
        Old = Content(address, old),
        New = Content(address, now),
        Basis = new Basis("DRAFT-07", "The lag is closed, so volume goes down.", [new Input("Extension lag, 23 Nov", "3 deg")], [LagClosed], Practice, "A lag over 5 deg."),
        Reason = "The assessment of 23 Nov 2026 shows a lag of 3 deg, for the second time at most 5 deg.",
        Confidence = "about 8 in 10 that the criterion is truly met (lag, the weakest)",
        IsPinned = false,
    };

    private static CellContent? Content(CellAddress address, string text) =>
        CellNotation.Read(Lanes.For(withStim: true).First(lane => lane.Id == address.Lane), text, SampleLibrary.Library).Value?.Content ?? throw new ArgumentException(text);
}
