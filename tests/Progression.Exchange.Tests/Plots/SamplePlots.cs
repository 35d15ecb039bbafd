using Progression.Core.Drafting;
using Progression.Core.Plots;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Library;
using Progression.SeedDemo;

namespace Progression.Exchange.Tests.Plots;

/// <summary>Plots of the invented caseload's first case, on a day that stays the same.</summary>
internal static class SamplePlots
{
    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly ClinicalLibrary Library = LibraryReader.Default();
    private static readonly Case Showcase = DemoCaseload.Make(Today, Library)[0];

    internal static PlotContent Lag { get; } = Course(MeasureIds.Lag);

    internal static PlotContent Flexion { get; } = Course(MeasureIds.FlexionActive);

    internal static PlotContent Dose { get; } = DosePlot.Of(PlanDraft.Draft(DemoCaseload.AtFirstVisit(Showcase), Library).Value!, Showcase, Library);

    private static PlotContent Course(string measure) => CoursePlot.Of(
        ChartSubject.Of(Showcase, Library, Library.Measures[measure], Forecasting.Of(Showcase, Library, measure, Today)), Showcase.Code, ChartSubject.Weeks(Showcase, Today));
}
