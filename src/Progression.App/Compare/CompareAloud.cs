using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Measures;

namespace Progression.App.Compare;

/// <summary>The comparison in words: a measure a time, its values by visit, its last change.</summary>
internal static class CompareAloud
{
    public static ScreenAloud<CompareState> Words { get; } = new()
    {
        Opening = state => state.Mode == CompareMode.Table && state.Comparison.FalseAlarm.Length > 0 ? [state.Comparison.FalseAlarm] : [],
        Here = Here,
        Read = (state, part) => part.Length > 0 ? null : state.Mode == CompareMode.Table ? state.Comparison.Rows.SelectMany(row => Row(state, row)) : Here(state),
        Go = (state, words) => state.Mode == CompareMode.Table && SpokenNames.Fitting(words, state.Comparison.Rows.Select(row => row.Measure.Title)) is { Count: > 0 } found ? state.To(found[0]) : null,
    };

    private static IEnumerable<string>? Here(CompareState state) => state switch
    {
        { Mode: CompareMode.Help } => null,
        { Chosen: null } => ["Nothing has been measured yet."],
        { Mode: CompareMode.Why } => RowWords.Of(ComparePicture.WhyLines(state, RowWords.Unbroken)),
        { Chosen: { } row } => Row(state, row),
    };

    private static IEnumerable<string> Row(CompareState state, ComparisonRow row)
    {
        string unit = MeasureLabel.Unit(row.Measure);
        IEnumerable<string> values = row.Values.Select((value, visit) =>
            $"{CaseTitle.ShortDay(state.Comparison.Visits[visit])} {(value is double known ? MeasureLabel.Value(row.Measure, known) + unit : "not measured")}");
        yield return $"{row.Measure.Title}, {MeasureLabel.Better(row.Measure)}: {string.Join(", ", values)}.";
        yield return row.Last is { } last
            ? $"Last change: {MeasureLabel.Difference(row.Measure, last.Difference)}{unit}, {last.Words}."
            : "Measured once: there is nothing to compare with yet.";
    }
}
