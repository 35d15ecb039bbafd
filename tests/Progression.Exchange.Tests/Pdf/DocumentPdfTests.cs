using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Documents;
using Progression.Exchange.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Progression.Exchange.Tests.Pdf;

/// <summary>Prints of a home sheet in large letters: what is on paper is what the document says, and nothing is parted that belongs together.</summary>
public sealed class DocumentPdfTests
{
    private static readonly Document Sheet = Papers.Sheet(week: 2);

    [Theory]
    [InlineData(PaperSize.A4, 595, 842)]
    [InlineData(PaperSize.Letter, 612, 792)]
    public void A_sheet_says_on_paper_what_it_says_by_the_word_of_two_readers(PaperSize paper, int width, int height)
    {
        byte[] print = Print(Sheet, paper);
        ImmutableArray<ImmutableArray<string>> pages = Prints.Pages(print);
        ImmutableArray<string> words = Prints.Words(Sheet);

        Assert.Empty(Prints.NotInOrder(words, pages.SelectMany(page => page)));
        Assert.Empty(Prints.NotInOrder(words, Prints.Outside(print)));
        // Nothing else is printed but the four figures of the drawing and the foot of each page: mark, title, whose it is, "2 / 6".
        int foot = Count(Sheet.Mark) + Count(Sheet.Title) + Count(Sheet.About!) + 3;
        Assert.Equal(words.Length + 4 + (pages.Length * foot), pages.Sum(page => page.Length));
        using PdfDocument pdf = PdfDocument.Open(print);
        Assert.All(pdf.GetPages(), page => Assert.Equal((width, height), ((int)Math.Round(page.Width), (int)Math.Round(page.Height))));
    }

    [Fact]
    public void Every_page_has_the_mark_whose_it_is_and_which_page_it_is()
    {
        ImmutableArray<ImmutableArray<string>> pages = Prints.Pages(Print(Sheet));

        Assert.InRange(pages.Length, 2, 9);
        Assert.All(pages.Select((page, index) => (Text: string.Join(' ', page), Number: index + 1)), page =>
        {
            Assert.Contains("UNSIGNED DRAFT. Do not use it until your therapist says so. Your exercises at home. Plan EXAMPLE-07, left knee", page.Text, StringComparison.Ordinal);
            Assert.EndsWith($"{page.Number.ToString(CultureInfo.InvariantCulture)} / {pages.Length.ToString(CultureInfo.InvariantCulture)}", page.Text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Letters_are_at_least_16_points_upright_and_embedded_and_lines_one_and_a_half_apart()
    {
        byte[] print = Print(Sheet);
        using PdfDocument pdf = PdfDocument.Open(print);
        foreach (Page page in pdf.GetPages())
        {
            Letter[] text = [.. page.Letters.Where(letter => letter.StartBaseLine.Y > 90)];
            Assert.All(text, letter => Assert.InRange(letter.PointSize, 16, 26));
            double[] feet = [.. text.Select(letter => Math.Round(letter.StartBaseLine.Y, 1)).Distinct().OrderDescending()];
            Assert.All(feet.Zip(feet.Skip(1)), pair => Assert.InRange(pair.First - pair.Second, 22, 400));
        }

        string[] fonts = Prints.Run("pdffonts", print).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];
        Assert.Equal(2, fonts.Length);
        Assert.All(fonts, font => Assert.Matches("DejaVuSans(-Bold)? .* yes ", font));
        Assert.DoesNotContain("Oblique", string.Join(' ', fonts), StringComparison.Ordinal);
    }

    [Fact]
    public void A_heading_is_never_the_last_of_its_page_and_an_exercise_keeps_its_boxes()
    {
        Document long_ = Sheet with { Blocks = [.. Enumerable.Range(0, 12).SelectMany(Part)] };
        string[] pages = [.. Prints.Pages(Print(long_)).Select(page => string.Join(' ', page))];

        Assert.InRange(pages.Length, 4, 40);
        Assert.All(Enumerable.Range(0, 12), part => Assert.Single(pages, page =>
            page.Contains($"Head{part}x", StringComparison.Ordinal) && page.Contains($"Step{part}x", StringComparison.Ordinal) && page.Contains($"Day{part}x", StringComparison.Ordinal)));
        Assert.All(pages, page => Assert.DoesNotContain(" Section UNSIGNED", page, StringComparison.Ordinal));

        static IEnumerable<Block> Part(int part) =>
        [
            new Block.Heading(2, "Section"), new Block.Paragraph("Tick a box."), new Block.Heading(3, $"Head{part}x"),
            new Block.Points([.. Enumerable.Repeat("One step after another.", part % 5), $"Step{part}x"], InOrder: true), new Block.Ticks([$"Day{part}x"], [part]),
        ];
    }

    [Fact]
    public void The_same_document_is_the_same_file() => Assert.Equal(Print(Sheet), Print(Sheet));

    [Theory]
    [InlineData("膝")]
    [InlineData("שלום")]
    [InlineData("e\u0301")]
    [InlineData("\U0001F9B5")]
    public void Letters_that_would_come_out_wrong_are_refused_with_what_to_do_instead(string text)
    {
        PdfPrint print = DocumentPdf.Of(Sheet with { Title = text }, PdfLook.LargePrint(PaperSize.A4));

        Assert.Null(print.Bytes);
        Assert.Contains("page for a browser", print.WhyNot, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Größe, łąka, ñandú, ő, ş")]
    [InlineData("Колено: 15 раз; γόνατο")]
    public void Other_languages_that_run_from_the_left_letter_by_letter_are_printed(string text) =>
        Assert.Empty(Prints.NotInOrder(text.Split(' '), Prints.Outside(Print(Sheet with { Blocks = [new Block.Paragraph(text)] }))));

    [Fact]
    public void Whatever_is_too_long_for_a_page_goes_on_on_the_next_and_nothing_is_lost()
    {
        string word = string.Concat(Enumerable.Repeat("abcdefghij", 60));
        ImmutableArray<string> many = [.. Enumerable.Range(1, 120).Select(number => $"line{number.ToString(CultureInfo.InvariantCulture)}")];
        Document wide = Sheet with
        {
            Blocks = [new Block.Paragraph(word), new Block.Notice("Long", many), new Block.Table(["Head", "Rest"], [.. many.Select(line => ImmutableArray.Create(line, string.Join(' ', many)))])],
        };
        ImmutableArray<ImmutableArray<string>> pages = Prints.Pages(Print(wide));

        Assert.All(many, line => Assert.Equal(122, pages.Sum(page => page.Count(one => one == line))));
        Assert.Contains(word, string.Concat(pages.SelectMany(page => page)), StringComparison.Ordinal);
        // The head of the table stands over its rows on each page that begins with one.
        Assert.InRange(pages.Count(page => page[0] == "Head"), 5, pages.Length);
    }

    private static byte[] Print(Document document, PaperSize paper = PaperSize.A4) => DocumentPdf.Of(document, PdfLook.LargePrint(paper)).Bytes!;

    private static int Count(string text) => text.Split(' ').Length;
}
