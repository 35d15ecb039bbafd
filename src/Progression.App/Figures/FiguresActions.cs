using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Figures;

/// <summary>The one table of the keys of the clinic's figures.</summary>
public static class FiguresActions
{
    /// <summary>The table.</summary>
    public static ActionTable<FiguresState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Page().In(nameof(FiguresMode.Page), "Clinic figures"),
            .. CommonRows.Help<FiguresState>(state => state with { Mode = FiguresMode.Page, Scroll = 0 }, Scroll).In(nameof(FiguresMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<FiguresState>> Page() =>
    [
        Shows<FiguresState>("help", ["F1", "?"], "this page", state => state with { Mode = FiguresMode.Help, Scroll = 0 }).Hinted(1, "help"),
        .. CommonRows.Reading<FiguresState>(Scroll),
        Shows<FiguresState>("groups", ["f"], "with groups: by regimen, by year, none", state => state.WithGroups()).Hinted(5, "groups"),
        Shows<FiguresState>("goal", ["n"], "the next goal to draw", state => state.WithGoal(1)).Hinted(7, "goal"),
        Shows<FiguresState>("goal-back", ["p"], "the goal before", state => state.WithGoal(-1)),
        Does<FiguresState>("draw", ["Enter"], "write the curve of that goal as a picture", state => Step.To(state with { Status = "" }, new WriteCurve())).Hinted(6, "draw").Unless(WhyNoCurve),
        Does<FiguresState>("leave", ["Esc", "q"], "back to the cases", state => Step.To(state, new LeaveScreen())).Hinted(8, "back").AsBack(),
        CommonRows.Repaint<FiguresState>(),
    ];

    private static FiguresState Scroll(FiguresState state, int lines) =>
        state with { Scroll = (int)Math.Clamp((long)state.Scroll + lines, 0, Math.Max(0, FiguresPicture.PageLines(state, FiguresText.WholeWidth).Count - 1)), Status = "" };

    private static string? WhyNoCurve(FiguresState state) => state.ChosenFigures is null ? FiguresText.Withheld(state.Summary) : null;
}
