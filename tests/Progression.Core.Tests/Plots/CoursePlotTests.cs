using Progression.Core.Plots;
using Progression.Core.Forecasts;
using Progression.Core.Library;

namespace Progression.Core.Tests.Plots;

public sealed class CoursePlotTests
{
    private static readonly Knee Lagging = Knee.Well.Seen(7, Look.Empty.With(MeasureIds.ExtensionPassive, 3).Lag(14)).Seen(14, Look.Empty.With(MeasureIds.ExtensionPassive, 2).Lag(10));

    [Fact] // 1.645 errors of 4.243 deg, the root of the sum of the squares of two of 3 deg.
    public void Measured_values_stand_on_their_weeks_with_the_error_to_both_sides()
    {
        PlotPart.Marks dots = Marks(Of(Lagging, MeasureIds.Lag), PlotForm.Disc);

        Assert.Equal([(1, 14), (2, 10)], dots.Points.Select(dot => (dot.X, dot.Y)));
        Assert.Equal(6.98, dots.Points[0].High!.Value - 14, 0.01);
        Assert.Equal(6.98, 14 - dots.Points[0].Low!.Value, 0.01);
    }

    [Fact] // Milestones of the shipped library for the lag up to week 12: 10 deg, 5 deg and 3 deg in weeks 1, 3 and 12.
    public void Milestones_that_drive_the_plan_stand_in_their_weeks()
    {
        PlotPart.Marks goals = Marks(Of(Lagging, MeasureIds.Lag), PlotForm.Diamond);

        Assert.Equal([(1, 10), (3, 5), (12, 3)], goals.Points.Select(goal => (goal.X, goal.Y)));
        Assert.Equal(["≤ 10, week 1", "≤ 5, week 3", "≤ 3, week 12"], goals.Points.Select(goal => goal.Label));
    }

    [Fact]
    public void The_middle_and_both_bands_are_those_of_the_forecast()
    {
        PlotContent content = Of(Lagging, MeasureIds.FlexionActive, Bending);
        Forecast forecast = Forecasting.Of(Bending.Case, Knee.Library, MeasureIds.FlexionActive, Knee.Day(14)).Forecast!;
        PlotPart.Range[] bands = [.. content.Parts.OfType<PlotPart.Range>()];

        Assert.Equal([false, true], bands.Select(band => band.IsDark));
        Assert.Equal((forecast.At(6).Low90, forecast.At(6).High90), At(bands[0], 6));
        Assert.Equal((forecast.At(6).Low80, forecast.At(6).High80), At(bands[1], 6));
        Assert.Equal(forecast.At(6).Median, content.Parts.OfType<PlotPart.Line>().First().Points.Single(point => point.X == 6).Y);
    }

    [Fact] // No course of the lag is published; that of extension reaches to week 8, beyond which the line is dotted and goes on where the dashed one ends.
    public void Where_no_published_data_reach_the_middle_is_dotted()
    {
        PlotPart.Line[] lines = [.. Of(Lagging, MeasureIds.ExtensionPassive).Parts.OfType<PlotPart.Line>()];

        Assert.Equal(PlotStroke.Dashed, lines[0].Stroke);
        Assert.All(lines[1..], line => Assert.Equal(PlotStroke.Dotted, line.Stroke));
        Assert.All(lines[1..], line => Assert.Equal(lines[0].Points[^1], line.Points[0]));
    }

    [Theory] // Two weeks beyond today, 12 at least.
    [InlineData(2, 12)]
    [InlineData(11.2, 14)]
    [InlineData(25.9, 26)]
    public void Weeks_run_from_the_operation_to_two_beyond_today(double today, double last)
    {
        PlotContent content = CoursePlot.Of(ChartSubject.Of(Lagging.Case, Knee.Library, Knee.Library.Measures[MeasureIds.Lag], null), Lagging.Case.Code, today);

        Assert.Equal((0, last), (content.Across.Ticks[0], content.Across.Ticks[^1]));
    }

    [Fact]
    public void It_is_titled_by_the_code_and_its_axes_have_units()
    {
        PlotContent content = Of(Lagging, MeasureIds.Lag);

        Assert.Equal(("Extension lag, K-001", "Extension lag, deg"), (content.Title, content.Up.Label));
        Assert.StartsWith("Weeks since the operation", content.Across.Label, StringComparison.Ordinal);
    }

    [Fact] // 0 to 4, a whole step each; what the title has in brackets would not fit beside the axis.
    public void A_scale_of_steps_is_shown_whole_and_by_steps()
    {
        PlotContent effusion = Of(Knee.Well.Seen(7, Look.Empty.With(MeasureIds.Effusion, 2)), MeasureIds.Effusion);

        Assert.Equal([0, 1, 2, 3, 4], effusion.Up.Ticks);
        Assert.Equal("Effusion by the stroke test", effusion.Up.Label);
        Assert.Equal("Value, %", Of(Lagging, MeasureIds.PreOpShare).Up.Label);
    }

    [Fact]
    public void Its_words_tell_what_it_shows()
    {
        string words = Of(Lagging, MeasureIds.Lag).Words;

        Assert.Contains("14 deg on 2026-03-09, week 1; 10 deg on 2026-03-16, week 2", words, StringComparison.Ordinal);
        Assert.Contains("Extension lag 5 deg or less by week 3", words, StringComparison.Ordinal);
        Assert.Contains("less is better", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_forecast_it_says_why_and_draws_no_band()
    {
        PlotContent content = CoursePlot.Of(
            ChartSubject.Of(Lagging.Case, Knee.Library, Knee.Library.Measures[MeasureIds.Lag], new ForecastAnswer(null, "A red flag is open.")), Lagging.Case.Code, 2);

        Assert.Equal("No forecast: A red flag is open.", content.Note);
        Assert.Empty(content.Parts.OfType<PlotPart.Range>());
        Assert.Contains("A red flag is open.", content.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_drawn_lies_between_the_axes()
    {
        PlotContent content = Of(Bending, MeasureIds.FlexionActive, Bending);

        Assert.All(content.Parts.OfType<PlotPart.Marks>().SelectMany(part => part.Points), mark =>
        {
            Assert.InRange(mark.X, content.Across.From, content.Across.To);
            Assert.InRange(mark.High ?? mark.Y, content.Up.From, content.Up.To);
            Assert.InRange(mark.Low ?? mark.Y, content.Up.From, content.Up.To);
        });
    }

    private static Knee Bending => Knee.Well.Seen(7, Look.Empty.With(MeasureIds.FlexionActive, 72)).Seen(14, Look.Empty.With(MeasureIds.FlexionActive, 84));

    private static PlotContent Of(Knee knee, string measure, Knee? other = null)
    {
        Knee of = other ?? knee;
        return CoursePlot.Of(ChartSubject.Of(of.Case, Knee.Library, Knee.Library.Measures[measure], Forecasting.Of(of.Case, Knee.Library, measure, Knee.Day(14))), of.Case.Code, 2);
    }

    private static PlotPart.Marks Marks(PlotContent content, PlotForm form) => content.Parts.OfType<PlotPart.Marks>().Single(part => part.Mark == form);

    private static (double Low, double High) At(PlotPart.Range band, double week) => band.Points.Where(point => point.X == week).Select(point => (point.Low, point.High)).Single();
}
