using System.Globalization;
using System.Text;
using Progression.Core.Entry;

namespace Progression.Core.Tests.Entry;

public sealed class SafeTextTests
{
    // Control ranges as ISO/IEC 6429 gives them: C0 is 00 to 1F, DEL is 7F, C1 is 80 to 9F.
    [Theory]
    [InlineData(0x00, 0x1F)]
    [InlineData(0x7F, 0x7F)]
    [InlineData(0x80, 0x9F)]
    public void Shows_every_control_character_as_a_substitute(int first, int last)
    {
        for (int point = first; point <= last; point++)
        {
            Assert.Equal("a\uFFFDb", SafeText.OneLine($"a{(char)point}b"));
        }
    }

    // Bidirectional controls of Unicode Standard Annex 9, then joiners, marks of order and other invisible letters.
    [Theory]
    [InlineData(0x202A)]
    [InlineData(0x202B)]
    [InlineData(0x202C)]
    [InlineData(0x202D)]
    [InlineData(0x202E)]
    [InlineData(0x2066)]
    [InlineData(0x2067)]
    [InlineData(0x2068)]
    [InlineData(0x2069)]
    [InlineData(0x200E)]
    [InlineData(0x200F)]
    [InlineData(0x061C)]
    [InlineData(0x200B)]
    [InlineData(0x200C)]
    [InlineData(0x200D)]
    [InlineData(0x2060)]
    [InlineData(0xFEFF)]
    [InlineData(0x00AD)]
    [InlineData(0x2028)]
    [InlineData(0x2029)]
    [InlineData(0x034F)]
    [InlineData(0x3164)]
    [InlineData(0x2800)]
    [InlineData(0xFE0F)]
    [InlineData(0xE000)]
    [InlineData(0xE0041)]
    public void Shows_what_hides_or_turns_text_as_a_substitute(int point) =>
        Assert.Equal("a\uFFFDb", SafeText.OneLine("a" + new Rune(point) + "b"));

    [Theory]
    [InlineData(0xD83D)]
    [InlineData(0xDC00)]
    public void Shows_half_a_surrogate_pair_as_a_substitute(int half) => Assert.Equal("a\uFFFDb", SafeText.OneLine($"a{(char)half}b"));

    [Fact]
    public void A_colour_sequence_loses_its_power_and_stays_readable() =>
        Assert.Equal("\uFFFD[31mred", SafeText.OneLine("\u001b[31mred"));

    [Theory]
    [InlineData("straight-leg-raise 3x10 hold 5 s")]
    [InlineData("95° \u2265 90°, 300 \u00B5s, Zo\u00EB, \u0434\u0430, \u6F22\u5B57")]
    public void Leaves_ordinary_text_alone(string text) => Assert.Equal(text, SafeText.OneLine(text));

    [Fact]
    public void Nothing_given_is_the_empty_line() => Assert.Equal("", SafeText.OneLine(null));

    [Fact]
    public void Every_space_is_a_plain_space() => Assert.Equal("1 kg 2", SafeText.OneLine("1\u00A0kg\u20032"));

    [Fact]
    public void A_pile_of_marks_is_cut_to_two() => Assert.Equal("e\u0301\u0301\uFFFD\uFFFD", SafeText.OneLine("e\u0301\u0301\u0301\u0301"));

    [Fact]
    public void Lines_keep_their_breaks_and_nothing_else() =>
        Assert.Equal(["one", "two x", "th\uFFFDree"], SafeText.Lines("one\r\ntwo\tx\nth\u0007ree"));

    [Theory]
    [InlineData("abc", 3)]
    [InlineData("", 0)]
    [InlineData("e\u0301", 1)]
    [InlineData("\u6F22\u5B57", 4)]
    [InlineData("\uFFFD", 1)]
    [InlineData("\U0001F9B5", 2)]
    public void Counts_columns_as_a_terminal_does(string text, int columns) => Assert.Equal(columns, SafeText.Width(text));

    [Fact]
    public void Seven_bit_text_holds_printable_ascii_only() => Assert.Equal("95? ?s e ?", SafeText.Ascii("95° \u00B5s e\u0301 \u001b"));

    [Fact]
    public void No_character_at_all_gets_through_that_a_terminal_would_obey()
    {
        for (int point = 0; point <= 0x10FFFF; point++)
        {
            if (!Rune.IsValid(point))
            {
                continue;
            }
            foreach (Rune rune in SafeText.OneLine(new Rune(point).ToString()).EnumerateRunes())
            {
                Assert.False(Rune.IsControl(rune) || Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format, $"U+{point:X4}");
            }
        }
    }
}
