using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>A published score in two levels as arithmetic of what was answered, shown beside a flag that is raised. It never closes one.</summary>
/// <param name="Points">Points of the items answered yes, and of those that the operation itself makes true.</param>
/// <param name="Likely">Whether it says "likely" whatever the open items are.</param>
/// <param name="Words">The score in words.</param>
public sealed record ClotScore(double Points, bool Likely, string Words)
{
    private const string NoComfort = "After a knee replacement \"unlikely\" does not reassure: suspicion alone is enough to refer.";

    /// <summary>Fewest points, if every open item turned out against the score.</summary>
    public required double Least { get; init; }

    /// <summary>Most points, if every open item turned out for it.</summary>
    public required double Most { get; init; }

    /// <summary>The score at the visit judged; null where the flag has none or no item was answered. Background items count from any visit up to then, signs from this one only.</summary>
    internal static ClotScore? Of(RedFlag flag, LadderFacts facts)
    {
        if (flag.Score is not { } score)
        {
            return null;
        }

        int day = PostOpWeek.DayOf(facts.Case.Operation.Date, facts.Now.Date);
        ImmutableArray<(double Points, bool? Answer)> items = [.. flag.Questions.Where(one => one.Points is not null).Select(one => (one.Points!.Value, Answer(one, day, facts)))];
        if (flag.Questions.All(one => one.Points is null || day <= one.TrueUntilDay || Answer(one, day, facts) is null))
        {
            return null;
        }

        double points = items.Where(item => item.Answer == true).Sum(item => item.Points);
        ImmutableArray<double> open = [.. items.Where(item => item.Answer is null).Select(item => item.Points)];
        (double least, double most) = (points + open.Where(one => one < 0).Sum(), points + open.Where(one => one > 0).Sum());
        string level = least >= score.LikelyFrom ? "likely" : most < score.LikelyFrom ? "unlikely" : "not settled";
        string amount = open.IsEmpty ? Number.Text(points) : $"{Number.Text(least)} to {Number.Text(most)}";
        string left = open.IsEmpty ? "" : $", {open.Length} of {items.Length} items open";
        return new ClotScore(points, least >= score.LikelyFrom, $"{score.Title}: {amount} points{left}; likely from {Number.Text(score.LikelyFrom)}: {level}. {NoComfort}")
        {
            Least = least,
            Most = most,
        };
    }

    private static bool? Answer(FlagQuestion item, int day, LadderFacts facts) =>
        day <= item.TrueUntilDay ? true
        : item.Raises ? facts.Now.Assessment.Sign(item.Id)
        : facts.States.Select(state => state.Assessment.Sign(item.Id)).LastOrDefault(answer => answer is not null);
}
