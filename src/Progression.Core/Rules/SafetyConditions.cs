using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Rules;

/// <summary>Conditions that refer, and those of time and function.</summary>
internal static class SafetyConditions
{
    /// <summary>The straight leg could be raised at an earlier assessment and cannot now; a raise found lost stays so until it is seen again.</summary>
    internal static Judged LostStraightLegRaise(LadderFacts facts)
    {
        bool? last = facts.States.Select(CanRaise).LastOrDefault(answer => answer is not null);
        bool? now = CanRaise(facts.Now) ?? (last == false ? false : null);
        KneeState? able = facts.Earlier.FirstOrDefault(state => CanRaise(state) == true);
        List<Input> inputs = [LadderFacts.SignInput(Signs.StraightLegRaise, facts.Now), facts.Input(MeasureIds.StraightLegRaises, facts.Now)];
        if (able is not null)
        {
            inputs.Add(LadderFacts.SignInput(Signs.StraightLegRaise, able));
        }

        Truth truth = able is null ? Truth.DoesNotHold : Truths.From(now is null ? null : !now);
        return new Judged("the straight-leg raise is lost", truth, [.. inputs])
        {
            Missing = truth == Truth.NotKnown ? $"ask: {Signs.Questions[Signs.StraightLegRaise]}" : null,
        };
    }

    /// <summary>Flexion under the floor in or after its week.</summary>
    internal static Judged FlexionUnderFloor(LadderFacts facts) => FlexionUnder(facts, LimitIds.FlexionFloor, LimitIds.FlexionFloorWeek);

    /// <summary>Flexion under the early-warning limit in or after its week.</summary>
    internal static Judged FlexionEarlyWarning(LadderFacts facts) => FlexionUnder(facts, LimitIds.FlexionEarly, LimitIds.FlexionEarlyWeek);

    /// <summary>Repetitions of the straight-leg raise without the lag growing.</summary>
    internal static Judged StraightLegRaises(LadderFacts facts)
    {
        Limit wanted = facts.Limit(LimitIds.StraightLegRaises);
        Judged count = Compare.AtLeast("straight-leg raises in a row", facts.Now.Value(MeasureIds.StraightLegRaises), wanted, facts.Input(MeasureIds.StraightLegRaises, facts.Now));
        Judged steady = Compare.Sign(facts, Signs.LagGrows, false, "the lag does not grow over them");
        Truth truth = Truths.All([count.Truth, steady.Truth]);
        return new Judged($"{count.Words} and {steady.Words}", truth, [.. count.Inputs, .. steady.Inputs])
        {
            Limits = [wanted],
            Margin = count.Margin,
            Missing = truth == Truth.NotKnown ? count.Missing ?? steady.Missing : null,
        };
    }

    /// <summary>Passive extension deficit small enough for the lag to mean something.</summary>
    internal static Judged PassiveDeficit(LadderFacts facts) => Compare.AtMost(
        "passive extension deficit", facts.Now.PassiveExtension?.Degrees, facts.Limit(LimitIds.PassiveDeficit), facts.Input(MeasureIds.ExtensionPassive, facts.Now));

    /// <summary>Long enough on the rung.</summary>
    internal static Judged LongEnough(LadderFacts facts) => Compare.AtLeast(
        "time on this rung", facts.DaysOnRung, facts.Limit(LimitIds.DaysOnRung), new Input("On the rung since", LadderFacts.Day(facts.RungSince)));

    /// <summary>No red flag holds and each was asked.</summary>
    internal static Judged NoRedFlag(LadderFacts facts)
    {
        List<Judged> flags = [.. LadderRules.RedFlags.Add(FlexionUnderFloor).Select(flag => flag(facts))];
        Truth any = Truths.Any(flags.Select(flag => flag.Truth));
        return new Judged("no red flag is open", (Truth)((int)Truth.Holds - (int)any), [.. flags.SelectMany(flag => flag.Inputs).Distinct()])
        {
            Missing = any == Truth.NotKnown ? "answer what the red flags ask" : null,
        };
    }

    /// <summary>Stim does not bring a full contraction, and evoked torque does not rise, after the first week.</summary>
    internal static Judged NoResponse(LadderFacts facts)
    {
        Limit day = facts.Limit(LimitIds.ResponseDay);
        List<SessionLog> logs = [.. facts.Sessions];
        List<SessionLog> evoked = [.. logs.Where(log => log.Evoked is not null)];
        bool? rising = evoked.Count < 2 ? null : evoked[^1].Evoked! > evoked[0].Evoked!;
        bool? contracts = facts.Now.Assessment.Sign(Signs.StimContraction);
        bool early = logs.Count == 0 || facts.Now.Date.DayNumber - logs[0].Date.DayNumber < day.Value;
        // Evoked torque is seldom measured; the answer on the contraction decides where it does not rise.
        Truth responds = Truths.From(rising == true ? true : contracts);
        return new Judged($"{day.Text} or more after the first session, stim brings no visible full contraction and evoked torque does not rise",
            early ? Truth.DoesNotHold : (Truth)((int)Truth.Holds - (int)responds),
            [LadderFacts.SignInput(Signs.StimContraction, facts.Now), new Input("Evoked torque, first and last", evoked.Count < 2 ? "not measured twice" : $"{evoked[0].Evoked}, {evoked[^1].Evoked}")])
        {
            Limits = [day],
            Margin = early ? "too early to judge" : null,
            Missing = !early && responds == Truth.NotKnown ? $"ask: {Signs.Questions[Signs.StimContraction]}" : null,
        };
    }

    /// <summary>Stim is not known to fail: a knee that does not move because stim does nothing has not reached a plateau.</summary>
    internal static Judged NotUnresponsive(LadderFacts facts)
    {
        Judged none = NoResponse(facts);
        return none with
        {
            Words = "stim is not known to bring no contraction",
            Truth = none.Truth == Truth.Holds ? Truth.DoesNotHold : Truth.Holds,
            Missing = null,
        };
    }

    private static Judged FlexionUnder(LadderFacts facts, string floorId, string weekId)
    {
        (Limit floor, Limit week) = (facts.Limit(floorId), facts.Limit(weekId));
        Judged under = Compare.Under("flexion", facts.Now.Flexion?.Degrees, floor, facts.Input(MeasureIds.FlexionActive, facts.Now));
        bool due = facts.Now.Week >= week.Value;
        return under with
        {
            Words = $"{under.Words} in or after post-op week {Quantities.Number.Text(week.Value)}",
            Truth = due ? under.Truth : Truth.DoesNotHold,
            Limits = [floor, week],
            Missing = due ? under.Missing : null,
        };
    }

    private static bool? CanRaise(KneeState state) =>
        state.Assessment.Sign(Signs.StraightLegRaise) ?? (state.Value(MeasureIds.StraightLegRaises) is double count ? count >= 1 : null);
}
