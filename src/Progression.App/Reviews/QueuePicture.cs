using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Reviews;
using Progression.Records.Caseload;

namespace Progression.App.Reviews;

/// <summary>Lays out the queue: a line for each plan, one's own requests under a heading, and the one under the cursor in words.</summary>
public static class QueuePicture
{
    private const int Telling = 2;
    private const int ShortestCode = 8;

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines =>
    [
        .. QueueActions.Table.HelpPage(nameof(QueueMode.List)),
        "Columns",
        "  X ! ?                   safety stops, severe findings and warnings, as they were when the review was asked for",
        "  Over                    cells set by hand and proposed changes not taken, since the plan was signed last",
        "  Changed                 cells that differ from the plan that was signed last",
        "  Order                   stops, severe findings, overrides, warnings; then who waits longest",
    ];

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(QueueState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode == QueueMode.Help
            ? ScrolledText.Of([.. HelpLines.Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))], state.Scroll, room)
            : List(state, room);
        return ScreenSheet.Of(QueueScreen.Where(state), body, (state.Status, QueueActions.Table.HintLine(state, size.Width)), size);
    }

    private static Picture List(QueueState state, PictureSize size)
    {
        if (state.Chosen is not { } chosen)
        {
            return new([PictureRow.Empty, PictureRow.Of("No plan waits for a review. What is asked for appears here by itself.")]);
        }

        PictureSize room = size with { Height = size.Height - Telling };
        int code = state.Waiting.Select(one => SafeText.Width(one.Code.Text)).Append(ShortestCode).Max();
        ImmutableArray<(PictureRow Row, int Index)> lines = [.. Lines(state, code)];
        int at = lines.ToList().FindIndex(line => line.Index == state.Index);
        int shown = room.Height - 1;
        int first = Paging.First(at, shown, lines.Length);
        Picture list = new([Heading(code), .. lines.Skip(first).Take(shown).Select(line => line.Row)], new CaretAt(0, 1 + at - first));
        IEnumerable<PictureRow> told = TextLines.Wrapped(QueueWords.Whole(chosen, state.Now), size.Width, Ink.Note);
        return list with { Rows = [.. list.Fit(room).Rows, .. told.Take(Telling)] };
    }

    private static IEnumerable<(PictureRow Row, int Index)> Lines(QueueState state, int code)
    {
        for (int index = 0; index < state.Waiting.Length; index++)
        {
            if (index == state.FromOthers)
            {
                yield return (PictureRow.Of(QueueWords.NotYours, Ink.Strong), -1);
            }

            yield return (Row(state, index, code), index);
        }
    }

    private static PictureRow Heading(int code) => PictureRow.Of(
        $"{"Code".PadRight(code + 2)}{"Week",-6}{"Asked by",-13}{"When",-16}{"X",-4}{"!",-4}{"?",-4}{"Over",-6}{"Changed",-9}Rev", Ink.Strong);

    private static PictureRow Row(QueueState state, int index, int code)
    {
        WaitingReview one = state.Waiting[index];
        PlanRisk risk = one.Risk;
        Ink lead = index == state.Index ? Ink.Chosen : Ink.Plain;
        return new(
        [
            new(TextFit.Exactly(one.Code.Text, code) + "  " + $"{QueueWords.Week(one, state.Now),-6}" + TextFit.Exactly(SafeText.OneLine(one.AskedBy), 12) + " ", lead),
            new($"{TextFit.Exactly(QueueWords.Age(one, state.Now), 15)} "),
            new($"{risk.Stops,-4}", risk.Stops > 0 ? Ink.Stop : Ink.Plain),
            new($"{risk.Severe,-4}", risk.Severe > 0 ? Ink.Stop : Ink.Plain),
            new($"{risk.Warnings,-4}", risk.Warnings > 0 ? Ink.Warning : Ink.Plain),
            new($"{risk.Overrides,-6}{QueueWords.Changed(risk),-9}"),
            new(QueueWords.Revision(one), one.IsStale ? Ink.Warning : Ink.Plain),
        ]);
    }
}
