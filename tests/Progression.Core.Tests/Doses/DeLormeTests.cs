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
    public void No_load_stays_no_load() => Assert.All(DeLorme.Sets(Mass.FromKilograms(0)), set => Assert.Equal(0, set.Load.Kilograms));
}
