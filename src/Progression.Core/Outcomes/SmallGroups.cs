using System.Collections.Immutable;

namespace Progression.Core.Outcomes;

/// <summary>
/// Which groups of people may be told of. A group of too few is kept back; and because what is told of all, less what is told of the others, would tell it after
/// all, as many more are kept back, the smallest first, as it takes until at least two groups with enough people together are hidden.
/// </summary>
public static class SmallGroups
{
    /// <summary>For each group whether it may be told of; one of nobody may be, and hides nobody.</summary>
    /// <param name="people">How many people are in each.</param>
    /// <param name="least">How many a group needs.</param>
    public static ImmutableArray<bool> Told(ImmutableArray<int> people, int least)
    {
        bool[] told = [.. people.Select(count => count == 0 || count >= least)];
        int hidden = people.Where((_, group) => !told[group]).Sum();
        int groups = told.Count(one => !one);
        foreach (int group in Enumerable.Range(0, people.Length).Where(group => told[group] && people[group] > 0).OrderBy(group => people[group]).ToList())
        {
            if (groups == 0 || (groups > 1 && hidden >= least))
            {
                break;
            }

            told[group] = false;
            (hidden, groups) = (hidden + people[group], groups + 1);
        }

        return [.. told];
    }
}
