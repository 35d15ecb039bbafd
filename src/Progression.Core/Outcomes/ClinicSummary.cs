using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Outcomes;

/// <summary>The figures of a clinic over all its cases, or over groups of them. What rests on too few people is not in it.</summary>
public sealed record ClinicSummary
{
    /// <summary>The day it was made.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>How many people a figure needs; from the library.</summary>
    public required Limit Least { get; init; }

    /// <summary>All cases first; then each group, by name.</summary>
    public required ImmutableArray<OutcomeGroup> Groups { get; init; }

    /// <summary>What was waited for.</summary>
    public required ImmutableArray<OutcomeGoal> Goals { get; init; }

    /// <summary>The summary.</summary>
    /// <param name="cases">What each case adds.</param>
    /// <param name="by">What they were judged by.</param>
    /// <param name="groupOf">Names the group of a case; null for no groups.</param>
    public static ClinicSummary Of(IReadOnlyCollection<CaseOutcome> cases, OutcomeYardstick by, Func<CaseOutcome, string>? groupOf)
    {
        ArgumentNullException.ThrowIfNull(cases);
        ArgumentNullException.ThrowIfNull(by);
        ImmutableArray<(string Name, ImmutableArray<CaseOutcome> Cases)> groups = groupOf is null ? []
            : [.. cases.GroupBy(groupOf).OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => (group.Key, group.ToImmutableArray()))];
        ImmutableArray<ImmutableArray<bool>> told = [.. OutcomeGroup.Counts(by.Goals).Select(count => SmallGroups.Told([.. groups.Select(group => count(group.Cases))], by.LeastPeople))];
        ImmutableArray<CaseOutcome> all = [.. cases];
        return new ClinicSummary
        {
            Today = by.Today,
            Least = by.Library.Limit(LimitIds.SummaryLeast),
            Goals = by.Goals,
            Groups =
            [
                OutcomeGroup.Of("all", all, by, [.. OutcomeGroup.Counts(by.Goals).Select(count => count(all) >= by.LeastPeople)]),
                .. groups.Select((group, index) => OutcomeGroup.Of(group.Name, group.Cases, by, [.. told.Select(row => row[index])])),
            ],
        };
    }
}
