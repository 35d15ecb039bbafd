using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>The strong three-valued logic of Kleene 1938 (truth tables from memory).</summary>
public sealed class TruthTests
{
    [Theory]
    [InlineData(Truth.Holds, Truth.Holds, Truth.Holds, Truth.Holds)]
    [InlineData(Truth.Holds, Truth.NotKnown, Truth.NotKnown, Truth.Holds)]
    [InlineData(Truth.Holds, Truth.DoesNotHold, Truth.DoesNotHold, Truth.Holds)]
    [InlineData(Truth.NotKnown, Truth.NotKnown, Truth.NotKnown, Truth.NotKnown)]
    [InlineData(Truth.NotKnown, Truth.DoesNotHold, Truth.DoesNotHold, Truth.NotKnown)]
    [InlineData(Truth.DoesNotHold, Truth.DoesNotHold, Truth.DoesNotHold, Truth.DoesNotHold)]
    public void Two_answers_join_both_ways_round(Truth one, Truth other, Truth all, Truth any)
    {
        Assert.Equal(all, Truths.All([one, other]));
        Assert.Equal(all, Truths.All([other, one]));
        Assert.Equal(any, Truths.Any([one, other]));
        Assert.Equal(any, Truths.Any([other, one]));
    }

    [Fact]
    public void All_of_nothing_holds_and_any_of_nothing_does_not()
    {
        Assert.Equal(Truth.Holds, Truths.All([]));
        Assert.Equal(Truth.DoesNotHold, Truths.Any([]));
    }

    [Theory]
    [InlineData(null, Truth.NotKnown)]
    [InlineData(true, Truth.Holds)]
    [InlineData(false, Truth.DoesNotHold)]
    public void No_answer_is_not_known(bool? answer, Truth expected) => Assert.Equal(expected, Truths.From(answer));
}
