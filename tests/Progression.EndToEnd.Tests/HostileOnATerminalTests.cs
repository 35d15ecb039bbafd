using System.Globalization;
using System.Text.RegularExpressions;

namespace Progression.EndToEnd.Tests;

/// <summary>
/// The bytes a terminal is really sent while every screen shows a case whose words are control sequences, C1 codes, bidirectional controls and the like:
/// nothing beside what a walk over the same screens with plain words sends.
/// </summary>
public sealed class HostileOnATerminalTests
{
    private static readonly string[] Doors = ["w", "f", "d", "F1", "a", "A", "s", "m", "e", "r", "b", "i", "S", "T", "o", ":"];

    [Fact]
    public void The_bytes_of_every_screen_hold_no_sequence_that_plain_words_do_not_send()
    {
        SortedSet<string> plain = Shapes(Walk("demo", made: null));
        string raw = Walk("open LARK-03 --store records", made: "records");
        Assert.Contains("ok", raw, StringComparison.Ordinal);

        Assert.Empty(Shapes(raw).Except(plain));
        Assert.DoesNotContain(Regex.Replace(raw, "\e[\\[\\]()#][^a-zA-Z]*[a-zA-Z]", "").EnumerateRunes(), rune =>
            Is(rune.Value, 0x80, 0x9F) || Is(rune.Value, 0x200B, 0x200F) || Is(rune.Value, 0x202A, 0x202E) || Is(rune.Value, 0x2060, 0x206F) || Is(rune.Value, 0xE0000, 0xE0FFF)
            || rune.Value is 0x07 or 0x0E or 0x7F or 0x061C or 0xFEFF || CharUnicodeInfo.GetUnicodeCategory(rune.Value) == UnicodeCategory.PrivateUse);
    }

    [Theory]
    [InlineData("\e]0;title\a", "\e]0;")]
    [InlineData("ok\e[6nok", "[n")]
    [InlineData("\e[?1049l", "[?l")]
    [InlineData("\ec", "\ec")]
    public void The_comparison_tells_a_sequence_by_its_kind(string raw, string shape) => Assert.StartsWith(shape, Assert.Single(Shapes(raw)), StringComparison.Ordinal);

    private static string Walk(string words, string? made)
    {
        using TerminalWindow window = new(100, 40);
        if (made is not null)
        {
            window.Line($"{TerminalWindow.Probe} hostile {made}; echo made");
            window.WaitFor("\nmade", 60000);
        }

        long before = window.RawBytes;
        window.LineThenModes($"{TerminalWindow.Program} {words}");
        window.WaitFor("F1 help", 30000);
        foreach (string door in Doors)
        {
            ToTheGrid(window);
            string grid = window.Screen;
            window.Keys(door);
            window.WaitUntil(screen => screen != grid, $"something to be shown by {door}");
            window.Quiet(100);
        }

        ToTheGrid(window);
        window.Keys("q");
        if (made is null)
        {
            window.WaitFor("n new case");
            window.Keys("q");
        }

        window.WaitFor("code 0");
        return window.Raw[(int)before..];
    }

    private static void ToTheGrid(TerminalWindow window) => window.WaitUntil(
        screen =>
        {
            if (screen.StartsWith("Grid", StringComparison.Ordinal) && Regex.IsMatch(screen, "F1 help  (Enter edit|w why)"))
            {
                return true;
            }

            window.Keys("Escape");
            Thread.Sleep(150);
            return false;
        },
        "the grid");

    // Sequences without their numbers: a colour is a colour. What follows ESC in any other way than CSI is taken with the letters after it.
    private static SortedSet<string> Shapes(string raw) =>
        new(Regex.Matches(raw, "\e(\\[[?><=]?)[0-9;:]*([ -/]*[@-~])|\e[^\\[]?[^\e]{0,3}").Select(found => found.Value.StartsWith("\e[", StringComparison.Ordinal)
            ? found.Groups[1].Value + found.Groups[2].Value
            : found.Value), StringComparer.Ordinal);

    private static bool Is(int value, int first, int last) => value >= first && value <= last;
}
