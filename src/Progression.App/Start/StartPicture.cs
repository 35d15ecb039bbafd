using System.Collections.Immutable;
using Humanizer;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.People;

namespace Progression.App.Start;

/// <summary>Lays out the start screen: a title, the list, the caution, a status line and the keys.</summary>
public static class StartPicture
{
    private const int AssessedFrom = 100;
    private const int ShortestCode = 8;

    private static readonly string[] Welcome =
    [
        "Progression plans the rehabilitation of a knee after joint replacement, week by week: electrical stimulation of the thigh together with active exercise, "
            + "each cell with the reason for it.",
        "It plans; a licensed clinician decides. Follow the surgeon's and local protocols, the stimulator's own instructions and local law. "
            + "Stimulation stays off a plan until the person has been screened for it.",
    ];

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(StartState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        PictureSize room = new(size.Width, size.Height - 4);
        Picture body = (state.Mode switch
        {
            StartMode.Help => new Picture([.. HelpLines(state).Skip(state.Scroll).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))]),
            _ when state.Cases.IsEmpty => First(state, room),
            _ => List(state, room),
        }).Fit(room);
        CaretAt? caret = body.Caret is { } at ? at with { Row = at.Row + 1 } : null;
        return new(
        [
            StartScreen.Where(state).Title(size.Width),
            .. body.Rows,
            PictureRow.Of("It suggests; a licensed clinician decides.", Ink.Quiet),
            PictureRow.Of(state.Status),
            PictureRow.Of(StartActions.Table.HintLine(state, size.Width), Ink.Quiet),
        ], caret);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(StartState state) =>
        [.. StartActions.Table.HelpPage(state.HelpFor.ToString()), "Where things are", $"  {state.Folder}"];

    private static Picture List(StartState state, PictureSize size)
    {
        ImmutableArray<PictureRow> foot = HitRate(state, size.Width);
        PictureSize room = size with { Height = size.Height - foot.Length };
        int shown = room.Height - 1;
        int first = Paging.First(state.Index, shown, state.Cases.Length);
        int code = state.Cases.Max(line => Math.Max(ShortestCode, line.Code.Text.Length));
        IEnumerable<PictureRow> lines = state.Cases.Skip(first).Take(shown).Select((line, at) => Line(Cells(state, line), code, room.Width, first + at == state.Index ? Ink.Chosen : Ink.Plain));
        Picture list = new([Line(["Code", "Knee", "Operated", "Week", "Plan", "Assessed", "Saved"], code, room.Width, Ink.Strong), .. lines], new CaretAt(0, 1 + state.Index - first));
        return list with { Rows = [.. list.Fit(room).Rows, .. foot] };
    }

    // A forecast that holds too seldom concerns every case, so it stands under the list and not in one plan.
    private static ImmutableArray<PictureRow> HitRate(StartState state, int width) => state.HitRate is { Words: { } words } rate
        ? [.. Wrapped((rate.Warns ? "! " : "") + words, width, rate.Warns ? Ink.Warning : Ink.Quiet)]
        : [];

    private static string[] Cells(StartState state, CaseLine line)
    {
        int? week = line.Operation is DateOnly day ? PostOpWeek.Of(day, state.Today) : null;
        string plan = line.Revision is int revision ? $"rev {revision}{(line.HasDraft ? ", draft" : "")}" : "none";
        return
        [
            line.Code.Text, line.Knee, Day(line.Operation), line.Weeks is int weeks ? $"{week} of {weeks}" : $"{week}", plan, Day(line.Assessed),
            $"{line.SavedAt.Humanize(state.Now)} by {line.SavedBy}",
        ];
    }

    private static PictureRow Line(string[] cells, int code, int width, Ink ink)
    {
        string left = $"{cells[0].PadRight(code + 2)}{cells[1],-7}{cells[2],-12}{cells[3],-10}{cells[4],-14}";
        string text = left + (width >= AssessedFrom ? $"{cells[5],-12}" : "") + cells[6];
        return PictureRow.Of(TextFit.Exactly(SafeText.OneLine(text), width), ink);
    }

    private static Picture First(StartState state, PictureSize room) => new(
    [
        PictureRow.Empty,
        .. Welcome.SelectMany(text => Wrapped(text, room.Width, Ink.Plain).Append(PictureRow.Empty)),
        .. Wrapped($"There is no case in this store yet ({state.Folder}).", room.Width, Ink.Strong),
        PictureRow.Empty,
        PictureRow.Of("  n   a new case: type what is known of a knee and get its plan"),
        PictureRow.Of("  d   the demo scenario: invented knees to look around in, kept apart from yours"),
    ]);

    private static IEnumerable<PictureRow> Wrapped(string text, int width, Ink ink) => TextFit.Wrap(SafeText.OneLine(text), width).Select(line => PictureRow.Of(line, ink));

    private static string Day(DateOnly? day) => day is DateOnly known ? $"{known:yyyy-MM-dd}" : "";
}
