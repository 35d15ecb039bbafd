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

    /// <summary>Passive extension deficit over the ceiling in or after the week of the flexion floor.</summary>
    internal static Judged ExtensionOverCeiling(LadderFacts facts) => FromWeek(facts, LimitIds.FlexionFloorWeek, Compare.Over(
        "passive extension deficit", facts.Now.PassiveExtension?.Degrees, facts.Limit(LimitIds.ExtensionCeiling), facts.Input(MeasureIds.ExtensionPassive, facts.Now)));

    /// <summary>Flexion on the floor or over it, but so near that by its error it may be under it. Does not hold where the error is not known.</summary>
    internal static Judged FlexionNearFloor(LadderFacts facts)
    {
        (Limit floor, Limit guard) = (facts.Limit(LimitIds.FlexionFloor), facts.Limit(LimitIds.FlexionGuardSems));
        double? edge = floor.Value + (guard.Value * facts.Library.Measures[MeasureIds.FlexionActive].StandardError);
        double? read = facts.Now.Flexion?.Degrees;
        string words = $"flexion is at least {floor.Text} but under {floor.Text} + {guard.Text} x SEM" + (edge is double to ? $" = {Quantities.Number.Text(to, 1)} deg" : "");
        return FromWeek(facts, LimitIds.FlexionFloorWeek, new Judged(words, Truths.From(read >= floor.Value && read < edge), [facts.Input(MeasureIds.FlexionActive, facts.Now)])
        {
            Limits = [guard, floor],
        });
    }

    /// <summary>Active flexion under its early limit one to two weeks after the operation; passive flexion is not taken for it.</summary>
    internal static Judged FlexionFirstWeeks(LadderFacts facts)
    {
        (Limit least, Limit from, Limit to) = (facts.Limit(LimitIds.FlexionFirst), facts.Limit(LimitIds.FlexionFirstFrom), facts.Limit(LimitIds.FlexionFirstTo));
        int day = PostOpWeek.DayOf(facts.Case.Operation.Date, facts.Now.Date);
        Judged under = Compare.Under("active flexion", facts.Now.Assessment.Value(MeasureIds.FlexionActive), least, facts.Input(MeasureIds.FlexionActive, facts.Now));
        return under with
        {
            Words = $"{under.Words} from day {Quantities.Number.Text(from.Value)} to {Quantities.Number.Text(to.Value)} after the operation",
            Truth = day >= from.Value && day <= to.Value ? under.Truth : Truth.DoesNotHold,
            Limits = [least, from, to],
        };
    }

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
            Gaps = count.Gaps,
            Margin = count.Margin,
            Missing = truth == Truth.NotKnown ? count.Missing ?? steady.Missing : null,
        };
    }

    /// <summary>Passive extension deficit small enough for the lag to mean something.</summary>
    internal static Judged PassiveDeficit(LadderFacts facts)
    {
        Judged deficit = Compare.AtMost(
            "passive extension deficit", facts.Now.PassiveExtension?.Degrees, facts.Limit(LimitIds.PassiveDeficit), facts.Input(MeasureIds.ExtensionPassive, facts.Now));
        double? error = facts.Library.Measures[MeasureIds.ExtensionPassive].StandardError;
        return deficit with { Gaps = [.. deficit.Gaps.Select(gap => gap with { StandardErrors = gap.Margin / error })] };
    }

    /// <summary>Long enough on the rung.</summary>
    internal static Judged LongEnough(LadderFacts facts) => Compare.AtLeast(
        "time on this rung", facts.DaysOnRung, facts.Limit(LimitIds.DaysOnRung), new Input("On the rung since", LadderFacts.Day(facts.RungSince)));

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

    private static Judged FlexionUnder(LadderFacts facts, string floorId, string weekId) =>
        FromWeek(facts, weekId, Compare.Under("flexion", facts.Now.Flexion?.Degrees, facts.Limit(floorId), facts.Input(MeasureIds.FlexionActive, facts.Now)));

    /// <summary>A condition that is only read from a post-op week on.</summary>
    private static Judged FromWeek(LadderFacts facts, string weekId, Judged judged)
    {
        Limit week = facts.Limit(weekId);
        bool due = facts.Now.Week >= week.Value;
        return judged with
        {
            Words = $"{judged.Words} in or after post-op week {Quantities.Number.Text(week.Value)}",
            Truth = due ? judged.Truth : Truth.DoesNotHold,
            Limits = [.. judged.Limits, week],
            Missing = due ? judged.Missing : null,
        };
    }

    private static bool? CanRaise(KneeState state) =>
        state.Assessment.Sign(Signs.StraightLegRaise) ?? (state.Value(MeasureIds.StraightLegRaises) is double count ? count >= 1 : null);
}
