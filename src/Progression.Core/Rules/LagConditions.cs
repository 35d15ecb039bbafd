using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>Conditions on the extension lag.</summary>
internal static class LagConditions
{
    /// <summary>Closed at two assessments far enough apart with none open between, or once by a guard band.</summary>
    internal static Judged Closed(LadderFacts facts)
    {
        (Limit closed, Limit after, Limit guard) =
            (facts.Limit(LimitIds.LagClosed), facts.Limit(LimitIds.LagConfirmedAfter), facts.Limit(LimitIds.LagGuardSems));
        double? error = MeasurementError.OfLag(facts.Library);
        double? guarded = error is null ? null : closed.Value - (guard.Value * error.Value);
        string words = $"extension lag is at most {closed.Text} at two assessments at least {after.Text} apart, or once at most {closed.Text} - {guard.Text} x SEM"
            + (guarded is null ? "" : $" = {Number.Text(guarded.Value, 1)} deg");
        List<Input> inputs = [facts.Input(MeasureIds.Lag, facts.Now)];
        Judged Result(Truth truth, string? missing) => new(words, truth, [.. inputs]) { Limits = [closed, after, guard], Missing = missing };
        ImmutableArray<Gap> Gaps(double read, double? of) => [new Gap("extension lag", read, closed.Value, closed.Unit, AtMost: true) { StandardErrors = (closed.Value - read) / of }];

        if (facts.Now.Lag is not { } lag)
        {
            return Result(Truth.NotKnown, "measure active and passive extension");
        }

        if (lag.Degrees > closed.Value)
        {
            return Result(Truth.DoesNotHold, null) with { Margin = $"{Number.Signed(lag.Degrees - closed.Value, 1)} deg over", Gaps = Gaps(lag.Degrees, error) };
        }

        // A lag under zero is an entry to be looked at: it closes nothing by itself.
        if (lag.Degrees >= 0 && lag.Degrees <= guarded)
        {
            return Result(Truth.Holds, null) with { Gaps = Gaps(lag.Degrees, error) };
        }

        foreach (KneeState state in facts.Earlier.Where(state => state.Lag is not null))
        {
            inputs.Add(facts.Input(MeasureIds.Lag, state));
            if (state.Lag!.Degrees > closed.Value)
            {
                break;
            }

            if (facts.Now.Date.DayNumber - state.Date.DayNumber >= after.Value)
            {
                // The mean of the two has the error of one reading over the root of 2.
                return Result(Truth.Holds, null) with { Gaps = Gaps((lag.Degrees + state.Lag.Degrees) / 2, error / Math.Sqrt(2)) };
            }
        }

        return Result(Truth.NotKnown, $"one closed reading is not enough: measure the lag again {after.Text} or more after the first closed one");
    }

    /// <summary>Up by the stated rise against the best earlier reading, on the last two readings.</summary>
    internal static Judged UpOnTwoReadings(LadderFacts facts)
    {
        Limit rise = facts.Limit(LimitIds.LagRise);
        List<KneeState> measured = [.. facts.States.Where(state => state.Lag is not null)];
        string words = $"extension lag is up by at least {rise.Text} on two readings in a row";
        if (facts.Now.Lag is null || measured.Count < 3)
        {
            return new Judged(words, facts.Now.Lag is null ? Truth.NotKnown : Truth.DoesNotHold, [facts.Input(MeasureIds.Lag, facts.Now)])
            {
                Limits = [rise],
                Missing = facts.Now.Lag is null ? "measure active and passive extension" : null,
            };
        }

        KneeState best = Best(measured[..^2]);
        double least = Math.Min(Rise(measured[^1], best), Rise(measured[^2], best));
        return new Judged(words, Truths.From(least >= rise.Value), [.. measured[^2..].Append(best).Select(state => facts.Input(MeasureIds.Lag, state))])
        {
            Limits = [rise],
            Margin = $"{Number.Signed(least, 1)} deg against the best earlier reading",
        };
    }

    /// <summary>Up by its own detectable change against the best earlier reading, once.</summary>
    internal static Judged UpDetectably(LadderFacts facts)
    {
        Limit level = facts.Limit(LimitIds.ChangeLevel);
        KneeState from = facts.Earlier.Where(state => state.Lag is not null) is var earlier && earlier.Any() ? Best(earlier) : facts.Now;
        double? detectable = Changes.Between(from, facts.Now, MeasureIds.Lag, facts.Library)?.Detectable
            ?? (MeasurementError.OfLag(facts.Library) is double error ? MeasurementError.DetectableChange(error, level.Value) : null);
        string words = detectable is null
            ? "extension lag is detectably up"
            : $"extension lag is up by its detectable change at {level.Text}, {Number.Text(detectable.Value, 1)} deg";
        return AgainstBest(facts, words, detectable, level);
    }

    /// <summary>Up by the red-flag rise against the best earlier reading while passive extension is full.</summary>
    internal static Judged RedFlagRise(LadderFacts facts)
    {
        (Limit rise, Limit full) = (facts.Limit(LimitIds.RedFlagLagRise), facts.Limit(LimitIds.RedFlagPassiveFull));
        Judged up = AgainstBest(facts, $"extension lag is up by at least {rise.Text}", rise.Value, rise);
        Judged passive = Compare.AtMost("passive extension deficit", facts.Now.PassiveExtension?.Degrees, full, facts.Input(MeasureIds.ExtensionPassive, facts.Now));
        Truth truth = Truths.All([up.Truth, passive.Truth]);
        return new Judged($"{up.Words} with full passive extension (deficit at most {full.Text})", truth, [.. up.Inputs, .. passive.Inputs])
        {
            Limits = [rise, full],
            Margin = up.Margin,
            Missing = truth == Truth.NotKnown ? up.Missing ?? passive.Missing : null,
        };
    }

    private static Judged AgainstBest(LadderFacts facts, string words, double? by, Limit limit)
    {
        List<KneeState> earlier = [.. facts.Earlier.Where(state => state.Lag is not null)];
        if (facts.Now.Lag is null || by is null)
        {
            return new Judged(words, Truth.NotKnown, [facts.Input(MeasureIds.Lag, facts.Now)]) { Limits = [limit], Missing = "measure active and passive extension" };
        }

        if (earlier.Count == 0)
        {
            return new Judged(words, Truth.DoesNotHold, [facts.Input(MeasureIds.Lag, facts.Now)]) { Limits = [limit], Margin = "no earlier reading" };
        }

        KneeState best = Best(earlier);
        double rise = Rise(facts.Now, best);
        return new Judged(words, Truths.From(rise >= by), [facts.Input(MeasureIds.Lag, facts.Now), facts.Input(MeasureIds.Lag, best)])
        {
            Limits = [limit],
            Margin = $"{Number.Signed(rise, 1)} deg against the best earlier reading",
        };
    }

    private static KneeState Best(IEnumerable<KneeState> states) => states.MinBy(state => state.Lag!.Degrees)!;

    private static double Rise(KneeState state, KneeState from) => state.Lag!.Degrees - from.Lag!.Degrees;
}
