using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Papers;

/// <summary>The table of the keys of the papers.</summary>
public static class PapersActions
{
    /// <summary>The table.</summary>
    public static ActionTable<PapersState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. List().In(nameof(PapersMode.List), "Papers"),
            .. Naming().In(nameof(PapersMode.Name), "Naming a file"),
            .. Reading().In(nameof(PapersMode.Reading), "Reading a paper"),
            .. CommonRows.Help<PapersState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scroll).In(nameof(PapersMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<PapersState>> List() =>
    [
        HelpOn("F1", "?"),
        Shows<PapersState>("write", ["Enter"], "write it as a file", state => state with { Mode = PapersMode.Name, Name = LineEntry.Of(state.Chosen.FileName(state.Order, state.Format)), Status = "" })
            .Hinted(2, "write").Unless(WhyNoFolder),
        Does<PapersState>("read", ["Space", "r"], "read it here", state => Step.To(state, new ReadPaper())).Hinted(3, "read"),
        Shows<PapersState>("format-on", ["Right", "l"], "the next format", state => state.WithFormat(1)).Hinted(4, "format").Unless(WhyOneFormat),
        Shows<PapersState>("format-back", ["Left", "h"], "the format before", state => state.WithFormat(-1)).Unless(WhyOneFormat),
        Shows<PapersState>("week-on", ["+", "]"], "for the week after", state => state.WithWeek(1)).Hinted(5, "week on").Unless(WhyNoWeek) with { Offered = state => WhyNoWeek(state) is null },
        Shows<PapersState>("week-back", ["-", "["], "for the week before", state => state.WithWeek(-1)).Unless(WhyNoWeek),
        Shows<PapersState>("measure", ["m"], "about the next measure", state => state.WithMeasure(1)).Hinted(5, "measure").Unless(WhyNoMeasure) with { Offered = state => WhyNoMeasure(state) is null },
        Shows<PapersState>("measure-back", ["M"], "about the measure before", state => state.WithMeasure(-1)).Unless(WhyNoMeasure),
        Shows<PapersState>("page-size", ["z"], "pages of A4 or US Letter", state => state with { Order = state.Order with { OnLetter = !state.Order.OnLetter }, Status = state.Order.OnLetter ? "Pages are A4." : "Pages are US Letter." })
            .Unless(state => state.Format == PaperFormat.Pdf ? null : "Only pages to print have a size: choose pdf."),
        Does<PapersState>("leave", ["Esc", "q"], "back to where you came from", state => Step.To(state, new LeaveScreen())).Hinted(6, "back").AsBack(),
        Shows<PapersState>("up", ["Up", "k"], "the paper above", state => state.To(state.Index - 1)),
        Shows<PapersState>("down", ["Down", "j"], "the paper below", state => state.To(state.Index + 1)).Hinted(7, "below"),
        Shows<PapersState>("first", ["Home", "g"], "the first paper", state => state.To(0)),
        Shows<PapersState>("last", ["End", "G"], "the last paper", state => state.To(state.Papers.Length)),
        CommonRows.Repaint<PapersState>(),
    ];

    private static IEnumerable<ScreenAction<PapersState>> Naming() =>
    [
        HelpOn("F1"),
        Does<PapersState>("take", ["Enter"], "write the file", state => Step.To(state with { Status = "" }, new WritePaper(state.Name.Text.Trim()))).Hinted(2, "write"),
        Shows<PapersState>("cancel", ["Esc"], "leave it; nothing is written", state => state with { Mode = PapersMode.List, Status = "Nothing was written." }).Hinted(3, "cancel").AsBack(),
        .. CommonRows.Typing<PapersState>((state, change) => state with { Name = change(state.Name) }),
        CommonRows.Repaint<PapersState>(),
    ];

    private static IEnumerable<ScreenAction<PapersState>> Reading() =>
    [
        HelpOn("F1", "?"),
        .. CommonRows.Reading<PapersState>(Scroll),
        Shows<PapersState>("back", ["Esc", "Enter", "q"], "back to the papers", state => state with { Mode = PapersMode.List, Scroll = 0, Text = [] }).Hinted(6, "back").AsBack(),
        CommonRows.Repaint<PapersState>(),
    ];

    private static ScreenAction<PapersState> HelpOn(params string[] keys) =>
        Shows<PapersState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = PapersMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static PapersState Scroll(PapersState state, int lines) =>
        state with { Scroll = (int)Math.Clamp((long)state.Scroll + lines, 0, Math.Max(0, PapersPicture.PageLines(state).Count - 1)) };

    private static string? WhyNoFolder(PapersState state) => state.Folder is null ? "No folder for papers is set: papers_folder in clinic.yaml names it." : null;

    private static string? WhyOneFormat(PapersState state) => state.Chosen.Formats.Length > 1 ? null : $"It is written only as {PaperFormats.Word(state.Format)}.";

    private static string? WhyNoWeek(PapersState state) => state.Chosen.IsOfAWeek ? null : "It is about all weeks.";

    private static string? WhyNoMeasure(PapersState state) =>
        !state.Chosen.IsOfAMeasure ? "It is not about one measure." : state.Measures.IsEmpty ? "Nothing was measured yet." : null;
}
