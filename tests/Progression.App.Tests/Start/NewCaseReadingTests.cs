using Progression.App.Actions;
using Progression.App.Start;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Library;

namespace Progression.App.Tests.Start;

public sealed class NewCaseReadingTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly NewCaseReading Reading = new(Today, ["LARK-03"]);

    [Theory]
    [InlineData(NewCaseField.Code, "lark 4", "capital letters")]
    [InlineData(NewCaseField.Code, "lark-03", "not in the list")]
    [InlineData(NewCaseField.Operation, "", "2026-05-28 to 2026-11-25")]
    [InlineData(NewCaseField.Operation, "11.10.2026", "2026-05-28 to 2026-11-25")]
    [InlineData(NewCaseField.Operation, "2026-11-26", "2026-05-28 to 2026-11-25")]
    [InlineData(NewCaseField.Operation, "2026-05-27", "2026-05-28 to 2026-11-25")]
    [InlineData(NewCaseField.Operation, "2026-02-30", "no such day")]
    [InlineData(NewCaseField.Side, "both", "left, right")]
    [InlineData(NewCaseField.WeightBearing, "half", "none, touch, partial, as tolerated, full, not known")]
    [InlineData(NewCaseField.WeightBearing, "", "none, touch, partial, as tolerated, full, not known")]
    [InlineData(NewCaseField.Procedure, " ", "1 to 120 letters")]
    public void Refuses_a_line_and_says_what_is_allowed(NewCaseField field, string text, string allowed) =>
        Assert.Contains(allowed, Reading.Wrong(Filled(field, text), field)!.ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData(NewCaseField.Code, " ab-1 ")]
    [InlineData(NewCaseField.Operation, "2026-05-28")]
    [InlineData(NewCaseField.Operation, "2026-11-25")]
    [InlineData(NewCaseField.Side, "Right")]
    [InlineData(NewCaseField.WeightBearing, "As tolerated")]
    [InlineData(NewCaseField.WeightBearing, "not known")]
    public void Takes_a_line_at_the_ends_of_what_is_allowed(NewCaseField field, string text) => Assert.Null(Reading.Wrong(Filled(field, text), field));

    // Post-op week 1 is days 0 to 6 (the reference's counting), so day 0 is week 1, day 7 week 2 and day 181 week 26.
    [Theory]
    [InlineData("2026-11-25", 6)]
    [InlineData("2026-11-18", 7)]
    [InlineData("2026-05-28", 26)]
    public void Any_case_it_takes_drafts_six_weeks_from_today_without_stim_until_screened(string operated, int weeks)
    {
        ClinicalLibrary library = LibraryReader.Default();
        Case made = Reading.Case(Filled(NewCaseField.Operation, operated));
        PlanRevision plan = PlanDraft.Draft(made, library).Value!;
        Assert.Equal(weeks, plan.Weeks);
        Assert.True(plan.From >= Today);
        Assert.Contains("not answered", Assert.Single(plan.StimBarred), StringComparison.Ordinal);
    }

    [Fact]
    public void Load_that_is_not_known_stays_not_known() => Assert.Null(Reading.Case(Filled(NewCaseField.WeightBearing, "not known")).WeightBearing);

    private static NewCaseForm Filled(NewCaseField field, string text)
    {
        string[] good = ["NEW-01", "2026-11-20", "left", "as tolerated", "Total knee replacement"];
        good[(int)field] = text;
        return NewCaseForm.Blank with { Lines = [.. good.Select(LineEntry.Of)] };
    }
}
