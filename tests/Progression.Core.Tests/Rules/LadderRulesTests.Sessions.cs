using Progression.Core.Library;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>Irritation from the session log.</summary>
public sealed partial class LadderRulesTests
{
    [Theory] // Worse from +29.1 mm of 100 on: Danoff 2018. Not settled by next morning: common practice.
    [InlineData(2, 4, 2, Truth.DoesNotHold)]
    [InlineData(2, 5, 2, Truth.Holds)]
    [InlineData(2, 2, 3, Truth.Holds)]
    [InlineData(2, null, 2, Truth.NotKnown)]
    [InlineData(2, 3, null, Truth.NotKnown)]
    [InlineData(null, 3, 2, Truth.NotKnown)]
    [InlineData(2, 6, null, Truth.Holds)]
    public void A_session_irritates_when_pain_rises_or_stays(int? before, int? after, int? morning, Truth expected) =>
        Assert.Equal(expected, Irritation(Ready(Look.Well).Logged(24, before, after, morning)));

    [Theory] // Visits on days 21 and 28.
    [InlineData(21, Truth.DoesNotHold)]
    [InlineData(22, Truth.Holds)]
    [InlineData(28, Truth.Holds)]
    [InlineData(29, Truth.DoesNotHold)]
    public void Sessions_since_the_last_assessment_are_read(int day, Truth expected) =>
        Assert.Equal(expected, Irritation(Ready(Look.Well).Logged(day, 2, 7, 2)));

    [Fact]
    public void One_sore_session_among_others_is_enough() =>
        Assert.Equal(Truth.Holds, Irritation(Ready(Look.Well).Logged(23, 2, 3, 2).Logged(24, 2, 5, 2).Logged(25)));

    [Fact]
    public void Sessions_whose_pain_was_not_logged_are_asked_for_and_hold_up_nothing()
    {
        LadderVerdict verdict = Ready(Look.Well).Logged(24).Judge(Rung.Reduced, 14);

        Assert.Equal(LadderOutcome.StepDown, verdict.Outcome);
        Assert.Contains("log pain before and after the sessions", verdict.ToMeasure);
    }

    [Fact]
    public void A_sore_session_holds_the_step() =>
        Assert.Equal("LADDER-IRRITATION", Ready(Look.Well).Logged(24, 2, 5, 2).Judge(Rung.Reduced, 14).DecidedBy.Id);
}
