using System.Collections.Immutable;
using Progression.App.Compare;
using Progression.Core.Library;
using Progression.Core.Measures;

namespace Progression.App.Tests.Compare;

/// <summary>Seven invented visits. The changes are written down here, not worked out: the views show what they are given.</summary>
internal static class SampleComparison
{
    public static readonly DateOnly Operated = new(2026, 9, 28);
    public static readonly Source Error = new("Invented for the tests", Standing.CommonPractice);
    private static readonly DateOnly[] Days = [new(2026, 9, 14), new(2026, 10, 5), new(2026, 10, 12), new(2026, 10, 19), new(2026, 10, 26), new(2026, 11, 9), new(2026, 11, 23)];

    public static CompareState State => new() { Title = "K-014  right knee, operated 28 Sep 2026", Operation = Operated, Comparison = Comparison };

    public static CompareState Empty => State with { Comparison = new() { Visits = [], HasPreOp = false, Rows = [], FalseAlarm = "" } };

    public static Comparison Comparison { get; } = new()
    {
        Visits = [.. Days],
        HasPreOp = true,
        Rows =
        [
            Row(Flexion, [118, 62, 72, 84, 88, 96, 108], 9.3, (ChangeClass.Improved, ChangeClass.Improved)),
            Row(Extension, [3, 18, 14, 12, 10, 8, 6], 7, (ChangeClass.NoDetectableChange, ChangeClass.Improved)),
            Row(Lag, [0, 12, 9, 8, 6, 4, 3], 9.9, (ChangeClass.NoDetectableChange, ChangeClass.NoDetectableChange)),
            Row(Torque, [92, null, null, 34, 38, 47, 40], 5, (ChangeClass.Worse, ChangeClass.Improved)),
            Row(Rises, [9, null, 8, 10, 11, 14, 15.5], 2.1, (ChangeClass.NoDetectableChange, ChangeClass.Worse)),
            Row(Effusion, [1, 4, 3, 3, 2, 1, null], null, (null, ChangeClass.Improved)),
            new(Walk, [410, null, null, null, null, null, 380], null, null),
        ],
        FalseAlarm = "5 measures tested at 90 %: about 41 in 100 that at least one differs by chance alone.",
    };

    public static Measure Flexion => Measure(MeasureIds.FlexionActive, "Active flexion", "deg", Direction.HigherIsBetter) with { StandardError = 4 };

    public static Measure Rises => Measure("timed_up_and_go", "Timed up and go", "s", Direction.LowerIsBetter) with { StandardError = 0.1128, Scale = ErrorScale.Logarithmic };

    private static Measure Extension => Measure(MeasureIds.ExtensionActive, "Active extension deficit", "deg", Direction.LowerIsBetter);

    private static Measure Lag => Measure(MeasureIds.Lag, "Extension lag", "deg", Direction.LowerIsBetter);

    private static Measure Torque => Measure(MeasureIds.QuadricepsTorque, "Quadriceps torque", "Nm", Direction.HigherIsBetter);

    private static Measure Effusion => Measure(MeasureIds.Effusion, "Effusion", "1", Direction.LowerIsBetter) with { Scale = ErrorScale.Ordinal };

    private static Measure Walk => Measure("six_minute_walk", "Six-minute walk", "m", Direction.HigherIsBetter);

    public static Measure Measure(string id, string title, string unit, Direction better) => new()
    {
        Id = id,
        Title = title,
        Unit = unit,
        Better = better,
        Least = 0,
        Most = 1000,
        Scale = ErrorScale.Linear,
        Source = Error,
    };

    private static ComparisonRow Row(Measure measure, ImmutableArray<double?> values, double? detectable, (ChangeClass? Last, ChangeClass? First) kinds)
    {
        int[] known = [.. Enumerable.Range(1, values.Length - 1).Where(visit => values[visit] is not null)];
        Change Between(int old, int now, ChangeClass? kind) => new()
        {
            Measure = measure,
            From = Days[old],
            To = Days[now],
            Old = values[old]!.Value,
            New = values[now]!.Value,
            IsBetter = (values[now] > values[old]) == (measure.Better == Direction.HigherIsBetter),
            Detectable = detectable,
            LevelPercent = 90,
            Class = kind,
            WhyNot = kind is null ? "One step on a scale of steps waits to be seen again." : null,
            Importance = measure.Id == MeasureIds.FlexionActive ? Importance.Important : Importance.NotKnown,
            PossiblyWorse = kind == ChangeClass.NoDetectableChange && measure.Id == Rises.Id,
            Notes = measure.Id == MeasureIds.QuadricepsTorque ? ["Another rater measured on 23 Nov."] : [],
            Source = Error,
        };
        return new(measure, values, Between(known[^2], known[^1], kinds.Last), Between(known[0], known[^1], kinds.First));
    }
}
