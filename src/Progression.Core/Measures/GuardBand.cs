using Progression.Core.Library;
using Progression.Core.Statistics;

namespace Progression.Core.Measures;

/// <summary>
/// What a measurement with error does to a criterion. All margins point the better way: a truth or a reading is over its limit when it is on the good side
/// of it. The guard band moves the limit to the safe side (JCGM 106:2012, guarded acceptance, from memory).
/// </summary>
public static class GuardBand
{
    /// <summary>The band that holds a false pass of a truth just at the limit to a share.</summary>
    /// <param name="falsePass">The share, over 0 and under 1: 0.1 for 10 %.</param>
    /// <param name="standardError">Standard error of one reading.</param>
    public static double Width(double falsePass, double standardError) => NormalDistribution.Quantile(1 - falsePass) * standardError;

    /// <summary>The chance that one reading passes.</summary>
    /// <param name="over">How far the truth is over the limit; negative when the criterion is truly unmet.</param>
    /// <param name="guard">How far over the limit a reading must be.</param>
    /// <param name="standardError">Standard error of one reading.</param>
    public static double Pass(double over, double guard, double standardError) => NormalDistribution.Probability((over - guard) / standardError);

    /// <summary>The same for the mean of several readings.</summary>
    public static double PassOnMean(double over, double guard, double standardError, int readings) => Pass(over, guard, standardError / Math.Sqrt(readings));

    /// <summary>The chance that each of several separate readings passes.</summary>
    public static double PassEvery(double pass, int readings) => Math.Pow(pass, readings);

    /// <summary>The chance that at least one of several looks passes: what stopping at the first pass comes to.</summary>
    public static double PassOnce(double pass, int looks) => 1 - Math.Pow(1 - pass, looks);

    /// <summary>The chance to go forward and at the next visit back again, with the truth just at the limit and the same band on both sides.</summary>
    public static double ForwardAndBack(double guard, double standardError) => PassEvery(Pass(0, guard, standardError), 2);

    /// <summary>
    /// The chance that a criterion is not truly met, seen from a reading alone: nothing is assumed of the person beforehand.
    /// </summary>
    /// <param name="margin">How far what was read is over the limit.</param>
    /// <param name="standardError">Standard error of what was read; of a mean of two readings, that of one over the root of 2.</param>
    public static double NotMet(double margin, double standardError) => NormalDistribution.Probability(-margin / standardError);

    /// <summary>How far a value falls short of a goal, on the scale of the measure's error; under zero when it does not.</summary>
    internal static double Shortfall(Measure measure, double now, double goal)
    {
        double gap = measure.Scale == ErrorScale.Logarithmic ? Math.Log(goal / now) : goal - now;
        return measure.Better == Direction.HigherIsBetter ? gap : -gap;
    }
}
