using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Reviews;

namespace Progression.App.Papers;

/// <summary>Draws the papers: a line for each with its formats, and what would be written.</summary>
public static class PapersPicture
{
    private const int Around = 2;

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(PapersState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode is PapersMode.Help or PapersMode.Reading ? ScrolledText.Of(PageLines(state), state.Scroll, room) : List(state, room);
        return ScreenSheet.Of(PapersScreen.Where(state), body, (state.Status, PapersActions.Table.HintLine(state, size.Width)), size);
    }

    internal static IReadOnlyList<PictureRow> PageLines(PapersState state) => state.Mode == PapersMode.Reading
        ? [.. state.Text.Select(line => PictureRow.Of(SafeText.OneLine(line)))]
        : [.. HelpLines(state).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))];

    /// <summary>What would be written, and where, a fact a line.</summary>
    internal static ImmutableArray<string> Facts(PapersState state) =>
    [
        $"{char.ToUpperInvariant(state.Chosen.Name[0])}{state.Chosen.Name[1..]}: {state.Chosen.Explains}.",
        .. state.Chosen.IsOfAWeek ? [$"For week {state.Order.Week} of {state.Order.Plan.Weeks}."] : Array.Empty<string>(),
        .. state.Chosen.IsOfAMeasure && !state.Measures.IsEmpty ? [$"About: {MeasureTitle(state)}."] : Array.Empty<string>(),
        state.Format == PaperFormat.Pdf ? $"As pdf, {(state.Order.OnLetter ? "US Letter" : "A4")}." : $"As {PaperFormats.Word(state.Format)}.",
        .. state.Chosen.IsExport ? [] : new[] { state.Order.Standing.State == SignatureState.Signed ? $"{SignatureWords.Of(state.Order.Standing)}." : "It is marked as an unsigned draft." },
        state.Folder is null ? "No folder for papers is set: papers_folder in clinic.yaml names it." : $"Files go to {SafeText.OneLine(state.Folder)}, and are never written over.",
        "That it was made is written down, with your name.",
    ];

    private static string MeasureTitle(PapersState state) => state.Measures.FirstOrDefault(one => one.Id == state.Order.Measure, state.Measures[0]).Title;

    private static IEnumerable<string> HelpLines(PapersState state) =>
    [
        .. PapersActions.Table.HelpPage(state.HelpFor.ToString()),
        "The same from a shell",
        "  progression sheet CODE --out FILE, and so for every paper: progression --help",
    ];

    private static Picture List(PapersState state, PictureSize room)
    {
        int name = state.Papers.Max(paper => paper.Name.Length) + 2;
        int formats = state.Papers.Max(paper => paper.Formats.Sum(format => PaperFormats.Word(format).Length + Around + 1));
        List<PictureRow> rows = [.. state.Papers.Select((paper, index) => Row(state, (paper, index), (name, formats), room.Width))];
        rows.Add(TextLines.Rule(room.Width));
        rows.AddRange(Facts(state).SelectMany(fact => TextLines.Wrapped(fact, room.Width)));
        if (state.Mode != PapersMode.Name)
        {
            return new Picture([.. rows], new CaretAt(0, state.Index)).Fit(room);
        }

        (PictureRow field, int column) = LineField.Of(state.Name, room.Width);
        rows.Add(PictureRow.Empty);
        rows.Add(PictureRow.Of("Name of the file", Ink.Strong));
        rows.Add(field);
        return new Picture([.. rows], new CaretAt(column, rows.Count - 1)).Fit(room);
    }

    private static PictureRow Row(PapersState state, (Paper Paper, int Index) at, (int Name, int Formats) columns, int width)
    {
        Ink lead = at.Index == state.Index ? Ink.Chosen : Ink.Plain;
        string formats = string.Join(' ', at.Paper.Formats.Select(format => format == state.FormatOf(at.Paper) ? $"[{PaperFormats.Word(format)}]" : $" {PaperFormats.Word(format)} "));
        return new(
        [
            new($"{(at.Index == state.Index ? '>' : ' ')} {TextFit.Exactly(at.Paper.Name, columns.Name)}", lead),
            new(TextFit.Exactly(formats, columns.Formats) + " ", lead),
            new(TextFit.Exactly(at.Paper.Explains, Math.Max(1, width - columns.Name - columns.Formats - 3)), Ink.Quiet),
        ]);
    }
}
