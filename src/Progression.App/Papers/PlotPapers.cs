using Progression.Core.Documents;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Plots;
using Progression.Exchange.Plots;

namespace Progression.App.Papers;

/// <summary>What leaves the workbook as a drawing.</summary>
public static class PlotPapers
{
    /// <summary>One measure since the operation, with what usually follows and the milestones.</summary>
    public static Paper Course { get; } = OfPlot("course plot", "one measure, its forecast and milestones", OfCourse) with { IsOfAMeasure = true };

    /// <summary>Stimulated and voluntary contractions by week.</summary>
    public static Paper Dose { get; } = OfPlot("dose plot", "stim and active work by week", OfDose);

    private static Paper OfPlot(string name, string explains, Func<PaperOrder, PlotContent> content) => new()
    {
        Name = name,
        Explains = explains,
        Formats = [PaperFormat.Svg, PaperFormat.Png, PaperFormat.Text],
        Make = (order, format) => format switch
        {
            PaperFormat.Png => PaperMade.Of(PlotPicture.Png(content(order))),
            PaperFormat.Text => PaperMade.Of(Told(content(order))),
            _ => PaperMade.Of(PlotPicture.Svg(content(order))),
        },
    };

    // A sentence each, for whoever reads it line by line.
    private static string Told(PlotContent plot)
    {
        IEnumerable<Block> sentences = plot.Words.Split(". ").Select(sentence => new Block.Paragraph(sentence.TrimEnd('.') + "."));
        return string.Join('\n', DocumentText.Lines(new Document(plot.Title, plot.Note ?? "", true, [.. sentences], "en"))) + "\n";
    }

    private static PlotContent OfCourse(PaperOrder order)
    {
        Measure measure = order.Library.Measures[order.Measure ?? MeasureIds.Lag];
        ForecastAnswer forecast = Forecasting.Of(order.Patient, order.Library, measure.Id, order.Today);
        return CoursePlot.Of(ChartSubject.Of(order.Patient, order.Library, measure, forecast), order.Patient.Code, ChartSubject.Weeks(order.Patient, order.Today));
    }

    // It shows the plan, so it tells whether that is signed.
    private static PlotContent OfDose(PaperOrder order)
    {
        PlotContent plot = DosePlot.Of(order.Plan, order.Patient, order.Library);
        return plot with { Note = $"{PaperMark.Of(order)} {plot.Note}" };
    }
}
