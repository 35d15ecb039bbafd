using Progression.Core.Library;
using Progression.Core.People;
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

    /// <summary>Standard error of a quotient such as the index as a share of it, from those of its two values (delta method).</summary>
    /// <param name="first">Standard error of the one as a share of its value.</param>
    /// <param name="second">Standard error of the other as a share of its value.</param>
    public static double OfQuotient(double first, double second) => Math.Sqrt((first * first) + (second * second));

    /// <summary>Standard error of one reading from 95 % limits of agreement between two.</summary>
    public static double FromAgreement(double lower, double upper) => (upper - lower) / (2 * Z(95) * Math.Sqrt(2));

    /// <summary>Standard error of one reading from a detectable change; on the logarithmic scale from the logarithm of one plus the share.</summary>
    public static double FromDetectable(double change, double levelPercent) => change / DetectableChange(1, levelPercent);

    /// <summary>Reliable change index: the difference in standard errors of a difference. Over z of a level exactly when the change is detectable at it.</summary>
    public static double ReliableChange(double difference, double standardErrorOld, double standardErrorNew) =>
        difference / Math.Sqrt((standardErrorOld * standardErrorOld) + (standardErrorNew * standardErrorNew));

    /// <summary>Chance that at least one of several readings that did not change differs detectably, when their errors are independent; 0 to 1.</summary>
    public static double FalseAlarm(int readings, double levelPercent) => 1 - Math.Pow(levelPercent / 100, readings);

    /// <summary>Standard error of the extension lag from those of active and passive extension; null when one is not known.</summary>
    public static double? OfLag(ClinicalLibrary library) => OfLag(library, id => library.Measures[id].StandardError);

    /// <summary>
    /// Standard error of a measure at a visit, on the measure's scale: of derived measures from what is behind them, of a mean of trials divided by the root
    /// of their number where the library says that its error is that of one trial. Null when it is not known.
    /// </summary>
    /// <param name="state">The visit.</param>
    /// <param name="measure">The measure.</param>
    /// <param name="library">The library with the errors.</param>
    /// <param name="changed">Whether rater, device or position differ from the visit it is compared with: then the error for that where one is known.</param>
    public static double? Of(KneeState state, string measure, ClinicalLibrary library, bool changed)
    {
        ArgumentNullException.ThrowIfNull(state);
        double? Part(string id) => Of(state, id, library, changed);
        bool ratios = library.Measures[MeasureIds.QuadricepsTorque].Scale == ErrorScale.Logarithmic && library.Measures[MeasureIds.OtherTorque].Scale == ErrorScale.Logarithmic;
        return measure switch
        {
            MeasureIds.Lag => OfLag(library, Part),
            // Both shares are of the one pre-op value, so its error is in neither change.
            MeasureIds.PreOpShare when ratios => Part(MeasureIds.QuadricepsTorque),
            MeasureIds.Index when ratios => Part(MeasureIds.QuadricepsTorque) is double one && Part(MeasureIds.OtherTorque) is double other ? OfQuotient(one, other) : null,
            _ => OfReading(library.Measures[measure], state.Behind(measure).FirstOrDefault(), changed),
        };
    }

    private static double? OfReading(Measure measure, Reading? reading, bool changed)
    {
        double? error = changed && measure.Changed is { } other ? other.StandardError : measure.StandardError;
        return measure.ErrorOfOneTrial && reading?.Trials is int trials and > 1 ? error / Math.Sqrt(trials) : error;
    }

    private static double? OfLag(ClinicalLibrary library, Func<string, double?> error) =>
        error(MeasureIds.ExtensionActive) is double active && error(MeasureIds.ExtensionPassive) is double passive
            ? OfDifference(active, passive, library.Limit(LimitIds.LagErrorCorrelation).Value)
            : null;
}
