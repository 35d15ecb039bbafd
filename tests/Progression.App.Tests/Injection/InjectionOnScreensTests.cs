using System.Text;
using Progression.App.Actions;
using Progression.App.Commands;
using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.App.Screens;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.App.Tests.Start;
using Progression.App.Tests.Stores;
using Progression.Core.Entry;
using Progression.Core.Plans;
using Progression.Records.Settings;
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

    /// <summary>Where a reason or a skill is asked for, which no single key leads to.</summary>
    [Fact]
    public void Texts_typed_as_reasons_and_skills_stay_harmless()
    {
        using TempStore temp = new();
        OpenStore clean = temp.Open(temp.Demo);
        Assert.True(DemoStore.Prepare(clean, fresh: false).Ready);
        Frame demo = HostileCase.Screens(clean).Top!;
        Frame grid = HostileCase.Screens(_case.Saved("plain")).Top!;
        (string Where, ScreenStack At)[] places =
        [
            ("reason of a cell", Reason(grid)),
            ("reason on a proposal", Through(demo, "a", "9", "5", "Enter", "Ctrl+S", "y", "y", "y", "Ctrl+S")),
            ("reason of a correction", Through(grid, "A", "Ctrl+U", "9", "1", "Ctrl+S")),
            ("seen skills", Through(grid.Go("skills week 5")!, "Enter")),
        ];
        foreach ((string where, ScreenStack at) in places)
        {
            Whole(at, where);
            Assert.True(at.Top!.TakesText, where);
            foreach (string text in HostileText.All)
            {
                ScreenStack screens = new(at.Top!);
                screens.Paste(text);
                Whole(screens, $"{where}, typed");
                Whole(screens, $"{where}, handed in", "Enter");
                Whole(screens, $"{where}, read", "w");
            }
        }
    }

    [Fact]
    public void Texts_in_the_settings_file_stay_harmless()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("settings-").FullName, "settings.yaml");
        foreach (string text in HostileText.All.Where(text => text.Length < 1000))
        {
            File.WriteAllText(path, $"colours: \"{text.Replace("\\", "", StringComparison.Ordinal).Replace("\"", "", StringComparison.Ordinal)}\"\n{text}: yes\n", new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            SettingsKeeper keeper = new(new SettingsFile(path));
            ScreenStack screens = new(SettingsDoor.Open(keeper));
            Whole(screens, "settings");
            Whole(screens, "settings, changed", "Right");
            using StringWriter said = new();
            CommandOutput output = new(TextWriter.Null, said);
            Assert.All(keeper.Problems, problem => output.Message($"{problem}"));
            Forbidden.NoneInLines(said.ToString(), "settings, told");
        }

        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    private static ScreenStack Through(Frame frame, params string[] keys)
    {
        ScreenStack screens = new(frame);
        foreach (string key in keys)
        {
            // Where there is nothing odd to say yes to, the question stands further on already.
            if (key != "y" || !screens.Top!.TakesText)
            {
                screens.Press(key, key.Length == 1 ? key : null);
            }
        }

        return screens;
    }

    private static ScreenStack Reason(Frame grid)
    {
        ScreenStack screens = new(grid);
        PlanRevision plan = ((Frame<GridState>)grid).State.Plan;
        foreach (Lane lane in plan.Lanes.Where(lane => lane.Band == Band.Active))
        {
            screens.Replace(screens.Top!.Go($"{lane.Title} week 5") ?? screens.Top!);
            screens.Press("x", "x");
            if (screens.Top!.TakesText)
            {
                break;
            }
        }

        return screens;
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
