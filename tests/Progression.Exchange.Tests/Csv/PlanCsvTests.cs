using System.Text;
using Progression.Core.Plans;
using Progression.Exchange.Csv;
using Progression.Exchange.Import;
using Progression.Exchange.Tests.Import;

namespace Progression.Exchange.Tests.Csv;

public sealed class PlanCsvTests
{
    private static readonly PlanRevision Plan = SomePlan.Of().Stim(2, "mon wed fri").Exercise(2, "daily").Target(3, 90) with { OpenFrom = SomeKnee.Operated.AddDays(7) };

    private static ImportResult Read(string text) =>
        CsvImport.Read(Encoding.UTF8.GetBytes(text), CsvContent.Plan, SomeKnee.Ground with { Plan = Plan }, _ => CsvChoices.None).Result;

    [Fact]
    public void A_plan_is_written_cell_by_cell_in_the_notation_of_the_grid() => Assert.Equal(
        "code,lane,title,week,from,to,content,set_by_hand,reason\r\n"
        + "KNEE-1,flexion,Flexion,3,2026-02-16,2026-02-22,90 deg,no,\r\n"
        + "KNEE-1,stim,Stim,2,2026-02-09,2026-02-15,high 15x1 mon wed fri,no,\r\n"
        + "KNEE-1,quads-strength,Quads strength,2,2026-02-09,2026-02-15,quad-set 3x10 hold 5 s,no,\r\n",
        PlanCsv.Of(Plan, SomeKnee.Library));

    [Fact]
    public void What_was_written_is_there_already()
    {
        ImportResult result = Read(PlanCsv.Of(Plan, SomeKnee.Library));
        Assert.Empty(result.Problems);
        Assert.Null(result.Plan);
        Assert.Equal([ImportFate.IsThere, ImportFate.IsThere, ImportFate.IsThere], result.Lines.Select(line => line.Fate));
    }

    [Fact]
    public void A_cell_that_differs_is_set_by_hand_and_all_others_stay()
    {
        ImportResult result = Read("lane,week,content,reason\nflexion,3,95 deg,doing well\n");
        PlanCell cell = result.Plan!.At(new CellAddress("flexion", 3))!;
        Assert.Equal((new TargetCell(95), new TargetCell(90), "doing well"), (cell.Content, cell.Pin!.Suggested, cell.Pin.Reason));
        Assert.Equal("week 3 Flexion 95 deg, in place of 90 deg", $"{result.Lines[0].Visit} {result.Lines[0].What} {result.Lines[0].Value}");
        Assert.Equal(Plan.Cells.Count, result.Plan.Cells.Count);
        Assert.Null(result.Case);
    }

    [Fact]
    public void What_the_checks_find_only_after_it_is_asked_back_at_its_row()
    {
        ImportResult result = Read("lane,week,content\nquads-strength,2,-\n");
        Assert.NotNull(result.Plan);
        Assert.Contains(result.Queries, query => query.ToString().StartsWith("row 2: ", StringComparison.Ordinal) || query.Place == ImportPlace.File);
        Assert.All(result.Queries, query => Assert.Equal("a plan without this finding", query.Allowed));
    }

    [Theory]
    [InlineData("lane,week,content\nstim,9,-\n", "row 2, week: The number is out of range. Allowed: a whole number from 1 to 4. Found: \"9\".")]
    [InlineData("lane,week,content\nstim,1,high 15x1\n", "row 2, week: Week 1 lies before the plan's first day that can be changed: what is done is done. Allowed: weeks 2 to 4. Found: \"1\".")]
    [InlineData("lane,week,content\nhands,2,-\n", "row 2, lane: The plan has no such lane. Allowed: flexion, extension, lag, strength, skills, stim, with-stim, quads-strength, quads-function, straighten, bend, hip, calf, walking. Found: \"hands\".")]
    [InlineData("lane,week,content\nflexion,2,far\n", "row 2, content: The target is a number in deg. Allowed: a number from 0 to 160 deg. Found: \"far\".")]
    [InlineData("lane,week,content\nflexion,2,\n", "row 2, content: The cell is empty. Allowed: what stands in the cell of the plan; \"-\" empties it. Found: nothing.")]
    [InlineData("lane,week,content\npairing,2,1:1\n", "row 2, content: This cell cannot be edited. Allowed: nothing: it is computed. Found: \"1:1\".")]
    [InlineData("code,lane,week,content\nKNEE-2,flexion,2,80 deg\n", "row 2, code: This is of another person. Allowed: the code KNEE-1. Found: \"KNEE-2\".")]
    [InlineData("lane,week,content\nflexion,2,80 deg\nflexion,2,85 deg\n", "row 3, content: The file has another content for this cell (row 2). Allowed: one content for a cell. Found: \"85 deg\".")]
    [InlineData("lane,content\nflexion,80 deg\n", "row 1: A column is missing. Allowed: a column \"week\", or --map \"HEAD=week\". Found: \"lane, content\".")]
    public void What_cannot_be_put_into_the_plan_is_told_by_row_and_field(string text, string told)
    {
        ImportResult result = Read(text);
        Assert.Null(result.Plan);
        Assert.Equal(told, Assert.Single(result.Problems).ToString());
    }
}
