using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Measures;

/// <summary>What a change is worked out from, in words. Made only when somebody asks why.</summary>
internal static class ChangeInputs
{
    internal static IEnumerable<Input> Of(Change change) =>
    [
        Value(change.Measure, change.From, change.Old), Value(change.Measure, change.To, change.New), .. Yardstick(change), .. Matters(change),
    ];

    private static Input Value(Measure measure, DateOnly day, double value) => new($"{measure.Title}, {day:yyyy-MM-dd}", MeasureText.Shown(measure, value));

    private static IEnumerable<Input> Yardstick(Change change)
    {
        if (change.Detectable is not double detectable)
        {
            yield break;
        }

        if (change.ErrorOld is not double old || change.ErrorNew is not double now)
        {
            yield return new Input("Step taken for real", MeasureText.Amount(change.Measure, detectable));
            yield break;
        }

        yield return new Input("Standard error, older and newer reading", $"{Error(change.Measure, old, change.Old)} and {Error(change.Measure, now, change.New)}");
        if (change.ErrorCorrelation is double correlation)
        {
            yield return new Input("Correlation of the errors of active and passive extension", Number.Text(correlation));
        }

        double difference = change.Measure.Scale == ErrorScale.Logarithmic ? Math.Log(change.New / change.Old) : change.Difference;
        string level = Number.Text(change.LevelPercent);
        yield return new Input($"z at {level} %", Number.Text(MeasurementError.Z(change.LevelPercent), 3));
        yield return new Input("Reliable change index", Number.Text(MeasurementError.ReliableChange(difference, old, now), 2));
        yield return new Input($"Detectable change at {level} %", MeasureText.Amount(change.Measure, detectable));
    }

    private static string Error(Measure measure, double error, double value) => measure.Scale == ErrorScale.Logarithmic
        ? $"{Number.Text(100 * error, 1)} % of the value ({MeasureText.Amount(measure, error * value)})"
        : MeasureText.Amount(measure, error, 3);

    private static IEnumerable<Input> Matters(Change change)
    {
        if (change.Matters is { } figure)
        {
            string of = !change.IsBetter && change.Measure.ImportantLoss is null ? "figure for a gain; " : "";
            yield return new Input("Change that matters", $"{MeasureText.Amount(change.Measure, figure.Amount, 3)} ({of}{figure.Population}; {figure.Source})");
        }
    }
}
