using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Rules;

/// <summary>The rules of the stim ladder. Order is the order of reading; precedence is that of <see cref="LadderOutcome"/>.</summary>
public static class LadderRules
{
    private static readonly Source Expert = new(
        "Interval of review and falling volume at kept intensity after Spector 2016, J Bone Joint Surg Am 98:2017 (expert algorithm); the numbers are the library's", Standing.CommonPractice);

    private static readonly ImmutableArray<LadderCondition> AtOnce =
        [.. FlagIds.AtOnce.Select(id => (LadderCondition)(facts => FlagConditions.Open(facts, id))), FlagConditions.OpenOfClinic];

    /// <summary>A red flag: the clinic's protocol decides, not the ladder.</summary>
    public static LadderRule Refer { get; } = new()
    {
        Id = "LADDER-REFER",
        Title = "A red flag stops planning until a clinician has closed it",
        When = AtOnce,
        AnyIsEnough = true,
        On = [.. Enum.GetValues<Rung>()],
        Then = LadderOutcome.ReferAndLock,
        Advice = "Red flag: go through the checklist and follow the clinic's protocol; no step on the ladder until it is closed with a note.",
        Source = new("Sudden loss of active extension: Ng 2021, 10.1302/2058-5241.6.200119; clot and infection signs: usual practice; limits in the library", Standing.Derived),
        KnownLimits = "It asks and refers; it does not diagnose. Signs that nobody asked about are not seen.",
    };

    /// <summary>A stiff knee: the surgeon is told; it locks the ladder but does not bar stim.</summary>
    public static LadderRule ReferStiff { get; } = new()
    {
        Id = "LADDER-REFER-STIFF",
        Title = "A knee that does not bend or straighten by its week is shown to the surgeon",
        When = [facts => FlagConditions.Open(facts, FlagIds.Stiff)],
        On = [.. Enum.GetValues<Rung>()],
        Then = LadderOutcome.ReferAndLock,
        Advice = "The knee is stiff for its week: tell the surgeon now; follow the clinic's protocol; no step on the ladder until it is closed with a note.",
        Source = new("Stiffness defined as flexion under 90 deg at 6 to 12 weeks: Tibbo 2019, PMC6641113; the limit on extension is common practice", Standing.Seen),
        KnownLimits = "One reading; the error of a goniometer is about 4 deg, so a knee just over the floor may be under it.",
    };

    /// <summary>Lag closed and strong enough.</summary>
    public static LadderRule StopMet { get; } = new()
    {
        Id = "LADDER-STOP-MET",
        Title = "Stim stops when the lag is closed and the last strength gate is passed",
        When = [LagConditions.Closed, SafetyConditions.PassiveDeficit, StrengthConditions.StopGate, FlagConditions.NoneOpen],
        On = [Rung.HighVolume, Rung.Reduced, Rung.LowVolume],
        Then = LadderOutcome.Stop,
        Advice = "Stop stim; go on with strengthening, whose goal is an index of 80 %.",
        Source = Expert,
        KnownLimits = "A small lag between two stiff limits is not recovery, so the passive deficit is asked for too.",
    };

    /// <summary>Nothing moves any more.</summary>
    public static LadderRule StopPlateau { get; } = new()
    {
        Id = "LADDER-STOP-PLATEAU",
        Title = "Stim stops on a plateau, with the strength reached told as it is",
        When = [StrengthConditions.Plateau, SafetyConditions.NotUnresponsive],
        On = [Rung.HighVolume, Rung.Reduced, Rung.LowVolume],
        Then = LadderOutcome.Stop,
        Advice = "Plateau: stop stim, report the strength reached, go on with strengthening and look for what holds it back.",
        Source = new("Stopping on a plateau", Standing.CommonPractice),
        KnownLimits = "No detectable change is not no change: a slow gain inside the measurement error reads as a plateau.",
    };

    /// <summary>The knee goes back.</summary>
    public static LadderRule StepBack { get; } = new()
    {
        Id = "LADDER-BACK",
        Title = "Step back one rung when the lag grows or strength falls",
        When = [LagConditions.UpOnTwoReadings, LagConditions.UpDetectably, StrengthConditions.Worse],
        AnyIsEnough = true,
        On = [Rung.Reduced, Rung.LowVolume, Rung.Stopped],
        Then = LadderOutcome.StepBack,
        Advice = "Step back one rung; intensity stays as high as tolerated.",
        Source = new("Lag up by 5 deg on two readings, or by its detectable change once", Standing.CommonPractice),
        KnownLimits = "The best earlier reading is the yardstick; one lucky reading makes it strict.",
    };

    /// <summary>The same on the highest rung, where there is no way back: hold.</summary>
    public static LadderRule HoldWorse { get; } = StepBack with
    {
        Id = "LADDER-HOLD-WORSE",
        Title = "Hold on the highest rung when the lag grows or strength falls",
        On = [Rung.Familiarise, Rung.HighVolume],
        Then = LadderOutcome.Hold,
        Advice = "Already at the highest volume: hold, check pads, position and intensity, and reassess.",
    };

    /// <summary>A swollen or sore knee gets less, never more.</summary>
    public static LadderRule Irritation { get; } = new()
    {
        Id = "LADDER-IRRITATION",
        Title = "An irritated knee gets less volume for a week, never more",
        When =
        [
            IrritationConditions.Effusion, IrritationConditions.Girth, IrritationConditions.Pain, IrritationConditions.SeverePain,
            IrritationConditions.NotSettled, IrritationConditions.AfterSessions, IrritationConditions.MorningsAfter,
        ],
        AnyIsEnough = true,
        On = [.. Enum.GetValues<Rung>()],
        Then = LadderOutcome.Hold,
        Advice = "Irritated: lower stim and load volume for a week, keep intensity as tolerated, reassess; do not raise anything.",
        Source = new("Rise of effusion or girth, and pain that rises, is severe at rest or does not settle", Standing.CommonPractice),
        KnownLimits = "Rises are judged against the reading before, not against the time before the operation.",
    };

    /// <summary>Stim that does not work is mended before it is weaned.</summary>
    public static LadderRule Response { get; } = new()
    {
        Id = "LADDER-RESPONSE",
        Title = "No response after the first week: check pads, position and settings, no step",
        When = [SafetyConditions.NoResponse],
        On = [Rung.Familiarise, Rung.HighVolume],
        Then = LadderOutcome.Hold,
        Advice = "Check pads, position, waveform and settings; no step on the ladder.",
        Source = new("Responsiveness checked after one week: Spector 2016, J Bone Joint Surg Am 98:2017; wording of the criterion not seen", Standing.Derived),
        KnownLimits = "Needs the answer whether the whole muscle contracts, or evoked torque measured twice.",
    };

    /// <summary>Used to a strong contraction.</summary>
    public static LadderRule Familiarised { get; } = new()
    {
        Id = "LADDER-FAMILIARISED",
        Title = "Familiarising ends with a strong full contraction, or after some sessions with a note",
        When = [FamiliariseConditions.Strong, FamiliariseConditions.SessionsWithNote],
        AnyIsEnough = true,
        On = [Rung.Familiarise],
        Then = LadderOutcome.StepDown,
        Advice = "Go on to high volume.",
        Source = new("Familiarising for the first sessions", Standing.CommonPractice),
        KnownLimits = "Rests on the session log.",
    };

    /// <summary>All is well: one rung down.</summary>
    public static LadderRule StepDown { get; } = new()
    {
        Id = "LADDER-DOWN",
        Title = "Step down one rung when the lag is closed, the leg rises, extends and is strong enough",
        When =
        [
            LagConditions.Closed, SafetyConditions.StraightLegRaises, SafetyConditions.PassiveDeficit, StrengthConditions.Gate,
            StrengthConditions.NotWorse, FlagConditions.NoneOpen, SafetyConditions.LongEnough,
        ],
        On = [Rung.HighVolume, Rung.Reduced, Rung.LowVolume],
        Then = LadderOutcome.StepDown,
        Advice = "Step down one rung: fewer sessions, the same intensity.",
        Source = Expert,
        KnownLimits = "No trial that was seen weaned stim on the lag; the calendar of trials is the only anchor.",
    };

    /// <summary>Every rule, in the order of reading.</summary>
    public static ImmutableArray<LadderRule> All { get; } =
        [Refer, ReferStiff, StopMet, StopPlateau, StepBack, HoldWorse, Irritation, Response, Familiarised, StepDown];
}
