using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Drafting;

/// <summary>What the parts of a draft look at, worked out once.</summary>
internal sealed record DraftFacts
{
    internal required Case Case { get; init; }

    internal required ClinicalLibrary Library { get; init; }

    internal required DateOnly From { get; init; }

    internal required int Weeks { get; init; }

    internal required Regimen Regimen { get; init; }

    internal required StimGate Gate { get; init; }

    internal required LadderCourse Course { get; init; }

    internal required ExpectedCourse Expected { get; init; }

    /// <summary>The plan that is drafted over; null for a first plan.</summary>
    internal PlanRevision? Standing { get; init; }

    internal int FirstWeek => PostOpWeek.Of(Case.Operation.Date, From);

    internal IEnumerable<int> PlannedWeeks => Enumerable.Range(FirstWeek, Weeks - FirstWeek + 1);

    /// <summary>Whether the knee was irritated at the latest assessment: then the first planned week gets less.</summary>
    internal bool Irritated => Course.Latest?.DecidedBy == LadderRules.Irritation;

    /// <summary>Whether a red flag is open: then nothing is advanced, neither stim nor exercises nor loads.</summary>
    internal required bool Locked { get; init; }

    /// <summary>The days of a week, moved to the days that are left where the week is partly over and none of them is.</summary>
    internal DaysOfWeek Within(int week, DaysOfWeek days)
    {
        DateOnly start = PostOpWeek.Start(Case.Operation.Date, week);
        ImmutableArray<DayOfWeek> left = [.. Enumerable.Range(0, 7).Select(start.AddDays).Where(date => date >= From).Select(date => date.DayOfWeek)];
        return left.Any(days.Contains) ? days : DaysOfWeek.Of([.. left.Take(days.Count)]);
    }

    internal static KeyValuePair<CellAddress, PlanCell> Cell(string lane, int week, CellContent? content, Basis basis) =>
        KeyValuePair.Create(new CellAddress(lane, week), new PlanCell(content, basis, null));

    internal static Basis Because(string rule, string reason, Source source, string wouldChange, params ImmutableArray<Input> inputs) =>
        new(rule, reason, inputs, [], source, wouldChange);
}
