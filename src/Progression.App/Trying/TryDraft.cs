using System.Globalization;
using Progression.App.Forms;
using Progression.App.Grid;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Trying;

/// <summary>What was tried, as texts on disk, and back. It is there only for a session that was ended from outside; leaving the try-out drops it.</summary>
public static class TryDraft
{
    /// <summary>Names it among the forms of a case.</summary>
    public const string FormName = "what-if";

    private const string Dose = "dose ";

    /// <summary>What was tried; null when nothing was.</summary>
    public static KeptForm? Of(TryState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        (string, string?)[] doses = [.. Doses(state)];
        return !state.Form.IsTouched && doses.Length == 0 ? null
            : new KeptForm(state.Original.Code, FormName) { At = state.Form.Current.Id, Fields = state.Form.Texts.ById, Further = FormTexts.Of(doses) };
    }

    /// <summary>The try-out as it was left, over the grid as it is now; null when the case has no assessment.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="kept">What was kept of it.</param>
    public static TryState? Restored(GridState grid, KeptForm kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        if (TryState.Open(grid) is not { } open)
        {
            return null;
        }

        PlanRevision plan = kept.Further.Aggregate(open.Base, (now, dose) => With(now, open, dose));
        TryState dosed = ReferenceEquals(plan, open.Base) ? open : open.WithDoses(plan);
        return dosed.With(dosed.Form.With(new FormTexts(kept.Fields, kept.At ?? ""))) with { Status = FormTexts.Told(kept.Fields, open.Form) };
    }

    /// <summary>What was tried, line by line, each with its name and what it is in truth.</summary>
    public static IEnumerable<(string Place, string Before, string Draft)> Lines(TryState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return
        [
            .. state.Form.Lines.Where(line => line.IsTouched).Select(line => (line.Title, line.Given, line.Text)),
            .. Changed(state).Select(cell => ($"{cell.Lane.Title}, week {cell.Week}", Text(state, cell.Lane, cell.Before), Text(state, cell.Lane, cell.After))),
        ];
    }

    private static IEnumerable<(string Name, string? Text)> Doses(TryState state) =>
        Changed(state).Select(cell => (string.Create(CultureInfo.InvariantCulture, $"{Dose}{cell.Lane.Id} {cell.Week}"), (string?)Text(state, cell.Lane, cell.After)));

    private static IEnumerable<(Lane Lane, int Week, CellContent? Before, CellContent? After)> Changed(TryState state) =>
        from cell in PlanDifference.Between(state.Before.Plan, state.Base)
        let lane = state.Base.LaneOf(cell.Address.Lane)
        where lane is not null && !Equals(cell.Before?.Content, cell.After?.Content)
        select (lane, cell.Address.Week, cell.Before?.Content, cell.After?.Content);

    private static string Text(TryState state, Lane lane, CellContent? content) => CellNotation.Text(lane, content, state.Library);

    private static PlanRevision With(PlanRevision plan, TryState open, KeyValuePair<string, string> dose)
    {
        string[] words = dose.Key.Split(' ');
        return words is [_, string id, string number] && plan.LaneOf(id) is { } lane
            && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int week)
            && PlanEdit.WhyNot(plan, new(id, week)) is null && CellNotation.Read(lane, dose.Value, open.Library).Value is { } read
            ? PlanEdit.Set(plan, new(id, week), read.Content)
            : plan;
    }
}
