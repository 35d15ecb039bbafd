using System.Globalization;
using Progression.Core.Forecasts;
using Progression.Core.Library;

namespace Progression.Benchmarks;

/// <summary>
/// How honest forecasts are: invented knees are followed to week 4, forecast, and compared with what then comes. It proves the code and shows how much a
/// wrong assumption costs; it is no proof of clinical accuracy, because the knees are drawn from a model of the same kind.
/// </summary>
internal static class Calibration
{
    /// <summary>Seed of the printed table.</summary>
    internal const ulong Seed = 20261125;

    private static readonly double[] Visits = [1, 2, 3, 4];
    private static readonly double[] Ahead = [6, 8, 12];

    /// <summary>Prints the table.</summary>
    /// <param name="knees">Invented knees for each row.</param>
    /// <param name="to">Where to.</param>
    internal static void Print(int knees, TextWriter to)
    {
        to.WriteLine($"{knees} invented knees a row, visits in weeks 1 to 4, seed {Seed}. Share of true values inside the 80 / 90 % band; then mean error in week 8, in degrees.\n");
        to.WriteLine("| knees | prior | week 6 | week 8 | week 12 | forecast | last value | line through two | population | population, shifted |");
        to.WriteLine("|---|---|---|---|---|---|---|---|---|---|");
        foreach (InventedKnees.Course course in Enum.GetValues<InventedKnees.Course>())
        {
            foreach (RecoveryPrior prior in new[] { SampleCase.Library.Priors["flexion-wide"], SampleCase.Library.Priors["flexion-narrow"] })
            {
                to.WriteLine(Row(knees, course, prior));
            }
        }
    }

    private static string Row(int knees, InventedKnees.Course course, RecoveryPrior prior)
    {
        InventedKnees drawn = new(Seed, course);
        (double[] in80, double[] in90, double[] errors) = (new double[Ahead.Length], new double[Ahead.Length], new double[5]);
        for (int knee = 0; knee < knees; knee++)
        {
            (Func<double, double> truth, double[] readings) = drawn.Next(Visits);
            RecoveryOutlook outlook = RecoveryOutlook.Of(Model(prior, readings));
            for (int i = 0; i < Ahead.Length; i++)
            {
                (double real, var at) = (truth(Ahead[i]), outlook.At(Ahead[i]));
                in80[i] += real >= at.Quantile(0.1) && real <= at.Quantile(0.9) ? 1 : 0;
                in90[i] += real >= at.Quantile(0.05) && real <= at.Quantile(0.95) ? 1 : 0;
            }

            double[] guesses = [outlook.At(8).Quantile(0.5), readings[^1], Line(readings, 8), Population(8), Population(8) + readings[^1] - Population(4)];
            errors = [.. errors.Zip(guesses, (sum, guess) => sum + Math.Abs(guess - truth(8)))];
        }

        IEnumerable<string> held = in80.Zip(in90, (narrow, wide) => $"{Text(narrow / knees, 3)} / {Text(wide / knees, 3)}");
        return $"| {course.ToString().ToLowerInvariant()} | {prior.Variant} | {string.Join(" | ", held)} | {string.Join(" | ", errors.Select(sum => Text(sum / knees, 1)))} |";
    }

    private static ForecastModel Model(RecoveryPrior prior, double[] readings) => new(
        ErrorScale.Linear,
        [new ForecastSeries(prior.Measure, 1, prior.Curve, prior.Error!.Value, [.. Visits.Zip(readings, (week, value) => new SeenValue(week, value, prior.Error.Value))])],
        0);

    /// <summary>The straight line through the last two readings, kept between 40 and 150 deg.</summary>
    private static double Line(double[] readings, double week) => Math.Clamp(readings[^1] + ((readings[^1] - readings[^2]) * (week - Visits[^1])), 40, 150);

    /// <summary>The derived population curve of active flexion.</summary>
    private static double Population(double week) => 117 - (46.9 * Math.Exp(-week / 4.2));

    private static string Text(double value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
