using Progression.App.Actions;
using Progression.App.Caseload;
using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Start;

/// <summary>Lays out the start screen: a title, the list, the caution, a status line and the keys.</summary>
public static class StartPicture
{
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
            _ => StartList.Draw(state, room),
        }).Fit(room);
        (PictureRow status, CaretAt? finding) = Status(state, size);
        CaretAt? caret = finding ?? (body.Caret is { } at ? at with { Row = at.Row + 1 } : null);
        return new(
        [
            StartScreen.Where(state).Title(size.Width),
            .. body.Rows,
            PictureRow.Of("It suggests; a licensed clinician decides.", Ink.Quiet),
            status,
            PictureRow.Of(StartActions.Table.HintLine(state, size.Width), Ink.Quiet),
        ], caret);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(StartState state) =>
        [.. StartActions.Table.HelpPage(state.HelpFor.ToString()), "Letters", .. CaseWords.Legend, "Where things are", $"  {state.Folder}"];

    private static (PictureRow Row, CaretAt? Caret) Status(StartState state, PictureSize size)
    {
        if (state.Mode != StartMode.Find)
        {
            return (PictureRow.Of(state.Status), null);
        }

        const string Label = "Find ";
        (PictureRow row, int column) = LineField.Of(state.Finding, size.Width - Label.Length);
        return (PictureRow.Of(Label, Ink.Strong).Then(row), new CaretAt(Label.Length + column, size.Height - 2));
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
}
