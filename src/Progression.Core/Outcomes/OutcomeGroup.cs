using System.Collections.Immutable;
using Progression.Core.Adherence;
using Progression.Core.Forecasts;
using Progression.Core.Statistics;

namespace Progression.Core.Outcomes;

/// <summary>The figures of a group of cases. Each is null where it rests on too few people, or would let a figure kept back elsewhere be reckoned.</summary>
public sealed record OutcomeGroup
{
    /// <summary>"all", or what the cases have in common.</summary>
    public required string Name { get; init; }

    /// <summary>How many cases.</summary>
    public required int? Cases { get; init; }

    /// <summary>One for each goal, in their order.</summary>
    public required ImmutableArray<WaitFigures?> Waits { get; init; }

    /// <summary>What was done of the plans.</summary>
    public required AdherenceFigures? Adherence { get; init; }

    /// <summary>The stim delivered.</summary>
    public required DeliveredFigures? Delivered { get; init; }

    /// <summary>How often readings fell into the band of the forecast before them.</summary>
    public required ForecastFigures? Forecasts { get; init; }

    /// <summary>How many people each figure rests on: the cases, each goal, adherence, stim, forecasts.</summary>
    internal static IEnumerable<Func<ImmutableArray<CaseOutcome>, int>> Counts(ImmutableArray<OutcomeGoal> goals) =>
    [
        cases => cases.Length,
        .. goals.Select(goal => (Func<ImmutableArray<CaseOutcome>, int>)(cases => cases.Count(one => one.Waits.ContainsKey(goal.Id)))),
        cases => cases.Count(one => one.Adherence is { WeeksLogged: > 0 }),
        cases => cases.Count(one => one.Delivered is not null),
        cases => cases.Count(one => one.Scored > 0),
    ];

    /// <summary>The figures.</summary>
    /// <param name="name">What the group is called.</param>
    /// <param name="cases">Its cases.</param>
    /// <param name="by">What they were judged by.</param>
    /// <param name="told">Whether each figure of <see cref="Counts"/> may be told.</param>
    internal static OutcomeGroup Of(string name, ImmutableArray<CaseOutcome> cases, OutcomeYardstick by, ImmutableArray<bool> told) => new()
    {
        Name = name,
        Cases = told[0] ? cases.Length : null,
        Waits = [.. by.Goals.Select((goal, index) => told[0] && told[index + 1] ? WaitFigures.Of(goal, cases, by) : null)],
        Adherence = told[0] && told[^3] ? AdherenceFigures.Of(cases, by) : null,
        Delivered = told[0] && told[^2] ? DeliveredFigures.Of(cases, by) : null,
        Forecasts = told[0] && told[^1] ? ForecastFigures.Of(cases, by) : null,
    };
}

/// <summary>How long a group waited for a goal.</summary>
/// <param name="Goal">The goal.</param>
/// <param name="People">How many were followed.</param>
/// <param name="Events">How many were seen to reach it.</param>
/// <param name="Curve">The share still waiting, by weeks since the operation; it ends where too few are followed.</param>
/// <param name="UntilWeek">The last week of which the curve tells.</param>
/// <param name="GapWeeks">Weeks between visits around the one at which it was seen, the middle of the group: by so much the true week may be earlier; null when too few were seen to reach it.</param>
public sealed record WaitFigures(OutcomeGoal Goal, int People, int Events, KaplanMeier Curve, double UntilWeek, double? GapWeeks)
{
    /// <summary>The share that has reached it by a week, 0 to 1, with its interval; null for a week beyond <see cref="UntilWeek"/>.</summary>
    public (double Share, (double Low, double High)? Interval)? ReachedBy(double week) => week > UntilWeek ? null
        : Curve.At(week) is not { } step ? (0, null)
        : (1 - step.Waiting, step is { Low: double low, High: double high } ? (1 - high, 1 - low) : null);

    internal static WaitFigures? Of(OutcomeGoal goal, ImmutableArray<CaseOutcome> cases, OutcomeYardstick by)
    {
        ImmutableArray<OutcomeWait> waits = [.. cases.Select(one => one.Waits.GetValueOrDefault(goal.Id)).OfType<OutcomeWait>()];
        KaplanMeier whole = KaplanMeier.Of(waits.Select(wait => wait.Followed));
        KaplanMeier told = whole.WhileAtRisk(by.LeastPeople);
        if (told.Steps.IsEmpty)
        {
            return null;
        }

        // Where all have reached it, that stays so; otherwise the next step, or the last look, ends what is known.
        double until = told.Steps.Length < whole.Steps.Length ? Math.BitDecrement(whole.Steps[told.Steps.Length].Time)
            : told.Steps[^1].Waiting == 0 ? double.PositiveInfinity
            : told.Steps[^1].Time;
        return new(goal, whole.People, whole.Events, told, until, by.Spread(waits.Select(wait => wait.GapWeeks))?.Median);
    }
}

/// <summary>What a group did of its plans: see <see cref="PlanAdherence.Definition"/>.</summary>
/// <param name="People">People with at least one logged week.</param>
/// <param name="StimSessions">Stim sessions, all together.</param>
/// <param name="Contractions">Stimulated contractions, all together.</param>
/// <param name="EachSessions">The share of stim sessions of each person, in percent; null where too few had any planned.</param>
/// <param name="HomeWork">The home work each person said was done, in percent; null where too few were asked.</param>
public sealed record AdherenceFigures(int People, DoneShare StimSessions, DoneShare Contractions, Quartiles? EachSessions, Quartiles? HomeWork)
{
    internal static AdherenceFigures? Of(ImmutableArray<CaseOutcome> cases, OutcomeYardstick by)
    {
        ImmutableArray<PlanAdherence> logged = [.. cases.Select(one => one.Adherence).OfType<PlanAdherence>().Where(one => one.WeeksLogged > 0)];
        return logged.IsEmpty ? null : new(
            logged.Length,
            logged.Aggregate(DoneShare.Nothing, (sum, one) => sum.Plus(one.StimSessions)),
            logged.Aggregate(DoneShare.Nothing, (sum, one) => sum.Plus(one.Contractions)),
            by.Spread(logged.Select(one => one.StimSessions.Percent)),
            by.Spread(logged.Select(one => one.HomeWork?.Percent)));
    }
}

/// <summary>The stim a group got, person by person, as far as it is logged.</summary>
/// <param name="People">People with a logged session.</param>
/// <param name="Sessions">Stim sessions of each.</param>
/// <param name="Contractions">Stimulated contractions of each.</param>
/// <param name="Minutes">Minutes of each whose regimen tells its timing; null where that of too few does.</param>
public sealed record DeliveredFigures(int People, Quartiles Sessions, Quartiles Contractions, Quartiles? Minutes)
{
    internal static DeliveredFigures? Of(ImmutableArray<CaseOutcome> cases, OutcomeYardstick by)
    {
        ImmutableArray<StimDelivered> got = [.. cases.Select(one => one.Delivered).OfType<StimDelivered>()];
        return got.IsEmpty ? null : new(
            got.Length, Quartiles.Of(got.Select(one => (double)one.Sessions))!, Quartiles.Of(got.Select(one => (double)one.Contractions))!, by.Spread(got.Select(one => one.Minutes)));
    }
}

/// <summary>How often the forecasts of a group held.</summary>
/// <param name="People">People with a scored forecast.</param>
/// <param name="Rate">The rate, with its warning.</param>
public sealed record ForecastFigures(int People, HitRate Rate)
{
    /// <summary>The share with its interval. Forecasts of one knee are not independent, so the true interval is wider.</summary>
    public Proportion Share => new(Rate.Scored, Rate.Hits);

    internal static ForecastFigures? Of(ImmutableArray<CaseOutcome> cases, OutcomeYardstick by)
    {
        int scored = cases.Sum(one => one.Scored);
        return scored == 0 ? null : new(cases.Count(one => one.Scored > 0), HitRate.Of(scored, cases.Sum(one => one.Hits), by.Library));
    }
}
