using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Progression.Core.Documents;
using Progression.Core.Entry;
using UglyToad.PdfPig.Writer;

namespace Progression.Exchange.Pdf;

/// <summary>
/// A document as PDF with its letters embedded. On every page stand its mark, what tells it from another's, and which page it is of how many. The same
/// document gives the same file, byte by byte. It is not tagged for screen readers: text and HTML are for those.
/// </summary>
public static class DocumentPdf
{
    private const double FootShare = 0.7;
    private const double LeastFoot = 6;

    /// <summary>The file, or why there is none: letters that its font does not have, or that are not set one by one from the left.</summary>
    public static PdfPrint Of(Document document, PdfLook look)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(look);
        PdfPrint print = Printed(document, look);
        while (print.Pages > 1 && look.ShrinkTo is double least && look.BodyPoints > least)
        {
            look = look.Smaller;
            print = Printed(document, look);
        }

        return print;
    }

    private static PdfPrint Printed(Document document, PdfLook look)
    {
        PdfDocumentBuilder builder = new() { DocumentInformation = { Title = SafeText.OneLine(document.Title), Producer = "Progression" } };
        PdfPageBuilder first = builder.AddPage(look.Page.Width, look.Page.Height);
        PdfLetters letters = new(builder, first);
        ImmutableArray<PdfPiece> pieces = new PdfBlocks(look, letters).Of(document);
        PdfFoot foot = new(document, look, letters, new PdfType(Math.Max(LeastFoot, look.BodyPoints * FootShare)));
        var pages = PdfPages.Of(pieces, look.MarginPoints, foot.Top);
        if (letters.Missing.Count > 0)
        {
            return new PdfPrint(null, $"The print's letters lack, or cannot join, what stands in the text: {SafeText.OneLine(string.Join(' ', letters.Missing.Take(10)))}. Take the page for a browser or plain text instead.");
        }

        for (int index = 0; index < pages.Length; index++)
        {
            PdfPen pen = new(index == 0 ? first : builder.AddPage(look.Page.Width, look.Page.Height), letters);
            foreach ((PdfPiece piece, double top) in pages[index])
            {
                piece.Draw(pen, top);
            }

            foot.Draw(pen, $"{(index + 1).ToString(CultureInfo.InvariantCulture)} / {pages.Length.ToString(CultureInfo.InvariantCulture)}");
        }

        return new PdfPrint(Named(builder.Build()), null) { Pages = pages.Length, BodyPoints = look.BodyPoints };
    }

    /// <summary>Puts the hash of the file where the library put a random name, so that a print can be made again and compared.</summary>
    private static byte[] Named(byte[] file)
    {
        int from = file.AsSpan().LastIndexOf("/ID ["u8) + 5;
        int[] digits = [.. Enumerable.Range(from, file.AsSpan(from).IndexOf((byte)']')).Where(at => char.IsAsciiHexDigit((char)file[at]))];
        foreach (int at in digits)
        {
            file[at] = (byte)'0';
        }

        byte[] hash = Encoding.ASCII.GetBytes(Convert.ToHexString(SHA256.HashData(file)));
        foreach ((int at, byte digit) in digits.Zip(hash))
        {
            file[at] = digit;
        }

        return file;
    }
}
