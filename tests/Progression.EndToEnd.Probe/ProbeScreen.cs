using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.App.Shell;
using Progression.Records.Settings;

namespace Progression.EndToEnd.Probe;

/// <summary>The smallest screen: a number to move, a line to type, and two ways to fail.</summary>
internal static class ProbeScreen
{
    public static ScreenDefinition<Tally> Definition { get; } = new()
    {
        Actions = new(_ => "count",
        [
            Row("up", "Up", tally => Step.To(tally with { Count = tally.Count + 1 })),
            Row("down", "Down", tally => Step.To(tally with { Count = tally.Count - 1 })),
            Row("repaint", "Ctrl+L", tally => Step.To(tally, new Repaint())),
            Row("blow", "F8", tally => Step.To(tally, new Blow(false))),
            Row("blow-apart", "F9", tally => Step.To(tally, new Blow(true))),
            Row("quit", "Ctrl+Q", tally => Step.To(tally, new LeaveScreen())),
        ]),
        Draw = (tally, size) => new([
            PictureRow.Of($"count {tally.Count}", Ink.Strong),
            PictureRow.Of(tally.Status),
            PictureRow.Of(tally.Typed ?? "", Ink.Field),
            .. Enumerable.Range(1, size.Height - 3).Select(row => PictureRow.Of(new string('─', size.Width - 10), Ink.Stim)),
        ], new CaretAt(6, 0)),
        Say = (tally, text) => tally with { Status = text },
        Type = (tally, text) => tally with { Typed = tally.Typed + Core.Entry.SafeText.OneLine(text) },
    };

    /// <param name="draft">The file its work is kept in.</param>
    /// <param name="start">Where it counts from.</param>
    /// <param name="quick">Whether a minute of its clock is a second, and a session is ended after two of its minutes.</param>
    public static int Run(string draft, int start = 0, bool quick = false)
    {
        int left = start;
        int exitCode = TerminalSession.Run(new ScreenStack(new Frame<Tally>(Definition, new Tally(start, "ready", null))
        {
            Perform = (tally, effect) => Turn.Stay(Perform(tally, effect)),
            KeepWork = tally => Keep(draft, tally),
            Closed = last => left = last.Count,
        }), quick ? () => PersonalSettings.Usual with { BlankAfter = 2, EndAfter = 4 } : null, Console.Out, null, quick ? new QuickClock() : null);
        Console.WriteLine($"left at {left}");
        return exitCode;
    }

    private static string? Keep(string draft, Tally tally)
    {
        File.WriteAllText(draft, $"kept {tally.Count}\n");
        return null;
    }

    private static Tally Perform(Tally tally, ScreenEffect effect)
    {
        if (effect is Blow { OnOtherThread: true })
        {
            new Thread(() => throw new InvalidOperationException("blown on another thread")).Start();
            return tally;
        }
        throw new InvalidOperationException("blown on the screen's thread");
    }

    private static ScreenAction<Tally> Row(string id, string key, Func<Tally, Step<Tally>> act) =>
        new() { Id = id, Mode = "count", Keys = [key], Group = "Probe", Hint = id, Help = id, Do = act };
}

internal sealed record Tally(int Count, string Status, string? Typed);

internal sealed record Blow(bool OnOtherThread) : ScreenEffect;
