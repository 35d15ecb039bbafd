using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.App.Trying;

/// <summary>What would differ, in words: the step on the ladder, the findings, what to expect, and the cells.</summary>
internal static class TryWords
{
    internal static IEnumerable<string> Lines(TryState state, int width) => Parts(state).SelectMany(text => TextFit.Wrap(text, width));

    internal static IEnumerable<string> Parts(TryState state)
    {
        (GridState before, GridState now) = (state.Before, state.Grid);
        yield return Pair("Ladder", Verdict(before), Verdict(now)) + "; " + Pair("findings", FindingWords.Counts(before.Findings), FindingWords.Counts(now.Findings));
        yield return Pair(Expecting(state), Expected(before, state.Form.Current.Id), Expected(now, state.Form.Current.Id));
        List<string> cells = [.. Cells(before.Plan, now.Plan, state.Library)];
        yield return cells.Count == 0 ? "No cell of the plan differs." : $"{cells.Count} cell{(cells.Count == 1 ? " differs" : "s differ")}: {string.Join("; ", cells)}";
    }

    private static string Pair(string name, string before, string now) => before == now ? $"{name}: {now}" : $"{name}: {before} -> {now}";

    private static string Verdict(GridState grid) => grid.Desk.Verdict()?.OutcomeWords ?? "no stim session yet";

    private static string Expecting(TryState state) => $"{state.Library.Measures[Lane(state.Form.Current.Id)].Title} expected by week {state.Grid.Plan.Weeks}";

    private static string Expected(GridState grid, string measure)
    {
        ForecastAnswer answer = grid.Desk.Forecast(Lane(measure));
        return answer.Forecast?.At(grid.Plan.Weeks) is { } point
            ? ForecastWords.Of(point, grid.Desk.Library.Measures[Lane(measure)])
            : answer.WhyNot ?? "none";
    }

    /// <summary>The measure whose forecast answers for a reading.</summary>
    private static string Lane(string measure) => measure switch
    {
        MeasureIds.QuadricepsForce or MeasureIds.QuadricepsTorque or MeasureIds.LeverArm or MeasureIds.OtherForce or MeasureIds.OtherTorque => MeasureIds.PreOpShare,
        MeasureIds.ExtensionActive => MeasureIds.Lag,
        MeasureIds.ExtensionPassive or MeasureIds.FlexionActive => measure,
        _ => MeasureIds.FlexionActive,
    };

    private static IEnumerable<string> Cells(PlanRevision before, PlanRevision now, ClinicalLibrary library) =>
        from week in Enumerable.Range(1, now.Weeks)
        from lane in now.Lanes.Concat(before.Lanes).DistinctBy(lane => lane.Id)
        let address = new CellAddress(lane.Id, week)
        let old = before.At(address)?.Content
        let fresh = now.At(address)?.Content
        where !Equals(old, fresh)
        select $"{lane.Short} wk {week}: {CellNotation.Text(lane, old, library)} -> {CellNotation.Text(lane, fresh, library)}";
}
