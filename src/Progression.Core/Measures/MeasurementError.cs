using Progression.Core.Library;
using Progression.Core.Statistics;

namespace Progression.Core.Measures;

/// <summary>
/// Telling change from error. MDC = z x sqrt(SEM1^2 + SEM2^2), z two-sided at the stated level (1.644854 at 90 %, 1.959964 at 95 %); on a logarithmic
/// scale the readings are compared by the logarithm of their ratio. Standard definitions.
/// </summary>
public static class MeasurementError
{
    /// <summary>The two-sided z of a level.</summary>
    /// <param name="levelPercent">Confidence level in percent, over 0 and under 100.</param>
    public static double Z(double levelPercent) => NormalDistribution.Quantile(0.5 + (levelPercent / 200));

    /// <summary>The detectable change between two readings of equal standard error.</summary>
    /// <param name="standardError">Standard error of one reading.</param>
    /// <param name="levelPercent">Confidence level in percent.</param>
    public static double DetectableChange(double standardError, double levelPercent) =>
        DetectableChange(standardError, standardError, levelPercent);

    /// <summary>The detectable change between two readings of unlike standard error.</summary>
    public static double DetectableChange(double standardErrorOld, double standardErrorNew, double levelPercent) =>
        Z(levelPercent) * Math.Sqrt((standardErrorOld * standardErrorOld) + (standardErrorNew * standardErrorNew));

    /// <summary>Standard error of a difference of two readings taken together, such as the lag.</summary>
    /// <param name="first">Standard error of the one.</param>
    /// <param name="second">Standard error of the other.</param>
    /// <param name="correlation">Correlation of their errors, -1 to 1.</param>
    public static double OfDifference(double first, double second, double correlation) =>
        Math.Sqrt((first * first) + (second * second) - (2 * correlation * first * second));

    /// <summary>Standard error of the extension lag from those of active and passive extension; null when one is not known.</summary>
    public static double? OfLag(ClinicalLibrary library) =>
        library.Measures[MeasureIds.ExtensionActive].StandardError is double active
        && library.Measures[MeasureIds.ExtensionPassive].StandardError is double passive
            ? OfDifference(active, passive, library.Limit(LimitIds.LagErrorCorrelation).Value)
            : null;

    /// <summary>
    /// How the difference between two readings is classed at the library's level; null when the measure's error is not known, its scale is ordinal,
    /// or a reading on a logarithmic scale is not positive.
    /// </summary>
    public static ChangeClass? Class(Measure measure, double old, double now, ClinicalLibrary library)
    {
        double? error = measure.Id == MeasureIds.Lag ? OfLag(library) : measure.StandardError;
        if (error is not double standardError || measure.Scale == ErrorScale.Ordinal)
        {
            return null;
        }

        bool logarithmic = measure.Scale == ErrorScale.Logarithmic;
        if (logarithmic && (old <= 0 || now <= 0))
        {
            return null;
        }

        double difference = logarithmic ? Math.Log(now / old) : now - old;
        double better = measure.Better == Direction.HigherIsBetter ? difference : -difference;
        double detectable = DetectableChange(standardError, library.Limit(LimitIds.ChangeLevel).Value);
        return better >= detectable ? ChangeClass.Improved : better <= -detectable ? ChangeClass.Worse : ChangeClass.NoDetectableChange;
    }
}
