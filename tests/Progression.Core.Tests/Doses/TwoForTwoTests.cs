using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Doses;

public sealed class TwoForTwoTests
{
    private const int Goal = 10;

    // Worked example 37: goal 10; 12 and 12 at 20 kg raise to 20.5 to 22 kg (2.5 to 10 %); 12 and 11 hold (Baechle and Earle).
    [Theory]
    [InlineData(12, 12, "20.5 to 22 kg")]
    [InlineData(13, 30, "20.5 to 22 kg")]
    [InlineData(12, 11, "20 kg")]
    [InlineData(11, 12, "20 kg")]
    [InlineData(0, 0, "20 kg")]
    public void Raises_only_after_two_more_in_two_sessions_in_a_row(int before, int now, string next) =>
        Assert.Equal(next, $"{After(Set(4, before), Set(6, now)).Range}");

    [Fact]
    public void Looks_at_the_latest_two_sessions_only()
    {
        Assert.Equal("20 kg", $"{After(Set(2, 12), Set(4, 12), Set(6, 9)).Range}");
        Assert.Equal("20.5 to 22 kg", $"{After(Set(2, 9), Set(4, 12), Set(6, 12)).Range}");
    }

    [Fact]
    public void A_load_just_raised_has_to_be_earned_anew()
    {
        NextLoad next = After(Set(4, 12, 18), Set(6, 12, 20));

        Assert.Equal("20 kg", $"{next.Range}");
        Assert.Equal(
            "Not yet 12 repetitions in the last set, 2 sessions in a row with one load (2026-03-04: 12 at 18 kg, 2026-03-06: 12 at 20 kg): the load stays.", next.Why);
    }

    [Fact]
    public void Says_not_known_when_what_is_missing_could_change_the_answer()
    {
        Assert.Equal((null, "No session is logged."), Told(After()));
        Assert.Equal((null, "One session is logged (2026-03-06: 12 at 20 kg); the rule asks for 2."), Told(After(Set(6, 12))));
        Assert.Equal((null, "Repetitions or load are not recorded (2026-03-04: ? at 20 kg, 2026-03-06: 12 at 20 kg)."), Told(After(Set(4, null), Set(6, 12))));
        Assert.Equal((null, "Repetitions or load are not recorded (2026-03-04: 12 at ?, 2026-03-06: 12 at 20 kg)."), Told(After(Set(4, 12, null), Set(6, 12))));
        Assert.Equal((null, "The load of 2026-03-06 is not recorded."), Told(After(Set(4, 12), Set(6, 12, null))));
    }

    [Fact]
    public void Holds_when_what_is_missing_cannot_change_the_answer()
    {
        Assert.Equal("20 kg", $"{After(Set(6, 11)).Range}");
        Assert.Equal("20 kg", $"{After(Set(4, null), Set(6, 11)).Range}");
        Assert.Equal("20 kg", $"{After(Set(4, 11), Set(6, null)).Range}");
    }

    [Fact]
    public void Refuses_a_goal_of_none() => Assert.Throws<ArgumentOutOfRangeException>(() => TwoForTwo.After(0, []));

    private static (LoadRange?, string) Told(NextLoad next) => (next.Range, next.Why);

    private static NextLoad After(params ImmutableArray<LoggedSet> sets) => TwoForTwo.After(Goal, sets);

    private static LoggedSet Set(int day, int? repetitions, double? kilograms = 20) =>
        new(new DateOnly(2026, 3, day), repetitions, kilograms is double load ? Mass.FromKilograms(load) : null);
}
