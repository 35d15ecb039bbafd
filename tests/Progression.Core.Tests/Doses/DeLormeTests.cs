using Progression.Core.Doses;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Doses;

public sealed class DeLormeTests
{
    // Worked example 38: DeLorme, ten-repetition maximum 24 kg gives 12, 18, 24 kg.
    [Fact]
    public void Rises_to_the_ten_repetition_maximum_in_three_sets_of_ten() => Assert.Equal(
        [(10, 12d), (10, 18d), (10, 24d)],
        DeLorme.Sets(Mass.FromKilograms(24)).Select(set => (set.Repetitions!.Value, set.Load.Kilograms)));

    [Fact]
    public void The_maximum_is_the_heaviest_set_of_ten_of_the_latest_day_that_has_one()
    {
        NextLoad tested = DeLorme.Tested([Set(2, 10, 30), Set(4, 10, 12), Set(4, 10, 24), Set(4, 11, 18), Set(4, 9, 28), Set(6, 9, 26), Set(6, 10, null)]);

        Assert.Equal("24 kg", $"{tested.Range}");
        Assert.Equal("The heaviest set of 10 logged 2026-03-04 was at 24 kg: 10 repetitions each at 12, 18, 24 kg (50, 75 and 100 %).", tested.Why);
    }

    [Fact]
    public void Without_a_set_of_ten_and_its_load_nothing_is_tested()
    {
        Assert.Null(DeLorme.Tested([]).Range);
        Assert.Equal("No set of 10 with its load is logged.", DeLorme.Tested([Set(4, 9, 24), Set(4, null, 24), Set(4, 10, null)]).Why);
    }

    private static LoggedSet Set(int day, int? repetitions, double? kilograms) =>
        new(new DateOnly(2026, 3, day), repetitions, kilograms is double load ? Mass.FromKilograms(load) : null);

    [Fact]
    public void No_load_stays_no_load() => Assert.All(DeLorme.Sets(Mass.FromKilograms(0)), set => Assert.Equal(0, set.Load.Kilograms));
}
