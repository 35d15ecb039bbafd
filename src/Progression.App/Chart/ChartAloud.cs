using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Plots;

namespace Progression.App.Chart;

/// <summary>The chart in words: what was measured and what to expect, week by week.</summary>
internal static class ChartAloud
{
    public static ScreenAloud<ChartState> Words { get; } = new()
    {
        Here = Here,
        Read = (state, part) => part.Length == 0 && state.Mode == ChartMode.Plot && state.Subject is { } subject ? Whole(state, subject) : part.Length == 0 ? Here(state) : null,
        Go = Go,
    };

    private static IEnumerable<string>? Here(ChartState state) => (state.Mode, state.Subject) switch
    {
        (ChartMode.Help, _) => null,
        (_, null) => ["Nothing has been measured yet, so there is nothing to chart."],
        (ChartMode.Numbers, { } subject) => Whole(state, subject),
        (ChartMode.Why, _) => RowWords.Of(ChartPicture.PageLines(state, RowWords.Unbroken)),
        (_, { } subject) => [$"{subject.Measure.Title}. {ChartText.AtCursor(state, subject)}", .. subject.Forecast is null ? [$"No forecast: {subject.WhyNot}"] : Array.Empty<string>()],
    };

    private static IEnumerable<string> Whole(ChartState state, ChartSubject subject) =>
    [
        ChartText.Heading(subject.Measure) + ".",
        .. Enumerable.Range(1, state.LastWeek).Select(week => ChartText.AtCursor(state with { Week = week }, subject)),
        .. RowWords.Of(ChartText.Pane(state, subject, RowWords.Unbroken)).Skip(1),
    ];

    // "week 8", "flexion".
    private static ChartState? Go(ChartState state, string words)
    {
        string[] asked = words.Split(' ');
        return asked is ["week", var number] && int.TryParse(number, out int week) && week >= 1 && week <= state.LastWeek ? state.AtWeek(week)
            : SpokenNames.Fitting(words, state.Subjects.Select(subject => subject.Measure.Title)) is { Count: > 0 } found ? state.To(found[0])
            : null;
    }
}
