using Progression.Core.Documents;
using Progression.Core.Notes;
using Progression.Core.Reviews;
using Progression.Core.Sheets;
using Progression.Exchange.Pdf;

namespace Progression.App.Papers;

/// <summary>What leaves the workbook to be read.</summary>
public static class DocumentPapers
{
    /// <summary>A week in plain words for the patient.</summary>
    public static Paper HomeSheet { get; } =
        OfDocument("home sheet", "a week in plain words for the patient", Sheet, order => PdfLook.LargePrint(Size(order))) with { IsOfAWeek = true };

    /// <summary>A week of stim for whoever sets the stimulator.</summary>
    public static Paper VisitCard { get; } =
        OfDocument("visit card", "settings, pads, dose and cautions of a week of stim, on A6", order => Core.Notes.VisitCard.Of(Note(order), order.Week), _ => PdfLook.Card) with { IsOfAWeek = true };

    /// <summary>The note for the record.</summary>
    public static Paper ProgressNote { get; } =
        OfDocument("progress note", "plan of care, goals, changes, phase, sessions, findings", order => Core.Notes.ProgressNote.Of(Note(order)), order => PdfLook.Note(Size(order)));

    private static Paper OfDocument(string name, string explains, Func<PaperOrder, Document> document, Func<PaperOrder, PdfLook> look) => new()
    {
        Name = name,
        Explains = explains,
        Formats = [PaperFormat.Text, PaperFormat.Html, PaperFormat.Pdf, PaperFormat.Markdown],
        Make = (order, format) => format switch
        {
            PaperFormat.Html => PaperMade.Of(DocumentHtml.Page(document(order), HtmlPoints(look(order)))),
            PaperFormat.Markdown => Lines(DocumentMarkdown.Lines(document(order))),
            PaperFormat.Pdf => Pdf(DocumentPdf.Of(document(order), look(order))),
            _ => Lines(DocumentText.Lines(document(order))),
        },
    };

    // A screen has no small pages: what is not for the patient is as large as a note.
    private static double HtmlPoints(PdfLook look) => Math.Max(look.BodyPoints, PdfLook.Note(look.Paper).BodyPoints);

    private static PaperMade Lines(IEnumerable<string> lines) => PaperMade.Of(string.Join('\n', lines) + "\n");

    private static PaperMade Pdf(PdfPrint print) => print.Bytes is { } bytes ? PaperMade.Of(bytes) : PaperMade.Not(print.WhyNot!);

    private static PaperSize Size(PaperOrder order) => order.OnLetter ? PaperSize.Letter : PaperSize.A4;

    private static NoteOrder Note(PaperOrder order) => new()
    {
        Patient = order.Patient,
        Plan = order.Plan,
        Library = order.Library,
        Today = order.Today,
        Standing = order.Standing,
        ChainHead = order.ChainHead,
        Clinic = order.Clinic,
        Contact = order.Contact,
    };

    private static Document Sheet(PaperOrder order) => Core.Sheets.HomeSheet.Of(
        new HomeSheetOrder
        {
            Patient = order.Patient,
            Plan = order.Plan,
            Library = order.Library,
            Words = order.Words,
            Mark = PaperMark.Of(order),
            IsSigned = order.Standing.State == SignatureState.Signed,
            Clinic = order.Clinic,
            Contact = order.Contact,
        },
        order.Week);
}
