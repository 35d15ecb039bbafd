using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Drafting;

/// <summary>What the logged sets of an exercise say of its load.</summary>
/// <param name="Load">The load to plan; null for none.</param>
/// <param name="Why">The reason in sentences; where nothing could be judged, what to log.</param>
/// <param name="Source">Where the rule comes from.</param>
internal sealed record LoadAdvice(ExerciseLoad? Load, string Why, Source Source);

/// <summary>Judges the load of an exercise from its logged sets, by the exercise's own method. The least load that a rule allows and weights make up is planned, the rest is told.</summary>
internal static class LoadDraft
{
    // What the notation of a cell can hold.
    private const double MostKilograms = 300;

    // Kilograms and steps are decimal, their binary neighbours are not.
    private const double Slack = 1e-9;

    /// <summary>The advice for a week, given the load planned so far.</summary>
    internal static LoadAdvice Of(Exercise exercise, ExerciseLoad? planned, int week, DraftFacts facts)
    {
        ImmutableArray<Session> logged = Logged(exercise.Id, facts.Case, facts.From);
        (NextLoad next, Mass? worked) = Judge(exercise, logged);
        if (next.Range is not { } range || range.Least.Kilograms > MostKilograms)
        {
            string toLog = exercise.Progression.Method switch
            {
                ProgressionMethod.Dapre => "repetitions and load of the third set",
                ProgressionMethod.Delorme => "a set of ten with its load",
                _ => "repetitions and load of the last set of each session",
            };
            return new LoadAdvice(planned, $"{next.Why} The planned load stays; log {toLog} to have it judged.", next.Source);
        }

        double step = facts.Library.Limit(LimitIds.LoadStep).Value;
        if (Lightest(range, step) is not { } lightest)
        {
            string heavier = Number.Text(Math.Ceiling(range.Most.Kilograms / step) * step);
            return new LoadAdvice(planned, $"{next.Why} No weight in steps of {Number.Text(step)} kg lies within {range}: the load stays, more repetitions come first; {heavier} kg is for you to set.", next.Source);
        }

        bool rises = (planned?.Mass ?? worked) is { } before && lightest.Kilograms > before.Kilograms;
        if (rises && Held(week, facts) is { } held)
        {
            return new LoadAdvice(planned, $"{next.Why} {held}", next.Source);
        }

        // A load that stays is left as it was planned: in percent or by effort, where it was so.
        bool stays = planned is { Mass: null } && range.Most == worked;
        return new LoadAdvice(
            stays ? planned : lightest.Kilograms == 0 ? null : ExerciseLoad.Of(lightest),
            range.Least == range.Most ? next.Why : $"{next.Why} The least is planned: {lightest}; up to {range.Most} is open.",
            next.Source);
    }

    /// <summary>The lightest load within a range that weights make up; a range of one load was lifted, so there are weights for it. Null when there is none.</summary>
    private static Mass? Lightest(LoadRange range, double step)
    {
        if (range.Least == range.Most)
        {
            return range.Least;
        }

        double lightest = Math.Round(Math.Ceiling((range.Least.Kilograms / step) - Slack) * step, 3);
        return lightest <= range.Most.Kilograms + Slack ? Mass.FromKilograms(lightest) : null;
    }

    /// <summary>How many sessions up to a day have a set of an exercise logged.</summary>
    internal static int Sessions(string exercise, Case patient, DateOnly upTo) => Logged(exercise, patient, upTo).Length;

    private static (NextLoad Next, Mass? Worked) Judge(Exercise exercise, ImmutableArray<Session> logged)
    {
        switch (exercise.Progression.Method)
        {
            case ProgressionMethod.Delorme:
                return (DeLorme.Tested([.. logged.SelectMany(one => one.Sets)]), null);
            case ProgressionMethod.Dapre:
                LoggedSet? third = logged.IsEmpty || logged[^1].Sets.Length < 3 ? null : logged[^1].Sets[2];
                return third?.Load is { } load
                    ? (DapreTable.Knight1979.NextSession(load, third.Repetitions), load)
                    : (new NextLoad(null, logged.IsEmpty ? "No session is logged." : $"The third set of {logged[^1].Sets[^1].Day} is not recorded.", DapreTable.Knight1979.Source), null);
            default:
                ImmutableArray<LoggedSet> last = [.. logged.Select(one => one.Sets[^1])];
                return (TwoForTwo.After(exercise.Start.Repetitions ?? 1, last), last.IsEmpty ? null : last[^1].Load);
        }
    }

    /// <summary>Why no load is raised in a week; null when it may be.</summary>
    private static string? Held(int week, DraftFacts facts) =>
        facts.Locked ? "A red flag is open: the load is not raised."
        : facts.Irritated ? "The knee is irritated: the load is not raised before the next assessment."
        : facts.Case.Surgeon.NoResistanceBefore is { } from && PostOpWeek.Start(facts.Case.Operation.Date, week) < from
            ? $"The surgeon allows no added resistance before {LadderFacts.Day(from)}: the load is not raised."
        : null;

    private static ImmutableArray<Session> Logged(string exercise, Case patient, DateOnly upTo) =>
    [
        .. from log in patient.Sessions
           where log.Date <= upTo
           from done in log.Exercises
           where done.Exercise == exercise && !done.Sets.IsDefaultOrEmpty
           select new Session([.. done.Sets.Select(set => new LoggedSet(log.Date, set.Repetitions, set.Load))]),
    ];

    private sealed record Session(ImmutableArray<LoggedSet> Sets);
}
