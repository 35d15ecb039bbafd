using Progression.App.Shell;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Progression.App.Tests.Shell;

/// <summary>The sequences are those of ECMA-48: CUP, CUF, EL and SGR.</summary>
public sealed class FrameTextTests
{
    private static readonly Attribute Plain = new(Color.None, Color.None, TextStyle.None);
    private static readonly Attribute Reverse = new(Color.None, Color.None, TextStyle.Reverse);
    private static readonly Attribute BoldRed = new(Color.Red, Color.None, TextStyle.Bold);

    private readonly OutputBufferImpl _screen = new();

    public FrameTextTests()
    {
        _screen.SetSize(20, 4);
        foreach ((int row, int column) in from row in Enumerable.Range(0, 4) from column in Enumerable.Range(0, 20) select (row, column))
        {
            _screen.Contents![row, column] = new Cell(Plain, false, " ");
        }
        Array.Fill(_screen.DirtyLines, false);
    }

    [Fact]
    public void Nothing_changed_is_nothing_sent() => Assert.Equal("", Frame());

    [Fact]
    public void What_was_sent_is_not_sent_again()
    {
        Put(1, 2, "abc", Plain);
        Assert.Equal("\e[2;3Habc", Frame());
        Assert.Equal("", Frame());
    }

    [Fact]
    public void A_style_is_named_once_and_left_at_the_end()
    {
        Put(0, 0, "ab", BoldRed);
        Put(0, 2, "cd", Reverse);
        Assert.Equal("\e[1H\e[1;31mab\e[0;7mcd\e[m", Frame());
    }

    [Fact]
    public void A_colour_of_24_bits_is_named_by_its_parts()
    {
        Put(0, 0, "a", new Attribute(new Color(1, 2, 3), Color.None, TextStyle.None));
        Assert.Equal("\e[1H\e[38;2;1;2;3ma\e[m", FrameText.Of(_screen, sixteenColours: false));
    }

    [Fact]
    public void The_cursor_jumps_over_what_stayed()
    {
        Put(2, 0, "a", Plain);
        Put(2, 2, "b", Plain);
        Put(2, 9, "c", Plain);
        Assert.Equal("\e[3Ha\e[Cb\e[6Cc", Frame());
    }

    [Fact]
    public void A_blank_end_of_a_row_is_erased_in_the_plain_style()
    {
        Put(0, 0, "ab", Reverse);
        Put(0, 2, new string(' ', 18), Plain);
        Assert.Equal("\e[1H\e[7mab\e[m\e[K", Frame());
    }

    [Fact]
    public void A_reversed_end_of_a_row_is_written()
    {
        Put(0, 16, "    ", Reverse);
        Assert.Equal("\e[1;17H\e[7m    \e[m", Frame());
    }

    // Terminals differ in where the cursor is after the last column, so the next place is named in full.
    [Fact]
    public void After_the_last_column_the_place_is_named()
    {
        Put(0, 19, "a", Plain);
        Put(1, 0, "b", Plain);
        Assert.Equal("\e[1;20Ha\e[2Hb", Frame());
    }

    [Fact]
    public void A_wide_letter_takes_two_columns()
    {
        Put(0, 0, "漢", Plain);
        Put(0, 1, " ", Plain);
        Put(0, 2, "x", Plain);
        Assert.Equal("\e[1H漢x", Frame());
    }

    private string Frame() => FrameText.Of(_screen, sixteenColours: true);

    private void Put(int row, int column, string text, Attribute style)
    {
        foreach (char letter in text)
        {
            _screen.Contents![row, column++] = new Cell(style, true, letter.ToString());
        }
        _screen.DirtyLines[row] = true;
    }
}
