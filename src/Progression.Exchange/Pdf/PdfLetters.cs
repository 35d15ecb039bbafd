using System.Text;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Writer;

namespace Progression.Exchange.Pdf;

/// <summary>The letters of a print: how wide a text is, how it is broken into lines, and which letters cannot be shown.</summary>
/// <remarks>Letters are set one after another from the left: a script that joins them or runs from the right would be wrong, so it is refused.</remarks>
internal sealed class PdfLetters
{
    private const char FirstOfOtherWays = '\u0590';
    private const char LastOfOtherWays = '\u1DFF';
    private const char FirstMark = '\u0300';
    private const char LastMark = '\u036F';

    private readonly PdfPageBuilder _ruler;
    private readonly (PdfDocumentBuilder.AddedFont Plain, PdfDocumentBuilder.AddedFont Bold) _fonts;
    private readonly Dictionary<(char, bool), double> _widths = [];
    private readonly SortedSet<string> _missing = new(StringComparer.Ordinal);

    /// <param name="builder">The file the letters are for.</param>
    /// <param name="ruler">Any page, to measure on.</param>
    internal PdfLetters(PdfDocumentBuilder builder, PdfPageBuilder ruler)
    {
        _ruler = ruler;
        _fonts = (builder.AddTrueTypeFont(Font("fonts/DejaVuSans.ttf")), builder.AddTrueTypeFont(Font("fonts/DejaVuSans-Bold.ttf")));
    }

    /// <summary>The letters that were asked for and cannot be shown.</summary>
    internal IReadOnlyCollection<string> Missing => _missing;

    /// <summary>The font.</summary>
    internal PdfDocumentBuilder.AddedFont Of(bool bold) => bold ? _fonts.Bold : _fonts.Plain;

    /// <summary>Width of a text.</summary>
    internal double Width(string text, double size, bool bold) => size * text.Sum(letter => Width(letter, bold));

    /// <summary>The widest word of a text, which a line should not be narrower than.</summary>
    internal double Word(string text, double size, bool bold) => text.Split(' ').Max(word => Width(word, size, bold));

    /// <summary>The lines of a text, none wider than asked; a word that is too wide by itself is broken.</summary>
    internal IReadOnlyList<string> Lines(string text, double size, bool bold, double width)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Broken(word, size, bold, width)))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Width(longer, size, bold) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        lines.Add(line);
        return lines;
    }

    private IEnumerable<string> Broken(string word, double size, bool bold, double width)
    {
        StringBuilder part = new();
        double used = 0;
        foreach (char letter in word)
        {
            double more = size * Width(letter, bold);
            if (part.Length > 0 && used + more > width)
            {
                yield return part.ToString();
                part.Clear();
                used = 0;
            }

            part.Append(letter);
            used += more;
        }

        yield return part.ToString();
    }

    private double Width(char letter, bool bold)
    {
        if (!_widths.TryGetValue((letter, bold), out double width))
        {
            width = _widths[(letter, bold)] = Measured(letter, bold);
        }

        return width;
    }

    // The library tells that a letter is missing by an exception alone.
    private double Measured(char letter, bool bold)
    {
        if (letter is not (>= FirstMark and <= LastMark or >= FirstOfOtherWays and <= LastOfOtherWays))
        {
            try
            {
                return _ruler.MeasureText(letter.ToString(), 1, new PdfPoint(0, 0), Of(bold)).Sum(one => one.EndBaseLine.X - one.StartBaseLine.X);
            }
            catch (InvalidOperationException)
            {
            }
        }

        _missing.Add(char.IsSurrogate(letter) ? "pictures and rare letters" : letter.ToString());
        return 1;
    }

    private static byte[] Font(string name)
    {
        using Stream font = typeof(PdfLetters).Assembly.GetManifestResourceStream(name)!;
        using MemoryStream bytes = new();
        font.CopyTo(bytes);
        return bytes.ToArray();
    }
}
