using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.Library;
using Progression.Core.Notes;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Reviews;

namespace Progression.Core.Tests.Notes;

/// <summary>Papers for clinicians about knees in the making, as one line of text each so that a break of a line hides nothing.</summary>
internal static class Written
{
    internal static NoteOrder Order(Knee knee, int today, PlanRevision? plan = null, ClinicalLibrary? library = null) => new()
    {
        Patient = knee.Case,
        Plan = plan ?? knee.Draft(library: library),
        Library = library ?? Knee.Library,
        Today = Knee.Day(today),
        Standing = ReviewStanding.NotSaved,
    };

    internal static string Text(Document document) => string.Join(' ', DocumentText.Lines(document, 200).SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)));

    internal static string Card(NoteOrder order, int week) => Text(VisitCard.Of(order, week));

    internal static string Note(NoteOrder order) => Text(ProgressNote.Of(order));

    /// <summary>The table under a heading of a note, a row each.</summary>
    internal static ImmutableArray<ImmutableArray<string>> Table(NoteOrder order, string heading) => ProgressNote.Of(order).Blocks
        .SkipWhile(block => block is not Block.Heading { Level: 2 } one || one.Text != heading).OfType<Block.Table>().First().Rows;

    internal static Knee Logged(this Knee knee, int day, double? peak, bool? tolerated, int contractions = 15) => knee with
    {
        Case = knee.Case with
        {
            Sessions = knee.Case.Sessions.Add(new SessionLog(Knee.Day(day), contractions)
            {
                Peak = peak is double current ? Current.FromMilliamperes(current) : null,
                StrongContractionTolerated = tolerated,
            }),
        },
    };
}
