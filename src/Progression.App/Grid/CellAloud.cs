using Progression.App.Pictures;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.App.Grid;

/// <summary>A cell in whole words.</summary>
internal static class CellAloud
{
    /// <summary>What stands in the cell; "nothing planned" where nothing does.</summary>
    public static string Of(GridState state, Lane lane, int week)
    {
        string words = state.Plan.ContentAt(lane.Id, week) switch
        {
            StimCell stim => Stim(stim, state.Desk.Library),
            ActiveCell active => Active(active, state.Desk.Library),
            TargetCell => "goal " + CellWords.Of(state, lane, week).Whole[0],
            _ => CellWords.Of(state, lane, week).Whole[0],
        };
        string pinned = state.Plan.At(new(lane.Id, week)) is { IsPinned: true } ? ", set by hand" : "";
        return (words.Length == 0 || words == "-" ? week < state.Plan.FirstWeek ? "before the plan's first day" : "nothing planned" : RowWords.Of(words)) + pinned;
    }

    private static string Stim(StimCell stim, ClinicalLibrary library) => stim.Rung == Rung.Stopped
        ? library.RungOf(stim.Rung).Title
        : $"{library.RungOf(stim.Rung).Title}: {stim.Contractions} contractions, {Times(stim.SessionsPerDay)} a day, {Days(stim.Days)}";

    private static string Active(ActiveCell active, ClinicalLibrary library)
    {
        ExerciseDose dose = active.Dose;
        string size = dose.Bout is { } bout ? $"{Number.Text(bout.Seconds / 60, 1)} minutes" : $"{dose.Sets} {(dose.Sets == 1 ? "set" : "sets")} of {dose.Repetitions}";
        string hold = dose.Hold is { } held ? $", held {Number.Text(held.Seconds, 0)} seconds" : "";
        string load = dose.Load is { } with ? $", with {with}" : "";
        string title = library.Exercises.GetValueOrDefault(active.Exercise)?.Title ?? active.Exercise;
        return $"{title}: {size}{hold}{load}, {Times(dose.TimesPerDay)} a day, {Days(dose.Days)}";
    }

    private static string Times(int times) => times switch { 1 => "once", 2 => "twice", _ => $"{times} times" };

    private static string Days(DaysOfWeek days) => days == DaysOfWeek.Every ? "every day"
        : days == DaysOfWeek.NoDay ? "on no day"
        : "on " + string.Join(", ", Enumerable.Range(1, 7).Select(day => (DayOfWeek)(day % 7)).Where(days.Contains));
}
