using Progression.Core.Statistics;

namespace Progression.Core.Tests.Statistics;

public sealed class QuartilesTests
{
    [Fact] // R 4.2.2: quantile(c(3,1,4,1,5,9,2,6), c(.25,.5,.75)) and quantile(c(2,7,1,8,2), ...)
    public void They_are_those_of_the_other_program()
    {
        Assert.Equal(new Quartiles(1.75, 3.5, 5.25), Quartiles.Of([3, 1, 4, 1, 5, 9, 2, 6]));
        Assert.Equal(new Quartiles(2, 2, 7), Quartiles.Of([2, 7, 1, 8, 2]));
    }

    [Fact]
    public void One_value_is_all_three_and_none_has_none()
    {
        Assert.Equal(new Quartiles(4, 4, 4), Quartiles.Of([4]));
        Assert.Null(Quartiles.Of([]));
    }
}
