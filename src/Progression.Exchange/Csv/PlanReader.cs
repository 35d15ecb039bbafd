using System.Collections.Immutable;
using Progression.Core.Checks;
using Progression.Core.Findings;
using Progression.Core.Plans;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>
/// Reads a table of the cells of a plan. A cell that differs from the plan is set by hand, as in the grid; one that is not in the table stays. What the checks
/// find in the changed plan and did not find before is asked back.
/// </summary>
internal sealed class PlanReader
{
    private const int MostReason = 400;

    private readonly List<ImportProblem> _problems = [];
    private readonly List<ImportLine> _lines = [];
    private readonly Dictionary<CellAddress, (CellContent? Content, CsvLine Line)> _taken = [];
    private readonly ImportGround _ground;
    private readonly PlanRevision _plan;
    private readonly CsvText _text;

    private PlanReader(ImportGround ground, PlanRevision plan) => (_ground, _plan, _text) = (ground, plan, new CsvText(ground, _problems));

    /// <summary>What the table comes to.</summary>
    /// <param name="ground">The case with its plan, the library and the day.</param>
    /// <param name="table">The file.</param>
    /// <param name="choices">What the person said.</param>
    public static ImportResult Read(ImportGround ground, CsvTable table, CsvChoices choices) => ground.Plan is { } plan
        ? new PlanReader(ground, plan).Read(table, choices)
        : ImportResult.Refused(new ImportProblem(ImportPlace.File, "The case has no plan yet.", "a case with a saved plan", ""));

    private ImportResult Read(CsvTable table, CsvChoices choices)
    {
        (ImmutableArray<CsvColumn> columns, ImmutableArray<ImportProblem> unknown) = CsvColumns.Of(table, CsvField.Plan, choices);
        ImmutableArray<ImportProblem> shape = unknown.IsEmpty ? [.. CsvText.Missing(columns, PlanCsv.Lane, CsvField.Week, PlanCsv.Content)] : unknown;
        if (shape.Length > 0)
        {
            return ImportResult.Refused(shape);
        }

        PlanRevision entered = CsvLine.All(table, columns).Aggregate(_plan, Cell);
        return ImportResult.OfPlan(entered, [.. _lines], _problems, _problems.Count > 0 ? [] : Queries(entered));
    }

    private PlanRevision Cell(PlanRevision so, CsvLine line)
    {
        _text.JudgeCode(line);
        int? week = _text.Whole(line[CsvField.Week], _plan.Weeks);
        string? reason = _text.Line(line[PlanCsv.Reason], MostReason);
        if (Missing(line) || week is not { } column || Lane(line) is not { } lane || Content(line, lane) is not { } edit)
        {
            return so;
        }

        CellAddress address = new(lane.Id, column);
        (ImportFate? fate, CellContent? before) = Judge(line, address, edit.Content);
        if (fate is not { } known)
        {
            return so;
        }

        string now = Shown(lane, edit.Content);
        _lines.Add(new ImportLine(ImportPlace.Row(line.Number), $"week {column}", lane.Title, known == ImportFate.ComesIn ? $"{now}, in place of {Shown(lane, before)}" : now, known));
        return known == ImportFate.ComesIn ? PlanEdit.Set(so, address, edit.Content, reason) : so;
    }

    private bool Missing(CsvLine line)
    {
        string? missing = new[] { PlanCsv.Lane, CsvField.Week, PlanCsv.Content }.FirstOrDefault(field => line[field] is null);
        if (missing is not null)
        {
            _problems.Add(new ImportProblem(ImportPlace.Row(line.Number, missing), "The cell is empty.", missing == PlanCsv.Content ? "what stands in the cell of the plan; \"-\" empties it" : "a value", ""));
        }

        return missing is not null;
    }

    private Lane? Lane(CsvLine line)
    {
        CsvCell cell = line[PlanCsv.Lane]!;
        Lane? lane = _plan.LaneOf(cell.Text.ToLowerInvariant());
        if (lane is null)
        {
            _problems.Add(cell.Refused("The plan has no such lane.", string.Join(", ", _plan.Lanes.Where(one => one.Band != Band.Checks).Select(one => one.Id))));
        }

        return lane;
    }

    private CellEdit? Content(CsvLine line, Lane lane) =>
        _text.Line(line[PlanCsv.Content], SkillCell.MostCharacters) is { } content ? _text.Taken(CellNotation.Read(lane, content, _ground.Library), line[PlanCsv.Content]!) : null;

    private (ImportFate? Fate, CellContent? Before) Judge(CsvLine line, CellAddress address, CellContent? content)
    {
        Lane lane = _plan.LaneOf(address.Lane)!;
        string now = Shown(lane, content);
        if (_taken.TryGetValue(address, out (CellContent? Content, CsvLine Line) above))
        {
            if (Shown(lane, above.Content) != now)
            {
                _problems.Add(line[PlanCsv.Content]!.Refused($"The file has another content for this cell (row {above.Line.Number}).", "one content for a cell"));
                return default;
            }

            return (ImportFate.Repeated, content);
        }

        CellContent? before = _plan.ContentAt(address.Lane, address.Week);
        if (Shown(lane, before) == now)
        {
            return (ImportFate.IsThere, before);
        }

        if (PlanEdit.WhyNot(_plan, address) is { } whyNot)
        {
            _problems.Add(line[CsvField.Week]!.Refused(whyNot, $"weeks {_plan.FirstOpenWeek} to {_plan.Weeks}"));
            return default;
        }

        _taken[address] = (content, line);
        return (ImportFate.ComesIn, before);
    }

    private IEnumerable<ImportProblem> Queries(PlanRevision entered)
    {
        HashSet<(string, string)> before = [.. PlanCheck.Check(_ground.Patient, _plan, _ground.Library).Select(Key)];
        return from finding in PlanCheck.Check(_ground.Patient, entered, _ground.Library)
               where finding.Severity >= Severity.Warning && !before.Contains(Key(finding))
               let at = _taken.Where(one => finding.Cells.Contains(one.Key)).Select(one => one.Value.Line).FirstOrDefault()
               select new ImportProblem(at is null ? ImportPlace.File : ImportPlace.Row(at.Number), finding.Text, "a plan without this finding", $"{finding.Rule}, {finding.Severity.ToString().ToLowerInvariant()}");
    }

    private static (string, string) Key(Finding finding) => (finding.Rule, string.Join(' ', finding.Cells));

    private string Shown(Lane lane, CellContent? content) => CellNotation.Text(lane, content, _ground.Library) is { Length: > 0 } text ? text : "nothing";
}
