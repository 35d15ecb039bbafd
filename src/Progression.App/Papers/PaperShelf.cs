using System.Collections.Immutable;

namespace Progression.App.Papers;

/// <summary>Every paper there is. A new one is one entry here.</summary>
public static class PaperShelf
{
    /// <summary>All, in the order in which they are offered.</summary>
    public static ImmutableArray<Paper> All { get; } =
    [
        DocumentPapers.HomeSheet, DocumentPapers.VisitCard, DocumentPapers.ProgressNote, PlotPapers.Course, PlotPapers.Dose,
        ExchangePapers.Measures, ExchangePapers.Sessions, ExchangePapers.Plan, ExchangePapers.Calendar, ExchangePapers.Bundle,
    ];
}
