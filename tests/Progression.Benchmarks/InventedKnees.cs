using Progression.Core.Statistics;

namespace Progression.Benchmarks;

/// <summary>
/// Invented courses of active flexion with noisy readings. Well: drawn from the narrow prior, error 4 deg. Off: reality is 4 deg better than the prior, the
/// rate is log-normal around 4.2 weeks, errors are Student's t with 5 degrees of freedom and a spread of 5 deg. Stall: as off, and 6 in 100 knees stop in
/// week 4 or fall back by up to 6 deg (after 8 of 137 in Kornuijt 2019).
/// </summary>
internal sealed class InventedKnees(ulong seed, InventedKnees.Course course)
{
    private const double Step = 0.5;
    private const int Steps = 26;

    private static readonly (double Rate, double UpTo)[] Rates = [(2, 1 / 9.0), (3, 3 / 9.0), (4.2, 6 / 9.0), (6, 8 / 9.0), (8.5, 1)];

    private readonly SeededNumbers _numbers = new(seed);

    internal enum Course
    {
        Well,
        Off,
        Stall,
    }

    /// <summary>The true course of the next knee, by half weeks to week 13, and its readings.</summary>
    internal (Func<double, double> Truth, double[] Readings) Next(double[] visits)
    {
        double[] values = Values();
        if (course == Course.Stall && _numbers.NextShare() < 0.06)
        {
            int stop = Index(4);
            double held = values[stop] - (6 * _numbers.NextShare());
            Array.Fill(values, held, stop, values.Length - stop);
        }

        return (week => values[Index(week)], [.. visits.Select(week => values[Index(week)] + Error())]);
    }

    private double[] Values()
    {
        bool well = course == Course.Well;
        double share = _numbers.NextShare();
        double rate = well ? Rates.First(one => share < one.UpTo).Rate : 4.2 * Math.Exp(0.5 * _numbers.NextNormal());
        (double first, double second) = (_numbers.NextNormal(), _numbers.NextNormal());
        double raised = well ? 0 : 4;
        double early = 80 + raised + (13 * first);
        double late = 114.3 + raised + (10.9 * ((0.85 * first) + (Math.Sqrt(1 - (0.85 * 0.85)) * second)));
        double misfit = 3 * _numbers.NextNormal();
        double kept = Math.Exp(-Step / 4);
        double[] values = new double[Steps];
        for (int i = 0; i < Steps; i++)
        {
            double way = (Math.Exp(-1 / rate) - Math.Exp(-(i + 1) * Step / rate)) / (Math.Exp(-1 / rate) - Math.Exp(-12 / rate));
            values[i] = ((1 - way) * early) + (way * late) + misfit;
            misfit = (kept * misfit) + (3 * Math.Sqrt(1 - (kept * kept)) * _numbers.NextNormal());
        }

        return values;
    }

    private double Error()
    {
        if (course == Course.Well)
        {
            return 4 * _numbers.NextNormal();
        }

        double squares = Enumerable.Range(0, 5).Sum(_ => Math.Pow(_numbers.NextNormal(), 2));
        return 5 * Math.Sqrt(3.0 / 5) * _numbers.NextNormal() / Math.Sqrt(squares / 5);
    }

    private static int Index(double week) => (int)Math.Round(week / Step) - 1;
}
