using System.Text.Json.Nodes;
using Progression.App.Tests.Stores;
using Progression.Core.Drafting;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Commands.Caseload;

/// <summary><c>progression list</c> on the demo's store, on 25 November 2026.</summary>
public sealed class ListCommandTests : IDisposable
{
    private readonly TempStore _temp = new();

    public ListCommandTests() => Assert.Equal(0, _temp.Run("demo").Code);

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Lists_every_case_with_its_states_in_words()
    {
        CommandRun run = List();

        Assert.Equal((0, ""), (run.Code, run.Messages));
        string[] lines = run.Data.TrimEnd().Split(Environment.NewLine);
        Assert.StartsWith("Code       Knee   Operated    Week", lines[0], StringComparison.Ordinal);
        Assert.Equal(("12 cases.", 14), (lines[^1], lines.Length));
        Assert.EndsWith("due, unsigned", lines.Single(line => line.StartsWith("LARK-03", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.EndsWith("behind, unsigned, blocked", lines.Single(line => line.StartsWith("CRANE-12", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Narrows_finds_and_orders()
    {
        Assert.Equal(["LARK-03"], Codes("--only", "due"));
        Assert.Equal(["CRANE-12", "DUNLIN-04", "PLOVER-02", "SNIPE-08"], Codes("--only", "blocked"));
        Assert.Equal(["WREN-07"], Codes("--find", "wren"));
        Assert.Equal(["LARK-03", "LINNET-06"], Codes("--order", "due", "--find", "L").Take(2));
        Assert.Equal(12, Codes("--only", "mine", "--order", "saved").Length);
        Assert.Equal("0 of 12 cases.", List("--only", "drafts").Data.Trim());
    }

    [Theory]
    [InlineData("--only", "late")]
    [InlineData("--order", "name")]
    public void Refuses_a_word_it_does_not_know_and_says_which_it_does(string option, string word)
    {
        CommandRun run = List(option, word);

        Assert.Equal(64, run.Code);
        Assert.Contains(option == "--only" ? "unsigned" : "behind", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_store_that_is_not_there_has_no_cases_and_none_is_made()
    {
        string nowhere = Path.Combine(_temp.DataHome, "nowhere");

        Assert.Equal("0 cases.", _temp.Run("list", "--store", nowhere).Data.Trim());
        Assert.False(Directory.Exists(nowhere));
    }

    [Fact]
    public void Gives_the_reasons_as_json()
    {
        JsonNode lark = Json("--find", "LARK-03");
        JsonNode crane = Json("--find", "CRANE-12");

        Assert.Equal(("reassess", "2026-11-22", "caseload.second-reassessment"), ((string)lark["due"]![0]!["what"]!, (string)lark["due"]![0]!["on"]!, (string)lark["due"]![0]!["limit"]!));
        Assert.StartsWith("Red flag: ", (string)crane["blocked"]![0]!, StringComparison.Ordinal);
        Assert.Contains(crane["behind"]!.AsArray(), one => (string)one!["measure"]! == "flexion_active");
    }

    [Fact]
    public void A_case_without_a_plan_and_screening_is_listed_too()
    {
        CaseBook book = _temp.Open(_temp.Own).Book;
        Case bare = new() { Code = CaseCode.Parse("BARE-01")!, Operation = new Operation(new DateOnly(2026, 11, 20), Side.Left, "Total knee replacement") };
        Assert.IsType<SaveResult.Saved>(book.Save(bare, PlanDraft.Draft(bare, _temp.Open(_temp.Own).Library).Value!, null));

        string data = _temp.Run("list").Data;

        Assert.Contains("BARE-01", data, StringComparison.Ordinal);
        Assert.Contains("unsigned, blocked", data, StringComparison.Ordinal);
    }

    private CommandRun List(params string[] options) => _temp.Run(["list", "--store", _temp.Demo, .. options]);

    private string[] Codes(params string[] options) =>
        [.. JsonNode.Parse(List([.. options, "--json"]).Data)!["cases"]!.AsArray().Select(one => (string)one!["code"]!)];

    private JsonNode Json(params string[] options) => Assert.Single(JsonNode.Parse(List([.. options, "--json"]).Data)!["cases"]!.AsArray())!;
}
