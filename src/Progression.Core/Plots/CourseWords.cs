using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Plots;

/// <summary>The course of a measure in words, for whoever does not see the plot.</summary>
internal static class CourseWords
{
    private static readonly ImmutableArray<double> Weeks = [1, 2, 3, 4, 6, 8, 12, 26];

    internal static string Of(ChartSubject subject, CaseCode code, (ImmutableArray<ForecastPoint> Points, ImmutableArray<Milestone> Goals) at)
    {
        Measure measure = subject.Measure;
        string unit = measure.Unit == "1" ? "" : $" {measure.Unit}";
        string better = measure.Better == Direction.HigherIsBetter ? "more is better" : "less is better";
        string measured = subject.Dots.IsEmpty ? "Nothing measured since the operation."
            : "Measured: " + string.Join("; ", subject.Dots.Select(dot =>
                $"{Number.Text(dot.Value, 1)}{unit} on {dot.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, week {Number.Text(dot.Week, 1)}")) + ".";
        string expected = subject.Forecast is null ? $"No forecast: {subject.WhyNot}"
            : "Expected: " + string.Join("; ", at.Points.Where(point => Weeks.Contains(point.Week)).Select(point => $"week {Number.Text(point.Week)} {ForecastWords.Of(point, measure)}")) + ".";
        string goals = at.Goals.IsEmpty ? ""
            : " Milestones: " + string.Join("; ", at.Goals.Select(goal => $"{goal.Title} by week {Number.Text(goal.Week, 1)}")) + ".";
        return $"{measure.Title}{(unit == "" ? "" : $" in{unit}")} of {code} by weeks since the operation; {better}. {measured} {expected}{goals}";
    }
}
