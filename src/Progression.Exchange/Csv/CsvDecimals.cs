using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>
/// What stands before the decimals in a file, decided once. A file with both marks is refused, and where the only marks could part thousands the person is
/// asked: 1,234 is a thousand times more in one country than in another.
/// </summary>
internal static partial class CsvDecimals
{
    private const string Allowed = "one mark for decimals in the whole file, a point or a comma, and none for thousands";

    /// <summary>The mark; null with the reason where it cannot be told.</summary>
    /// <param name="cells">Every cell that should hold a number.</param>
    /// <param name="separator">What parts the cells of the file.</param>
    /// <param name="said">What the person said; null for nothing.</param>
    public static (DecimalMark? Mark, ImmutableArray<ImportProblem> Problems) Of(IEnumerable<CsvCell> cells, char separator, DecimalMark? said)
    {
        ImmutableArray<(CsvCell Cell, Match Match)> numbers = [.. cells.Select(cell => (cell, Number().Match(cell.Text))).Where(one => one.Item2.Success)];
        ImmutableArray<(CsvCell Cell, Match Match)> points = [.. numbers.Where(one => one.Match.Groups[2].Value == ".")];
        ImmutableArray<(CsvCell Cell, Match Match)> commas = [.. numbers.Where(one => one.Match.Groups[2].Value == ",")];
        if (points.Length > 0 && commas.Length > 0)
        {
            return (null, Mixed(points, commas));
        }

        DecimalMark mark = commas.Length > 0 ? DecimalMark.Comma : points.Length > 0 ? DecimalMark.Point : said ?? DecimalMark.Point;
        ImmutableArray<(CsvCell Cell, Match Match)> marked = mark == DecimalMark.Comma ? commas : points;
        if (said is { } one && one != mark)
        {
            return (null, [marked[0].Cell.Refused($"The decimal mark was said to be a {Word(one)}.", $"a {Word(one)} before the decimals, and none for thousands")]);
        }

        bool isOpen = said is null && marked.Length > 0 && (mark == DecimalMark.Comma || separator != ',') && marked.All(number => number.Match.Groups[3].Length == 3 && number.Match.Groups[1].ValueSpan.TrimStart('-') is not "0");
        return isOpen
            ? (null, [marked[0].Cell.Refused($"The {Word(mark)} may part decimals or thousands, and no number of the file tells which.", $"--decimals {Word(mark)} where it parts decimals; a file without marks for thousands")])
            : (mark, []);
    }

    /// <summary>A cell with a point before its decimals, as everything of ours is written.</summary>
    public static string WithPoint(string text, DecimalMark mark) =>
        mark == DecimalMark.Comma && Number().Match(text) is { Success: true } match && match.Groups[2].Value == "," ? $"{match.Groups[1].Value}.{match.Groups[3].Value}{match.Groups[4].Value}" : text;

    // Each row of the fewer, so that it can be mended.
    private static ImmutableArray<ImportProblem> Mixed(ImmutableArray<(CsvCell Cell, Match Match)> points, ImmutableArray<(CsvCell Cell, Match Match)> commas) =>
    [
        .. (points.Length < commas.Length ? points : commas).Select(one => one.Cell.Refused(
            $"Decimals are written in two ways: with a point in {points[0].Cell.Place.At}, with a comma in {commas[0].Cell.Place.At}.", Allowed)),
    ];

    private static string Word(DecimalMark mark) => mark == DecimalMark.Comma ? "comma" : "point";

    [GeneratedRegex(@"^(-?[0-9]{1,15})([.,])([0-9]{1,15})([^0-9.,][^0-9,]{0,20})?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
