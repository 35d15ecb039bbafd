using Progression.App.Pictures;
using Progression.App.Reviews;
using Progression.App.Tests.Actions;
using Progression.Core.People;
using Progression.Core.Reviews;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Reviews;

public sealed class QueueScreenTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private static readonly QueueState Queue = new QueueState { Account = "3001", Now = Now }.With(
        [
            Waiting("WREN-07", hours: 3, new(0, 0, 2, 1, 4)),
            Waiting("OWN-01", hours: 1, new(1, 0, 0, 0, 2)) with { AskedBy = "anna", AskedByAccount = "3001" },
            Waiting("CRANE-12", hours: 2, new(1, 0, 3, 0, null)),
            Waiting("LARK-03", hours: 30, new(0, 0, 2, 1, 4)) with { Newest = 5 },
            Waiting("SNIPE-08", hours: 50, new(0, 1, 0, 0, 1)),
        ],
        Now);

    [Fact]
    public void What_was_found_comes_before_age_and_own_requests_stand_apart()
    {
        Assert.Equal(["CRANE-12", "SNIPE-08", "LARK-03", "WREN-07", "OWN-01"], Queue.Waiting.Select(one => one.Code.Text));
        Assert.Equal(4, Queue.FromOthers);
        string[] lines = Draw(Queue).Text.Split('\n');
        Assert.Equal("Asked for by you: not yours to sign", lines[6]);
        Assert.StartsWith("OWN-01", lines[7], StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_tells_case_week_who_when_findings_overrides_and_changes()
    {
        Assert.Contains("LARK-03   4     ben          yesterday       0   0   2   1     4        4, now 5", Draw(Queue).Text, StringComparison.Ordinal);
        Assert.Equal(
            "LARK-03, week 4: revision 4, asked for by ben yesterday; 0 stops, 0 severe, 2 warnings, 1 override, 4 cells changed since the plan was signed; the plan was changed since and is at revision 5.",
            QueueWords.Whole(Queue.Waiting[2], Now));
    }

    [Fact]
    public void The_cursor_stays_on_its_case_when_the_queue_is_read_again()
    {
        QueueState on = Queue.To(3);
        QueueState read = on.With(on.Waiting.Where(one => one.Code.Text != "CRANE-12"), Now);
        Assert.Equal(("WREN-07", 2), (read.Chosen!.Code.Text, read.Index));
    }

    [Fact]
    public void Enter_reviews_and_an_empty_queue_says_so()
    {
        Assert.Equal("SNIPE-08", Assert.IsType<OpenReview>(Assert.Single(QueueScreen.Definition.Press(Queue.To(1), "Enter").Effects)).Code.Text);
        QueueState empty = new() { Account = "3001", Now = Now };
        Assert.Equal("No review waits.", QueueScreen.Definition.Press(empty, "Enter").State.Status);
        Assert.Contains("No plan waits for a review.", Draw(empty).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_of_keys_is_whole()
    {
        KeyTableRules.Hold(QueueActions.Table);
        KeyTableRules.HintsFit(QueueActions.Table, Queue);
    }

    [Theory]
    [InlineData("queue", "Down")]
    [InlineData("queue-help", "?")]
    public void Looks_as_reviewed(string name, string key)
    {
        foreach (PictureSize size in new PictureSize[] { new(80, 24), new(200, 60) })
        {
            Faces.Match(QueueScreen.Definition.Draw(QueueScreen.Definition.Press(Queue, key).State, size).Fit(size), $"{name}-{size.Width}x{size.Height}");
        }
    }

    private static Picture Draw(QueueState state) => QueueScreen.Definition.Draw(state, new(80, 24));

    private static WaitingReview Waiting(string code, int hours, PlanRisk risk) =>
        new(CaseCode.Parse(code)!, new DateOnly(2026, 11, 1), "ben", "3002", Now.AddHours(-hours), 4, 4, risk);
}
