using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>Conditions on quadriceps strength.</summary>
internal static class StrengthConditions
{
    /// <summary>The gate of the rung the person is on: one of two branches is enough.</summary>
    internal static Judged Gate(LadderFacts facts) => facts.Rung switch
    {
        Rung.HighVolume => Either(DetectableGain(facts), AgainstOtherLegOrMass(facts, LimitIds.HighToReducedIndex, LimitIds.HighToReducedPerMass)),
        Rung.Reduced => Either(PreOpAtLeast(facts, LimitIds.ReducedToLowPreOp), AgainstOtherLegOrMass(facts, LimitIds.ReducedToLowIndex, LimitIds.ReducedToLowPerMass)),
        _ => StopGate(facts),
    };

    /// <summary>The last gate: strength at which stim may stop.</summary>
    internal static Judged StopGate(LadderFacts facts) =>
        Either(PreOpAtLeast(facts, LimitIds.StopPreOp), AgainstOtherLegOrMass(facts, LimitIds.StopIndex, LimitIds.StopPerMass));

    /// <summary>Detectably under the best earlier post-op value.</summary>
    internal static Judged Worse(LadderFacts facts) => AgainstBest(facts, "quadriceps strength is detectably worse", ChangeClass.Worse);

    /// <summary>Not detectably under the best earlier post-op value.</summary>
    internal static Judged NotWorse(LadderFacts facts)
    {
        Judged worse = Worse(facts);
        return worse with { Words = "quadriceps strength is not detectably worse", Truth = (Truth)((int)Truth.Holds - (int)worse.Truth) };
    }

    /// <summary>No detectable change of strength nor of lag against an assessment the stated time ago, both since stim began.</summary>
    internal static Judged Plateau(LadderFacts facts)
    {
        Limit after = facts.Limit(LimitIds.PlateauAfter);
        string words = $"strength and lag show no detectable change over two assessments at least {after.Text} apart";
        DateOnly stimSince = facts.Sessions.Select(log => log.Date).DefaultIfEmpty(facts.RungSince).Min();
        KneeState? then = facts.Earlier.FirstOrDefault(state =>
            facts.Now.Date.DayNumber - state.Date.DayNumber >= after.Value && state.Date >= stimSince && state.Strength is not null && state.Lag is not null);
        bool known = facts.Now.Strength is not null && facts.Now.Lag is not null;
        if (then is null || !known)
        {
            return new Judged(words, known ? Truth.DoesNotHold : Truth.NotKnown, [facts.Input(MeasureIds.QuadricepsTorque, facts.Now), facts.Input(MeasureIds.Lag, facts.Now)])
            {
                Limits = [after],
                Margin = known ? "no assessment that long ago under stim" : null,
                Missing = known ? null : "measure strength, active and passive extension",
            };
        }

        ChangeClass? strength = Class(facts, MeasureIds.QuadricepsTorque, then);
        ChangeClass? lag = Class(facts, MeasureIds.Lag, then);
        bool? flat = strength is null || lag is null ? null : strength == ChangeClass.NoDetectableChange && lag == ChangeClass.NoDetectableChange;
        return new Judged(words, Truths.From(flat), [.. new[] { facts.Now, then }.SelectMany(state => new[] { facts.Input(MeasureIds.QuadricepsTorque, state), facts.Input(MeasureIds.Lag, state) })])
        {
            Limits = [after, facts.Limit(LimitIds.ChangeLevel)],
            Missing = flat is null ? "the measurement error of strength or lag is not known" : null,
        };
    }

    private static Judged DetectableGain(LadderFacts facts)
    {
        KneeState? first = facts.States.FirstOrDefault(state => state.Strength is not null);
        string words = "strength is detectably up since the first post-op test";
        bool known = facts.Now.Strength is not null;
        if (!known || first is null || first == facts.Now)
        {
            return new Judged(words, known ? Truth.DoesNotHold : Truth.NotKnown, [facts.Input(MeasureIds.QuadricepsTorque, facts.Now)])
            {
                Limits = [facts.Limit(LimitIds.ChangeLevel)],
                Margin = known ? "this is the first test" : null,
                Missing = known ? null : "measure quadriceps strength",
            };
        }

        ChangeClass? change = Class(facts, MeasureIds.QuadricepsTorque, first);
        return new Judged(words, Truths.From(change is null ? null : change == ChangeClass.Improved), [facts.Input(MeasureIds.QuadricepsTorque, facts.Now), facts.Input(MeasureIds.QuadricepsTorque, first)])
        {
            Limits = [facts.Limit(LimitIds.ChangeLevel)],
            Gaps = change is null ? [] : [GainGap(facts, first)],
            Missing = change is null ? "the measurement error of strength is not known" : null,
        };
    }

    /// <summary>What a detectable gain still asks for. Whether there is any gain at all is what may be wrong, so the error is set against no gain.</summary>
    private static Gap GainGap(LadderFacts facts, KneeState first)
    {
        Measure measure = facts.Library.Measures[MeasureIds.QuadricepsTorque];
        (double then, double now, double error) = (first.Strength!.NewtonMetres, facts.Now.Strength!.NewtonMetres, measure.StandardError!.Value);
        double detectable = MeasurementError.DetectableChange(error, facts.Limit(LimitIds.ChangeLevel).Value);
        bool ratio = measure.Scale == ErrorScale.Logarithmic;
        return new Gap("quadriceps strength", now, ratio ? then * Math.Exp(detectable) : then + detectable, measure.Unit, AtMost: false)
        {
            StandardErrors = (ratio ? Math.Log(now / then) : now - then) / (error * Math.Sqrt(2)),
        };
    }

    /// <summary>The margin of a ratio of torques in standard errors; each torque adds its own error, where that is a share of the value.</summary>
    private static Judged WithError(LadderFacts facts, Judged judged, int torques) =>
        facts.Library.Measures[MeasureIds.QuadricepsTorque] is { Scale: ErrorScale.Logarithmic, StandardError: double error }
            ? judged with { Gaps = [.. judged.Gaps.Select(gap => gap with { StandardErrors = gap.Value > 0 ? Math.Log(gap.Value / gap.Target) / (error * Math.Sqrt(torques)) : null })] }
            : judged;

    private static Judged PreOpAtLeast(LadderFacts facts, string limit) => WithError(
        facts, Compare.AtLeast("strength against its pre-op value", facts.Now.PreOpShare?.Percent, facts.Limit(limit), facts.Input(MeasureIds.PreOpShare, facts.Now)), torques: 2);

    /// <summary>The index where the other knee is sound; otherwise torque per body mass where the clinic has set a limit for it.</summary>
    private static Judged AgainstOtherLegOrMass(LadderFacts facts, string indexLimit, string perMassLimit)
    {
        if (facts.Case.OtherKnee is OtherKnee.Painful or OtherKnee.Operated && facts.Library.OptionalLimit(perMassLimit) is { } perMass)
        {
            double? torque = facts.Now.TorquePerMass;
            Input input = new($"Torque per body mass, {LadderFacts.Day(facts.Now.Date)}", torque is double value ? $"{Number.Text(value, 2)} Nm/kg" : "not known");
            return WithError(facts, Compare.AtLeast("torque per body mass", torque, perMass, input), torques: 1);
        }

        Judged index = WithError(facts, Compare.AtLeast("quadriceps index", facts.Now.Index?.Percent, facts.Limit(indexLimit), facts.Input(MeasureIds.Index, facts.Now)), torques: 2);
        return facts.Case.OtherKnee switch
        {
            OtherKnee.Sound => index,
            OtherKnee.NotKnown => index with { Missing = "say whether the other knee is sound; only then does the index count" },
            _ => index with { Truth = Truth.DoesNotHold, Missing = null, Margin = "not counted: the other knee is not sound" },
        };
    }

    private static Judged AgainstBest(LadderFacts facts, string words, ChangeClass wanted)
    {
        KneeState? best = facts.Earlier.Where(state => state.Strength is not null).MaxBy(state => state.Strength!.NewtonMetres);
        if (facts.Now.Strength is null)
        {
            return new Judged(words, Truth.NotKnown, [facts.Input(MeasureIds.QuadricepsTorque, facts.Now)]) { Missing = "measure quadriceps strength" };
        }

        if (best is null)
        {
            return new Judged(words, Truth.DoesNotHold, [facts.Input(MeasureIds.QuadricepsTorque, facts.Now)]) { Margin = "no earlier post-op value" };
        }

        ChangeClass? change = Class(facts, MeasureIds.QuadricepsTorque, best);
        return new Judged(words, Truths.From(change is null ? null : change == wanted), [facts.Input(MeasureIds.QuadricepsTorque, facts.Now), facts.Input(MeasureIds.QuadricepsTorque, best)])
        {
            Limits = [facts.Limit(LimitIds.ChangeLevel)],
            Missing = change is null ? "the measurement error of strength is not known" : null,
        };
    }

    private static ChangeClass? Class(LadderFacts facts, string measure, KneeState then) =>
        Changes.Between(then, facts.Now, measure, facts.Library)?.Class;

    private static Judged Either(Judged one, Judged other)
    {
        Truth truth = Truths.Any([one.Truth, other.Truth]);
        return new Judged($"{one.Words}, or {other.Words}", truth, [.. one.Inputs, .. other.Inputs])
        {
            Limits = [.. one.Limits, .. other.Limits],
            Gaps = [.. one.Gaps, .. other.Gaps],
            Margin = string.Join("; ", new[] { one.Margin, other.Margin }.OfType<string>()) is { Length: > 0 } margin ? margin : null,
            Missing = truth == Truth.NotKnown ? string.Join(", or ", new[] { one.Missing, other.Missing }.OfType<string>()) : null,
        };
    }
}
