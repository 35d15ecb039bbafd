using System.Collections.Immutable;
using System.Text;
using Bogus;
using Progression.Records.Library;

namespace Progression.Records.Tests.Library;

/// <summary>Whatever stands in a clinic's file, reading it ends in a whole library or in problems, never in an exception.</summary>
public sealed class LibraryFuzzTests
{
    private static readonly LibraryLayer Shipped = LibraryLayer.Shipped();

    public static TheoryData<string> Parts => [.. LibraryPart.All.Select(part => part.Name)];

    private static LibraryResult Over(string part, string text)
    {
        LibraryFile file = LibraryFile.Of(part + ".yaml", Encoding.UTF8.GetBytes(text));
        LibraryLayer clinic = new(ImmutableDictionary<string, LibraryFile>.Empty.Add(part, file), file.Document.Problems);
        LibraryResult result = LibraryReader.Read(Shipped, clinic);
        Assert.Equal(result.Library is null, !result.Problems.IsEmpty);
        return result;
    }

    private static string ShippedText(string part) => Encoding.UTF8.GetString(Shipped.Files[part].Bytes.AsSpan());

    [Theory]
    [MemberData(nameof(Parts))]
    public void The_shipped_file_laid_over_itself_is_good(string part) => Assert.NotNull(Over(part, ShippedText(part)).Library);

    [Theory]
    [MemberData(nameof(Parts))]
    public void No_strange_value_makes_the_reader_fail(string part)
    {
        string[] lines = ShippedText(part).Split('\n');
        Randomizer random = new(20_261_125);
        string[] strange = ["", "~", "[]", "{}", "[1, 2]", "{ a: b }", "-1", "1e9", "99999999999999999999", "NaN", "yes", "open", "(from memory)", "5 (seen)", "\"\"", "0 s", "x x x"];
        for (int n = 0; n < 40; n++)
        {
            string[] changed = [.. lines];
            int line = random.Int(0, lines.Length - 2);
            int colon = changed[line].IndexOf(':', StringComparison.Ordinal);
            changed[line] = colon < 0 ? "" : changed[line][..(colon + 1)] + " " + random.ArrayElement(strange);
            Over(part, string.Join('\n', changed));
        }
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void No_lost_doubled_or_swapped_line_makes_the_reader_fail(string part)
    {
        string[] lines = ShippedText(part).Split('\n');
        Randomizer random = new(20_261_125);
        for (int n = 0; n < 40; n++)
        {
            List<string> changed = [.. lines];
            int line = random.Int(0, lines.Length - 2);
            int other = random.Int(0, lines.Length - 2);
            switch (n % 3)
            {
                case 0:
                    changed.RemoveAt(line);
                    break;
                case 1:
                    changed.Insert(other, lines[line]);
                    break;
                default:
                    (changed[line], changed[other]) = (lines[other], lines[line]);
                    break;
            }

            Over(part, string.Join('\n', changed));
        }
    }
}
