using Progression.App.Actions;
using Progression.Core.Library;
using Progression.Core.Plans;
using static Progression.App.Grid.GridRow;

namespace Progression.App.Grid;

/// <summary>Enter an assessment and see what it comes to.</summary>
/// <param name="Correct">Put the latest assessment right instead of entering a new one.</param>
public sealed record Assess(bool Correct) : ScreenEffect;

/// <summary>Log a session.</summary>
public sealed record LogSession : ScreenEffect;

/// <summary>Compare the measures over all visits.</summary>
public sealed record CompareMeasures : ScreenEffect;

/// <summary>Show the course of a measure with its forecast.</summary>
/// <param name="Measure">The id of the measure.</param>
public sealed record ShowCourse(string Measure) : ScreenEffect;

/// <summary>Go through the red flags.</summary>
public sealed record ShowFlags : ScreenEffect;

/// <summary>Show an entry of the clinical library.</summary>
/// <param name="Entry">Its id; null for the first.</param>
public sealed record LookUp(string? Entry) : ScreenEffect;

/// <summary>Try readings and doses out on a scratch copy.</summary>
/// <param name="Plan">The plan to start from.</param>
public sealed record TryOut(PlanRevision Plan) : ScreenEffect;

/// <summary>Change the data of the case.</summary>
public sealed record ChangeData : ScreenEffect;

/// <summary>Go through the screening of the case.</summary>
public sealed record ShowScreening : ScreenEffect;

/// <summary>Draft the plan anew from today with the case as it is, over the plan that stands.</summary>
/// <param name="Plan">The plan that stands.</param>
public sealed record DraftAnew(PlanRevision Plan) : ScreenEffect;

/// <summary>Show what of the case can be printed or taken out.</summary>
/// <param name="Week">The week the cursor is in.</param>
public sealed record ShowPapers(int Week) : ScreenEffect;

/// <summary>Read a file of another program into the case.</summary>
/// <param name="Plan">The plan as it stands.</param>
public sealed record ImportFromFile(PlanRevision Plan) : ScreenEffect;

/// <summary>The grid's keys that lead to other screens.</summary>
internal static class GridDoors
{
    public static IEnumerable<ScreenAction<GridState>> All =>
    [
        Door("assess", ["a"], "enter an assessment and see what it changes", _ => new Assess(Correct: false))
            .Hinted(9, "assess").Unless(state => WhyNotChange(state) ?? WhyNotUnsaved(state)),
        Door("correct", ["A"], "put the latest assessment right; old values stay kept", _ => new Assess(Correct: true))
            .Unless(state => WhyNotChange(state) ?? WhyNotUnsaved(state) ?? (state.Desk.Case.Assessments.IsEmpty ? "There is no assessment yet: a enters one." : null)),
        Door("log", ["s"], "log a session", _ => new LogSession()).Hinted(10, "log session").Unless(WhyNotChange),
        Door("compare", ["m"], "all measures over all visits", _ => new CompareMeasures()).Unless(WhyNotHere),
        Door("course", ["e"], "the course of this lane's measure, with what to expect", state => new ShowCourse(MeasureOf(state))),
        Door("flags", ["r"], "the red flags: answer them, close one with a note", _ => new ShowFlags()).Unless(WhyNotChange),
        Library(),
        Door("data", ["i"], "the data of the case", _ => new ChangeData()).Unless(state => WhyNotChange(state) ?? WhyNotUnsaved(state)),
        Door("screening", ["S"], "the screening before stim", _ => new ShowScreening()).Unless(WhyNotChange),
        Door("draft-anew", ["R"], "draft anew from today; pins and past weeks stay", state => new DraftAnew(state.Plan)).Unless(WhyNotChange),
        Door("papers", ["E"], "print or take out: home sheet and other papers", state => new ShowPapers(state.Week)).Unless(state => WhyNotHere(state) ?? WhyNotUnsaved(state)),
        Door("import", ["I"], "bring readings, sessions or cells in from a file", state => new ImportFromFile(state.Plan)).Unless(state => WhyNotChange(state) ?? WhyNotUnsaved(state)),
        Door("try-out", ["T"], "what if: try readings and doses out on a scratch copy", state => new TryOut(state.Plan)).Unless(WhyNotHere),
    ];

    /// <summary>The library at the first limit or the rule that the answer rests on.</summary>
    public static ScreenAction<GridState> Library() =>
        Door("library", ["b"], "the clinical library at what this answer rests on", state => new LookUp(state.Answer.Limits.Select(limit => limit.Id).FirstOrDefault() ?? state.Plan.Regimen));

    /// <summary>The measure of the lane under the cursor; active flexion where it has none.</summary>
    private static string MeasureOf(GridState state) => state.Lane.Measure ?? MeasureIds.FlexionActive;

    private static string? WhyNotChange(GridState state) => WhyNotHere(state) ?? GridEdits.WhyNotChange(state);

    private static string? WhyNotHere(GridState state) => state.IsScratch ? "This is a scratch copy: Esc leaves it, and nothing of it is kept." : null;

    private static string? WhyNotUnsaved(GridState state) => state.IsUnsaved ? "The plan has unsaved changes: Ctrl+S saves them, u takes them back; then go on." : null;

    private static ScreenAction<GridState> Door(string id, string[] keys, string help, Func<GridState, ScreenEffect> open) =>
        Does(id, [.. keys], help, state => Step.To(state, open(state)));
}
