using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plots;

namespace Progression.App.Chart;

/// <summary>The chart of one measure at one moment. It knows no terminal and no store.</summary>
public sealed record ChartState
{
    private const int NearWeeks = 12;

    /// <summary>Whose knee it is, in words.</summary>
    public required string Title { get; init; }

    /// <summary>The measures that can be charted.</summary>
    public required ImmutableArray<ChartSubject> Subjects { get; init; }

    /// <summary>Weeks since the operation, today.</summary>
    public required double Today { get; init; }

    /// <summary>The measure shown, from 0.</summary>
    public int Index { get; init; }

    /// <summary>The week under the cursor: that many weeks since the operation.</summary>
    public int Week { get; init; }

    /// <summary>Whether all weeks are shown that the forecast reaches to, instead of the near ones.</summary>
    public bool IsWhole { get; init; }

    /// <summary>What the keys mean.</summary>
    public ChartMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public ChartMode HelpFor { get; init; }

    /// <summary>Lines of a page or the pane that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The measure shown; null when there is none to show.</summary>
    public ChartSubject? Subject => Subjects.IsEmpty ? null : Subjects[Index];

    /// <summary>The last week shown: the forecast's end, or the near weeks and whatever was measured after them.</summary>
    public int LastWeek => IsWhole ? Furthest : Math.Min(Math.Max(NearWeeks, Beyond), Furthest);

    private int Beyond => (int)Math.Ceiling(Math.Max(Today, LastDot)) + 2;

    private double LastDot => Subject is { Dots.IsEmpty: false } subject ? subject.Dots[^1].Week : 0;

    private int Furthest => Math.Max(Math.Max(NearWeeks, (int)Math.Ceiling(LastDot)), Subject?.Forecast is { Points.IsEmpty: false } forecast ? (int)Math.Ceiling(forecast.Points[^1].Week) : 0);

    /// <summary>The screen at its start: the near weeks, the cursor on the coming week's end.</summary>
    /// <param name="desk">What the chart reads.</param>
    /// <param name="measure">The measure to begin at; null, or one that is not there, for the first.</param>
    public static ChartState Open(ChartDesk desk, string? measure = null)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ImmutableArray<ChartSubject> subjects = ChartSubject.All(desk.Case, desk.Library, desk.Forecasts, desk.Measures);
        double today = ChartSubject.Weeks(desk.Case, desk.Today);
        ChartState state = new() { Title = CaseTitle.Of(desk.Case), Subjects = subjects, Today = today };
        return state.To(subjects.ToList().FindIndex(subject => subject.Measure.Id == measure)).AtWeek((int)Math.Ceiling(today));
    }

    /// <summary>The state with another measure; stays at the ends.</summary>
    public ChartState To(int index) => (this with { Index = Math.Clamp(index, 0, Math.Max(0, Subjects.Length - 1)), Scroll = 0, Status = "" }).AtWeek(Week);

    /// <summary>The state with the cursor on another week; stays within the weeks shown.</summary>
    public ChartState AtWeek(int week) => this with { Week = Math.Clamp(week, 1, LastWeek), Scroll = 0, Status = "" };
}

/// <summary>What the chart reads of a case.</summary>
/// <param name="Case">The case.</param>
/// <param name="Library">The clinical library.</param>
/// <param name="Forecasts">The forecasts by measure, with the reasons where there is none.</param>
/// <param name="Measures">The ids of the measures in the order in which they are gone through.</param>
/// <param name="Today">The present day.</param>
public sealed record ChartDesk(
    Case Case, ClinicalLibrary Library, ImmutableSortedDictionary<string, ForecastAnswer> Forecasts, ImmutableArray<string> Measures, DateOnly Today)
{
    /// <summary>The desk of a case whose visits have been compared: its measures in the comparison's order.</summary>
    public static ChartDesk For(Case patient, ClinicalLibrary library, (Comparison Visits, ImmutableSortedDictionary<string, ForecastAnswer> Forecasts) found, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(found.Visits);
        return new(patient, library, found.Forecasts, [.. found.Visits.Rows.Select(row => row.Measure.Id)], today);
    }
}
