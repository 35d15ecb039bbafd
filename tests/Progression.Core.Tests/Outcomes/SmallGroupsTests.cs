using Progression.Core.Outcomes;
using Progression.Core.Statistics;

namespace Progression.Core.Tests.Outcomes;

/// <summary>Counted by hand. That one hidden group is told by the total less the others is arithmetic; that five is the limit is common practice.</summary>
public sealed class SmallGroupsTests
{
    [Theory]
    [InlineData("5 9 7", "+++")]
    [InlineData("4 9 7", "-+-")] // 4 alone would be the total less 16: the smallest other goes too.
    [InlineData("4 3 9", "--+")] // Together seven, in two groups.
    [InlineData("1 1 9 7", "--+-")] // Two together are still too few: who knows the one knows the other.
    [InlineData("4 9", "--")]
    [InlineData("4", "-")]
    [InlineData("0 9 7", "+++")] // Nobody is nobody's secret.
    [InlineData("0 4 9", "+--")]
    [InlineData("4 0 0", "-++")]
    [InlineData("", "")]
    public void A_small_group_takes_as_many_with_it_as_it_needs(string people, string told) =>
        Assert.Equal(told, string.Concat(SmallGroups.Told([.. people.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)], 5).Select(one => one ? '+' : '-')));

    [Fact] // Whatever the groups, what is hidden cannot be reckoned as the total less what is told, unless all is hidden.
    public void What_is_hidden_is_never_fewer_than_the_limit_nor_one_group_alone()
    {
        SeededNumbers chance = new(7);
        for (int round = 0; round < 2000; round++)
        {
            int[] people = [.. Enumerable.Range(0, 1 + (int)(chance.NextShare() * 7)).Select(_ => (int)(chance.NextShare() * 12))];
            int[] hidden = [.. people.Zip(SmallGroups.Told([.. people], 5)).Where(one => !one.Second).Select(one => one.First)];

            Assert.All(people.Zip(SmallGroups.Told([.. people], 5)), one => Assert.False(one.Second && one.First is > 0 and < 5));
            Assert.True(hidden.Length == 0 || (hidden.Length > 1 && hidden.Sum() >= 5) || hidden.Length == people.Count(count => count > 0), string.Join(' ', people));
        }
    }
}
