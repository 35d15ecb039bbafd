using System.Collections.Immutable;

namespace Progression.Core.Statistics;

/// <summary>
/// How long until something happens, when some are lost from sight before: the product-limit estimate of the share still without the event. Nobody's
/// following may end for a reason that says something of the event to come; otherwise it is biased.
/// </summary>
/// <remarks>
/// Kaplan and Meier 1958, J Am Stat Assoc 53:457; the variance is Greenwood's, the interval is made on the scale log(-log), so that it stays between 0 and 1
/// (Kalbfleisch and Prentice 1980; all three from memory). Checked against another program and a textbook's example: see its tests.
/// </remarks>
public sealed record KaplanMeier
{
    /// <summary>Shares this close are the same; as the square root of the spacing of numbers at 1.</summary>
    private const double Same = 1.5e-8;

    private KaplanMeier(ImmutableArray<KaplanMeierStep> steps, double level) => (Steps, Level) = (steps, level);

    /// <summary>The times at which somebody's following ended, earliest first; empty when nobody was followed.</summary>
    public ImmutableArray<KaplanMeierStep> Steps { get; }

    /// <summary>The level of the intervals, over 0 and under 1.</summary>
    public double Level { get; }

    /// <summary>How many were followed.</summary>
    public int People => Steps.IsEmpty ? 0 : Steps[0].AtRisk;

    /// <summary>How many events there were.</summary>
    public int Events => Steps.Sum(step => step.Events);

    /// <summary>
    /// The time by which half have had the event; where exactly half wait until the next event, the middle of that time. Null when fewer than half were seen to.
    /// </summary>
    public double? Median => Half(step => step.Waiting);

    /// <summary>Lower end of the interval of the median: where the lower end of the curve's interval passes a half (Brookmeyer and Crowley 1982, from memory); null when it does not.</summary>
    public double? MedianLow => Half(step => step.Low);

    /// <summary>Its upper end; null when the upper end of the curve's interval stays over a half: it is open.</summary>
    public double? MedianHigh => Half(step => step.High);

    /// <summary>The estimate.</summary>
    /// <param name="people">Everybody who was followed.</param>
    /// <param name="level">The level of the intervals.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not over 0 and under 1, or a time is not over 0.</exception>
    public static KaplanMeier Of(IEnumerable<Followed> people, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(people);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(level, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(level, 1);
        List<Followed> all = [.. people.OrderBy(one => one.Time)];
        if (all.Count > 0 && !(all[0].Time > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(people), all[0].Time, "A time is over 0.");
        }

        double z = NormalDistribution.Quantile(1 - ((1 - level) / 2));
        (int left, double waiting, double sum) = (all.Count, 1, 0);
        ImmutableArray<KaplanMeierStep>.Builder steps = ImmutableArray.CreateBuilder<KaplanMeierStep>();
        foreach (IGrouping<double, Followed> at in all.GroupBy(one => one.Time))
        {
            (int here, int events) = (at.Count(), at.Count(one => one.Happened));
            waiting *= (double)(left - events) / left;
            sum += events == left ? 0 : events / ((double)left * (left - events));
            double? away = waiting is 0 or 1 ? null : z * Math.Sqrt(sum) / -Math.Log(waiting);
            steps.Add(new KaplanMeierStep(at.Key, left, events, here - events)
            {
                Waiting = waiting,
                Low = away is null ? null : Math.Pow(waiting, Math.Exp(away.Value)),
                High = away is null ? null : Math.Pow(waiting, Math.Exp(-away.Value)),
            });
            left -= here;
        }

        return new KaplanMeier(steps.ToImmutable(), level);
    }

    /// <summary>What is known at a time: the last step at or before it; null before the first one.</summary>
    public KaplanMeierStep? At(double time) => Steps.LastOrDefault(step => step.Time <= time);

    /// <summary>The part of it in which at least so many are followed: what rests on fewer says more of them than of a group.</summary>
    public KaplanMeier WhileAtRisk(int least) => new([.. Steps.TakeWhile(step => step.AtRisk >= least)], Level);

    private double? Half(Func<KaplanMeierStep, double?> curve)
    {
        List<(double Time, double Share)> under = [.. from step in Steps let share = curve(step) where share < 0.5 + Same select (step.Time, share.Value)];
        if (under.Count == 0)
        {
            return null;
        }

        (double time, double first) = under[0];
        int next = Math.Abs(first - 0.5) < Same ? under.FindIndex(one => one.Share < first) : -1;
        return next < 0 ? time : (time + under[next].Time) / 2;
    }
}
