using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>What holds for every verdict, tried on seeded cases, on every rung.</summary>
public sealed partial class StimLadderTests
{
    [Fact]
    public void The_verdicts_are_of_every_kind() =>
        Assert.Equal(Enum.GetValues<LadderOutcome>(), Verdicts().Select(verdict => verdict.Outcome).Distinct().Order());

    [Fact]
    public void A_condition_asks_for_something_exactly_when_it_is_not_known()
    {
        foreach (Judged condition in Verdicts().SelectMany(verdict => verdict.Results).SelectMany(result => result.Conditions))
        {
            Assert.True(condition.Truth == Truth.NotKnown == condition.Missing is not null, $"{condition}");
        }
    }

    [Fact]
    public void No_verdict_gives_an_irritated_knee_more_stim()
    {
        foreach (LadderVerdict verdict in Verdicts().Where(one => one.Results.Any(result => result.Rule.Id == "LADDER-IRRITATION" && result.Truth == Truth.Holds)))
        {
            Assert.True(verdict.To >= verdict.From, $"{verdict.From} to {verdict.To}");
        }
    }

    [Fact]
    public void A_step_down_or_a_stop_is_never_taken_with_an_open_or_an_unasked_red_flag()
    {
        foreach (LadderVerdict verdict in Verdicts().Where(one => one.DecidedBy.Id is "LADDER-DOWN" or "LADDER-STOP-MET" && one.To > one.From))
        {
            Assert.All(
                verdict.Results.Where(result => result.Rule.Id is "LADDER-REFER" or "LADDER-REFER-STIFF"),
                result => Assert.Equal(Truth.DoesNotHold, result.Truth));
        }
    }

    [Fact]
    public void Steps_are_one_rung_at_a_time_but_for_a_stop()
    {
        foreach (LadderVerdict verdict in Verdicts())
        {
            int steps = verdict.To - verdict.From;
            Assert.True(
                verdict.Outcome switch
                {
                    LadderOutcome.Stop => verdict.To == Rung.Stopped,
                    LadderOutcome.StepDown => steps == 1,
                    LadderOutcome.StepBack => steps == -1,
                    _ => steps == 0,
                },
                $"{verdict.Outcome}: {verdict.From} to {verdict.To}");
        }
    }

    private static IEnumerable<LadderVerdict> Verdicts() =>
        from knee in InventedKnees.Some(300)
        where !knee.Case.Assessments.IsEmpty
        let states = knee.Case.Assessments.Select(one => KneeState.At(one, knee.Case)).ToImmutableArray()
        from rung in Enum.GetValues<Rung>()
        select StimLadder.Judge(new LadderFacts(knee.Case, Knee.Library, states, rung, states[0].Date));
}
