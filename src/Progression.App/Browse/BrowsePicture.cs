using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Records.Library;

namespace Progression.App.Browse;

/// <summary>Draws the library: the entries, and the one under the cursor with its source.</summary>
public static class BrowsePicture
{
    private const int Beside = 120;
    private const int Kind = 10;
    private const int Standing = 16;
    private const int WholeStanding = 26; // "common practice, no source"
    private const int RoomForAll = 90;

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(BrowseState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode is BrowseMode.Help or BrowseMode.Entry ? ScrolledText.Of(PageLines(state, room.Width), state.Scroll, room) : List(state, room);
        return ScreenSheet.Of(BrowseScreen.Where(state), body, (state.Status, BrowseActions.Table.HintLine(state, size.Width)), size);
    }

    internal static IReadOnlyList<PictureRow> PageLines(BrowseState state, int width) => state.Mode == BrowseMode.Help
        ? [.. HelpLines(state).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))]
        : state.Chosen is { } card ? EntryText.Lines(card, width) : [];

    private static IEnumerable<string> HelpLines(BrowseState state) =>
    [
        .. BrowseActions.Table.HelpPage(state.HelpFor.ToString()),
        "How well a figure is founded",
        "  seen, derived           read in the source that is named; reckoned from it",
        "  from memory             not looked up yet: look before you rely on it",
        "  common practice         no source",
    ];

    private static Picture List(BrowseState state, PictureSize room)
    {
        bool beside = room.Width >= Beside;
        PictureSize list = beside ? room with { Width = room.Width / 2 } : room with { Height = room.Height / 2 };
        PictureSize pane = beside ? room with { Width = room.Width - list.Width - 2 } : room with { Height = room.Height - list.Height - 1 };
        Picture upper = Entries(state, list);
        Picture lower = ScrolledText.Of(PageLines(state, pane.Width), state.Scroll, pane).Fit(pane);
        PictureRow line = PictureRow.Of("│ ", Ink.Quiet);
        return beside
            ? new([.. upper.Rows.Zip(lower.Rows, (left, right) => left.Then(line).Then(right))], upper.Caret)
            : new([.. upper.Rows, TextLines.Rule(room.Width), .. lower.Rows], upper.Caret);
    }

    private static Picture Entries(BrowseState state, PictureSize room)
    {
        bool finding = state.Mode == BrowseMode.Find;
        int shown = room.Height - (finding ? 1 : 0);
        int index = Math.Clamp(state.Index, 0, Math.Max(0, state.Shown.Length - 1));
        int first = Paging.First(index, shown, state.Shown.Length);
        List<PictureRow> rows = [];
        (PictureRow field, int column) = LineField.Of(state.Find, room.Width);
        if (finding)
        {
            rows.Add(field);
        }

        rows.AddRange(state.Shown.Skip(first).Take(shown).Select((card, at) => Row(card, first + at == index, room.Width)));
        if (state.Shown.IsEmpty)
        {
            rows.Add(PictureRow.Of("No entry has these words."));
        }

        return new Picture([.. rows], finding ? new CaretAt(column, 0) : new CaretAt(0, index - first)).Fit(room);
    }

    private static PictureRow Row(LibraryCard card, bool isChosen, int width)
    {
        string kind = card.Kind.Split(' ')[^1];
        int standing = width >= RoomForAll ? WholeStanding : Standing;
        // The value is what a limit is for: where there is no room for all, words give way to it.
        string value = card["value"] is { } known ? $": {SafeText.OneLine(known)}" : "";
        int room = Math.Max(1, width - Kind - standing - 3);
        string name = SafeText.OneLine(card.Title);
        string title = TextFit.Exactly(SafeText.Width(name + value) <= room ? name + value : TextFit.Exactly(name, Math.Max(1, room - SafeText.Width(value))) + value, room);
        return new(
        [
            new($"{(isChosen ? '>' : ' ')} {TextFit.Exactly(kind, Kind)}", isChosen ? Ink.Chosen : Ink.Quiet),
            new(title, isChosen ? Ink.Chosen : Ink.Plain),
            new(" " + TextFit.Exactly(EntryText.Standing(card), standing), isChosen ? Ink.Chosen : Ink.Quiet),
        ]);
    }
}
