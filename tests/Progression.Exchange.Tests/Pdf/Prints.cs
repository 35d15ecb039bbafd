using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Progression.Core.Documents;
using UglyToad.PdfPig;

namespace Progression.Exchange.Tests.Pdf;

/// <summary>What a print says, as two readers have it that know nothing of its writer's layout.</summary>
internal static class Prints
{
    /// <summary>The words of a document in its order, its title and mark first. What is drawn has no words.</summary>
    internal static ImmutableArray<string> Words(Document document) =>
        [.. Split(document.Title), .. Split(document.Mark), .. document.Blocks.SelectMany(Texts).SelectMany(Split)];

    /// <summary>The words of each page, by the library's own reader.</summary>
    internal static ImmutableArray<ImmutableArray<string>> Pages(byte[] print)
    {
        using PdfDocument pdf = PdfDocument.Open(print);
        return [.. pdf.GetPages().Select(page => page.GetWords().Select(word => word.Text).ToImmutableArray())];
    }

    /// <summary>The words by another reader: pdftotext of Debian's poppler-utils.</summary>
    internal static ImmutableArray<string> Outside(byte[] print) => [.. Split(Run("pdftotext", print, "-layout"))];

    /// <summary>What a tool of poppler-utils says of a print.</summary>
    internal static string Run(string tool, byte[] print, params ReadOnlySpan<string> options)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, print);
            ProcessStartInfo start = new(tool) { RedirectStandardOutput = true, StandardOutputEncoding = System.Text.Encoding.UTF8 };
            foreach (string word in (ReadOnlySpan<string>)[.. options, file, .. tool == "pdftotext" ? ["-"] : Array.Empty<string>()])
            {
                start.ArgumentList.Add(word);
            }

            using Process process = Process.Start(start)!;
            string answer = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
            return answer;
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>The words that are not found in their order among others; empty when all are.</summary>
    internal static IEnumerable<string> NotInOrder(IEnumerable<string> words, IEnumerable<string> among)
    {
        Queue<string> left = new(among);
        foreach (string word in words)
        {
            while (left.Count > 0 && left.Peek() != word)
            {
                left.Dequeue();
            }

            if (!left.TryDequeue(out _))
            {
                yield return word;
            }
        }
    }

    private static IEnumerable<string> Texts(Block block) => block switch
    {
        Block.Heading heading => [heading.Text],
        Block.Paragraph paragraph => [paragraph.Text],
        Block.Points points => points.Items.Select((item, index) => (points.InOrder ? (index + 1).ToString(CultureInfo.InvariantCulture) + "." : "•") + " " + item),
        Block.Ticks ticks => [.. ticks.Days, .. ticks.Times.Where(times => times == 0).Select(_ => "–")],
        Block.Notice notice => [notice.Title, .. notice.Items.Select(item => "• " + item)],
        Block.Table table => [.. table.Head, .. table.Rows.SelectMany(row => row)],
        _ => [],
    };

    private static string[] Split(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
