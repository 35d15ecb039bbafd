using Progression.Core.Documents;
using Progression.Core.Notes;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Core.Reviews;
using Progression.Exchange.Pdf;
using UglyToad.PdfPig;

namespace Progression.Exchange.Tests.Pdf;

/// <summary>The visit card and the progress note on paper.</summary>
public sealed class ClinicianPrintTests
{
    private static readonly NoteOrder Order = new()
    {
        Patient = Papers.Example with { Sessions = [.. Papers.Example.Sessions, new SessionLog(new DateOnly(2026, 3, 8), 15) { Peak = Current.FromMilliamperes(42), StrongContractionTolerated = true, Comfort = 6 }] },
        Plan = Papers.Plan,
        Library = Papers.Library,
        Today = new DateOnly(2026, 3, 10),
        Standing = ReviewStanding.NotSaved,
        Clinic = "Knee clinic, second floor.",
        Contact = "ext. 12",
    };

    // A6 is 105 x 148 mm (ISO 216): 297.6 x 419.5 points.
    [Fact]
    public void The_card_of_each_week_is_one_small_page_that_can_be_read()
    {
        Assert.All(Enumerable.Range(1, 6), week =>
        {
            Document card = VisitCard.Of(Order, week);
            PdfPrint print = DocumentPdf.Of(card, PdfLook.Card);
            Assert.Equal((1, true), (print.Pages, print.BodyPoints >= 6.5));
            TestContext.Current.TestOutputHelper!.WriteLine($"week {week}: {print.BodyPoints} pt");
            Assert.Empty(Missing(card, print.Bytes!));
            using PdfDocument pdf = PdfDocument.Open(print.Bytes!);
            Assert.Equal((298, 420), ((int)Math.Round(pdf.GetPage(1).Width), (int)Math.Round(pdf.GetPage(1).Height)));
            Assert.All(pdf.GetPage(1).Letters, letter => Assert.InRange(letter.PointSize, 6, 15));
        });
        Assert.Contains("42 mA peak on 2026-03-08, strong contraction tolerated, comfort 6 of 10", string.Join(' ', Prints.Words(VisitCard.Of(Order, 2))), StringComparison.Ordinal);
    }

    [Fact]
    public void What_has_no_room_on_one_card_even_in_small_letters_goes_on_on_another()
    {
        Document card = VisitCard.Of(Order with { Patient = Order.Patient with { Surgeon = new SurgeonLimits { Text = string.Join(' ', Enumerable.Repeat("Slowly, and with the splint on at night.", 60)) } } }, 2);
        PdfPrint print = DocumentPdf.Of(card, PdfLook.Card);

        Assert.InRange(print.Pages, 2, 4);
        Assert.Empty(Missing(card, print.Bytes!));
    }

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void The_note_has_every_word_on_paper_in_11_points_and_its_mark_on_every_page(PaperSize paper)
    {
        Document note = ProgressNote.Of(Order);
        PdfPrint print = DocumentPdf.Of(note, PdfLook.Note(paper));

        Assert.Empty(Missing(note, print.Bytes!));
        Assert.All(Prints.Pages(print.Bytes!), page => Assert.Contains("UNSIGNED DRAFT. No supervisor has signed the plan as it stands here. Progress note and plan of care, EXAMPLE-07. Written 2026-03-10", string.Join(' ', page), StringComparison.Ordinal));
        using PdfDocument pdf = PdfDocument.Open(print.Bytes!);
        Assert.Contains(pdf.GetPages().SelectMany(page => page.Letters), letter => Math.Abs(letter.PointSize - 11) < 0.01);
    }

    // Cells of a row stand beside one another, so their lines come mixed: words are counted, not put in order.
    private static IEnumerable<string> Missing(Document document, byte[] print)
    {
        Dictionary<string, int> there = Prints.Outside(print).CountBy(word => word).ToDictionary();
        return [.. Prints.Words(document).CountBy(word => word).Where(word => there.GetValueOrDefault(word.Key) < word.Value).Select(word => $"{word.Key} {word.Value}")];
    }
}
