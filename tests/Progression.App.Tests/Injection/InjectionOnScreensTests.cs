using System.Text;
using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.App.Start;
using Progression.App.Tests.Start;
using Progression.Core.Entry;
using Terminal.Gui.Text;

namespace Progression.App.Tests.Injection;

/// <summary>Whatever stands in a case or is typed, every screen shows only what is harmless and keeps its columns.</summary>
public sealed class InjectionOnScreensTests : IDisposable
{
    private const int AtOnce = 8;
    private const int Long = 400;

    // Keys from the grid to every place where text is typed: a cell, readings and how they were taken, a session, a note on a red flag ...
    private static readonly string[] Typing = ["Enter", "a", "A F2", "s", "r y c", "b /", "i", "S y Up c", "T", ":"];

    private static readonly string[] Doors = ["", "a", "A", "s", "m", "e", "r", "b", "i", "S", "T", "w", "f", "d", "?", ":"];
    private readonly HostileCase _case = new();

    public void Dispose() => _case.Dispose();

    [Fact]
    public void There_are_at_least_two_hundred_texts() => Assert.InRange(HostileText.All.Distinct().Count(), 200, 1000);

    // The library draws a row by its own count, so one letter counted otherwise would leave what stood there before at its end.
    [Fact]
    public void Every_letter_that_gets_through_takes_as_many_columns_as_the_library_counts()
    {
        IEnumerable<string> otherwise = Enumerable.Range(' ', 0x10FFFF - ' ').Where(Rune.IsValid).Where(point => SafeText.OneLine($"a{new Rune(point)}b") is var safe && SafeText.Width(safe) != safe.GetColumns())
            .Select(point => $"U+{point:X4}");
        Assert.Empty(otherwise);
    }

    [Fact]
    public void Texts_of_a_saved_case_stay_harmless_on_every_screen()
    {
        foreach (string[] texts in HostileText.All.Chunk(AtOnce))
        {
            ScreenStack screens = HostileCase.Screens(_case.Saved(string.Join(' ', texts.Select(text => text[..Math.Min(text.Length, Long)]))));
            Frame grid = screens.Top!;
            foreach (string door in Doors)
            {
                Whole(new ScreenStack(grid), door, door);
            }

            Whole(screens, "list", "q");
        }
    }

    [Fact]
    public void Texts_typed_on_every_screen_stay_harmless()
    {
        Frame grid = HostileCase.Screens(_case.Saved("plain")).Top!;
        foreach (string keys in Typing)
        {
            ScreenStack door = new(grid);
            Whole(door, keys, keys.Split(' '));
            Assert.True(door.Top!.TakesText, keys);
            foreach (string text in HostileText.All)
            {
                ScreenStack screens = new(door.Top!);
                screens.Paste(text);
                Whole(screens, $"{keys}, typed");
                Whole(screens, $"{keys}, handed in", "Enter");
            }
        }
    }

    [Fact]
    public void Names_folders_and_what_is_told_stay_harmless()
    {
        ScreenStack screens = HostileCase.Screens(_case.Saved("plain"));
        Frame grid = screens.Top!;
        screens.Press("q", "q");
        foreach (string text in HostileText.All)
        {
            StartState start = SampleStart.Demo with { Folder = text, Cases = [SampleStart.Demo.Cases[0] with { SavedBy = text }] };
            Whole(new(new Frame<StartState>(StartScreen.Definition, start)), "list");
            Whole(new(new Frame<StartState>(StartScreen.Definition, SampleStart.Empty with { Folder = text })), "first run");
            Whole(new(grid.Tell(text)), "told on the grid");
            Whole(new(screens.Top!.Tell(text)), "told on the list");
        }
    }

    [Fact]
    public void Kept_drafts_stay_harmless_when_they_are_offered_compared_and_recovered()
    {
        foreach (string[] texts in HostileText.All.Chunk(AtOnce))
        {
            ScreenStack offered = HostileCase.Screens(_case.Kept(texts));
            Whole(offered, "offered");
            Whole(offered, "compared", "c", "PgDn", "PgDn");
            Whole(offered, "recovered", "r");
        }
    }

    private static void Whole(ScreenStack screens, string where, params string[] keys)
    {
        foreach (string key in keys.Where(key => key.Length > 0))
        {
            screens.Press(key, key.Length == 1 ? key : null);
        }

        PictureSize size = PictureSize.Smallest;
        Picture picture = screens.Draw(size).Fit(size);
        Assert.Equal(size.Height, picture.Rows.Length);
        foreach (PictureRow row in picture.Rows)
        {
            Forbidden.None(row.Text, where);
            Assert.True(row.Text.GetColumns() == size.Width, $"{where}: {row.Text.GetColumns()} columns: {row.Text}");
            Forbidden.None(SevenBit.Of(row.Text), where);
            Assert.True(SevenBit.Of(row.Text).Length == size.Width, $"{where}: {SevenBit.Of(row.Text).Length} columns in seven bits: {row.Text}");
        }
    }
}
