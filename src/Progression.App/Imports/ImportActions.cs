using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Imports;

/// <summary>The table of the keys of an import.</summary>
public static class ImportActions
{
    /// <summary>The table.</summary>
    public static ActionTable<ImportState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. File().In(nameof(ImportMode.File), "Naming the file"),
            .. Preview().In(nameof(ImportMode.Preview), "Before it comes in"),
            .. CommonRows.Help<ImportState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scroll).In(nameof(ImportMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<ImportState>> File() =>
    [
        HelpOn("F1"),
        Does<ImportState>("read", ["Enter"], "read the file; nothing comes in yet", state => Step.To(state with { Status = "" }, new ReadFile())).Hinted(2, "read it")
            .Unless(state => state.Name.Text.Trim().Length == 0 ? "Type the name of the file first." : null),
        Shows<ImportState>("holds-on", ["Down", "Tab"], "the next of what a file can hold", state => state.WithKind(1)).Hinted(3, "it holds"),
        Shows<ImportState>("holds-back", ["Up", "Shift+Tab"], "the one before", state => state.WithKind(-1)),
        Does<ImportState>("leave", ["Esc"], "back to the grid; nothing comes in", state => Step.To(state, new LeaveScreen())).Hinted(4, "back").AsBack(),
        .. CommonRows.Typing<ImportState>((state, change) => state with { Name = change(state.Name) }, rank: 5),
        CommonRows.Repaint<ImportState>(),
    ];

    private static IEnumerable<ScreenAction<ImportState>> Preview() =>
    [
        HelpOn("F1", "?"),
        Does<ImportState>("bring-in", ["y"], "bring all of it in", BringAllIn).Hinted(2, "bring it in").Unless(WhyNot) with { Offered = state => WhyNot(state) is null },
        Shows<ImportState>("back", ["Esc", "q", "n"], "back to the file's name; nothing comes in", state => state with { Mode = ImportMode.File, Result = null, Preview = [], Scroll = 0, Status = "Nothing came in." })
            .Hinted(3, "leave it").AsBack(),
        .. CommonRows.Reading<ImportState>(Scroll).Select(row => row with { HintRank = row.HintRank is null ? null : row.HintRank + 2 }),
        CommonRows.Repaint<ImportState>(),
    ];

    // What looks like a slip is asked back once: it can be right.
    private static Step<ImportState> BringAllIn(ImportState state) => state.Result!.Queries.IsEmpty || state.IsConfirmed
        ? Step.To(state with { Status = "" }, new BringIn())
        : Step.To(state with { IsConfirmed = true, Status = $"{state.Result.Queries.Length} asked back, told below: y once more takes what stands there as right." });

    private static string? WhyNot(ImportState state) => state.Result is { IsGood: true } ? null
        : state.Result is { Problems.IsEmpty: false } ? "Something in the file is refused, so nothing of it comes in. Mend the file; Esc, then Enter reads it again."
        : "There is nothing in the file that the case has not.";

    private static ScreenAction<ImportState> HelpOn(params string[] keys) =>
        Shows<ImportState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = ImportMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static ImportState Scroll(ImportState state, int lines) =>
        state with { Scroll = (int)Math.Clamp((long)state.Scroll + lines, 0, Math.Max(0, ImportPicture.PageLines(state, ImportPicture.UsualWidth).Count - 1)) };
}
