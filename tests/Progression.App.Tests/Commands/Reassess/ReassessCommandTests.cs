using System.Text.Json.Nodes;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Commands.Reassess;

/// <summary><c>progression reassess</c> on a real store. The day stands at 2026-03-07, so the visits here are of that day.</summary>
public sealed class ReassessCommandTests : IDisposable
{
    private const string Code = "EXAMPLE-07";

    // The knee of the example a day after its first visit, bending a little more.
    internal const string Visit = """
        schema: assessment-file/1
        code: EXAMPLE-07
        date: 2026-03-07
        deficit_sign: positive
        readings:
          flexion_active: 80 deg
          extension_active: 11 deg
          extension_passive: 5 deg
        signs:
          straight_leg_raise: yes

        """;

    private readonly PlanBench _bench = new();

    public ReassessCommandTests() => _bench.Run("draft", _bench.File(PlanBench.Example), "--save");

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void Without_a_decision_everything_is_told_and_nothing_is_saved()
    {
        OpenedCase before = _bench.Saved(Code)!;

        CommandRun run = _bench.Run("reassess", Code, "--from", _bench.File(Visit, "visit.yaml"));

        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        foreach (string part in new[] { "EXAMPLE-07: what the visit of 2026-03-07 comes to", "Ladder", "What changed", "What is expected", "Proposal: ", "Assessment of 2026-03-07: ", "Nothing was saved." })
        {
            Assert.Contains(part, run.Data, StringComparison.Ordinal);
        }

        Assert.Equal((before.CaseStamp, before.PlanStamp), (_bench.Saved(Code)!.CaseStamp, _bench.Saved(Code)!.PlanStamp));
    }

    [Fact]
    public void Accepting_all_saves_visit_plan_and_forecasts_together()
    {
        CommandRun run = _bench.Run("reassess", Code, "--from", _bench.File(Visit, "visit.yaml"), "--accept", "all");

        OpenedCase now = _bench.Saved(Code)!;
        PlanDecision decision = now.Plan!.Decision!;
        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Equal($"Saved EXAMPLE-07, plan revision 2: {decision.Taken} of {decision.Proposed} changes taken.", run.Messages.TrimEnd());
        Assert.True(decision.Taken > 0);
        Assert.Equal((new DateOnly(2026, 3, 7), new DateOnly(2026, 3, 7)), (decision.Assessment, now.Case.Assessments[^1].Date));
        Assert.Contains(now.Forecasts, one => one.MadeOn == new DateOnly(2026, 3, 7));
        Assert.Contains("a day without an assessment", _bench.Run("reassess", Code, "--from", _bench.File(Visit, "visit.yaml")).Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Accepting_none_keeps_the_plan_and_the_reason()
    {
        PlanRevision before = _bench.Saved(Code)!.Plan!;

        CommandRun run = _bench.Run("reassess", Code, "--from", _bench.File(Visit, "visit.yaml"), "--accept", "none", "--reason", "skin is sore");

        OpenedCase now = _bench.Saved(Code)!;
        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Equal((0, "skin is sore"), (now.Plan!.Decision!.Taken, now.Plan.Decision.Reason));
        Assert.All(before.Cells, pair => Assert.Equal(pair.Value.Content, now.Plan.At(pair.Key)!.Content));
        Assert.Equal(new DateOnly(2026, 3, 7), now.Case.Assessments[^1].Date);
    }

    [Theory]
    [InlineData("--accept none", "--reason: Refusing the whole proposal asks for a reason.")]
    [InlineData("--reason sore", "--reason: A reason belongs to a decision.")]
    [InlineData("--weeks 27", "--weeks: ")]
    [InlineData("--accept some", "some")]
    public void A_line_that_cannot_be_meant_is_refused(string options, string told)
    {
        CommandRun run = _bench.Run(["reassess", Code, "--from", _bench.File(Visit, "visit.yaml"), .. options.Split(' ')]);

        Assert.Equal((ExitCode.Usage, ""), (run.Code, run.Data));
        Assert.Contains(told, run.Messages, StringComparison.Ordinal);
    }

    [Fact] // An active deficit of 11 deg against a passive one of 25: straighter than it can be moved.
    public void What_is_asked_back_has_to_be_confirmed_before_it_is_saved()
    {
        string odd = _bench.File(Visit.Replace("extension_passive: 5 deg", "extension_passive: 25 deg", StringComparison.Ordinal), "odd.yaml");

        CommandRun refused = _bench.Run("reassess", Code, "--from", odd, "--accept", "all");
        CommandRun looked = _bench.Run("reassess", Code, "--from", odd);

        Assert.Equal((ExitCode.BadData, ""), (refused.Code, refused.Data));
        Assert.Contains("nothing was entered", refused.Messages, StringComparison.Ordinal);
        Assert.Equal(1, _bench.Saved(Code)!.PlanStamp!.Revision);
        Assert.Contains("Proposal: ", looked.Data, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, _bench.Run("reassess", Code, "--from", odd, "--accept", "all", "--confirmed").Code);
        Assert.Equal(2, _bench.Saved(Code)!.PlanStamp!.Revision);
    }

    [Fact]
    public void An_open_red_flag_is_a_stop_and_shows_its_checklist()
    {
        string flagged = _bench.File(Visit + "  infection_signs: yes\n", "flagged.yaml");

        CommandRun run = _bench.Run("reassess", Code, "--from", flagged);

        Assert.Equal(ExitCode.SafetyStop, run.Code);
        Assert.Contains("X red flag: ", run.Data, StringComparison.Ordinal);
        Assert.Contains("- Follow the clinic's protocol.", run.Data, StringComparison.Ordinal);
        Assert.Contains("no forecast. A red flag is open", run.Data, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_that_has_run_out_is_told_with_its_cure()
    {
        _bench.Run("draft", _bench.File(PlanBench.Short.Replace("weeks: 6", "weeks: 1", StringComparison.Ordinal)), "--save");
        string visit = _bench.File(Visit.Replace("EXAMPLE-07", "K-100", StringComparison.Ordinal), "visit.yaml");

        CommandRun refused = _bench.Run("reassess", "K-100", "--from", visit, "--accept", "all");
        CommandRun longer = _bench.Run("reassess", "K-100", "--from", visit, "--accept", "all", "--weeks", "4");

        Assert.Equal(ExitCode.BadData, refused.Code);
        Assert.Contains("weeks: The assessment of 2026-03-07 lies in week 1, and the plan has no week after it. Ask for more weeks. Allowed: 2 to 26 weeks.", refused.Messages, StringComparison.Ordinal);
        Assert.Equal((ExitCode.Good, 4), (longer.Code, _bench.Saved("K-100")!.Plan!.Weeks));
    }

    [Fact]
    public void What_is_not_there_is_told()
    {
        Assert.Equal(ExitCode.NoInput, _bench.Run("reassess", "NOBODY-1", "--from", _bench.File(Visit, "visit.yaml")).Code);
        Assert.Equal(ExitCode.NoInput, _bench.Run("reassess", Code, "--from", "nowhere.yaml").Code);
        Assert.Equal(ExitCode.Usage, _bench.Run("reassess", Code).Code);
    }

    [Fact]
    public void The_answer_as_json_holds_every_part()
    {
        JsonNode answer = JsonNode.Parse(_bench.Run("reassess", Code, "--from", _bench.File(Visit, "visit.yaml"), "--json").Data)!;

        Assert.Equal(("reassess/1", Code, "2026-03-07"), (answer["schema"]!.GetValue<string>(), answer["code"]!.GetValue<string>(), answer["assessment"]!.GetValue<string>()));
        Assert.NotEmpty(answer["changes"]!.AsArray());
        Assert.NotEmpty(answer["proposal"]!.AsArray());
        Assert.Null(answer["decision"]);
    }
}
