using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.App.Tests.Grid;

/// <summary>Reviewing in the grid: who may do what, what is typed, what is seen.</summary>
public sealed class GridReviewTests
{
    [Fact]
    public void The_title_says_where_the_review_stands()
    {
        Assert.Equal("saved, unsigned", Kept(SampleReview.Saved(SampleReview.Anna)));
        Assert.Equal("saved, review asked", Kept(SampleReview.Asked(SampleReview.Anna)));
        Assert.Equal("saved, signed", Kept(SampleReview.Asked(SampleReview.Anna, SampleReview.Signature)));
        Assert.Equal("1 change unsaved", Kept(Sample.Press(Sample.At(SampleReview.Asked(SampleReview.Anna, SampleReview.Signature), "bend", 3), "x")));
        Assert.Equal("saved, review asked", Kept(SampleReview.Changed(SampleReview.Sue)));
        Assert.Equal("saved", Kept(Sample.State));
    }

    [Fact]
    public void A_therapist_asks_for_a_review_with_a_word()
    {
        GridState asking = Sample.Type(Sample.Press(SampleReview.Saved(SampleReview.Anna), "o", "a"), "Week 3, please.");
        DoReview asked = Assert.IsType<DoReview>(Assert.Single(GridScreen.Definition.Press(asking, "Enter").Effects));
        Assert.Equal((ReviewStep.Requested, new ReviewComment(null, "Week 3, please.")), (asked.Step, Assert.Single(asked.Comments)));
    }

    [Fact]
    public void What_is_not_saved_is_not_asked_for()
    {
        GridState changed = Sample.Press(Sample.At(SampleReview.Saved(SampleReview.Anna), "bend", 3), "x", "o");
        Assert.StartsWith("The plan has unsaved changes", Sample.Press(changed, "a").Status, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_asked_or_made_it_is_told_why_they_cannot_sign_and_the_try_is_written_down()
    {
        GridState own = Sample.Press(SampleReview.Asked(SampleReview.Anna), "o");
        Assert.Equal(new RefuseReview(ReviewStep.Signed), Assert.Single(GridScreen.Definition.Press(own, "s").Effects));
        Assert.Equal("To return a plan takes a supervisor; the account anna is therapist.", Sample.Press(own, "r").Status);
    }

    [Fact]
    public void A_supervisor_changes_nothing_in_the_plan()
    {
        GridState state = Sample.At(SampleReview.Asked(SampleReview.Sue), "bend", 3);
        Assert.All(["x", "Enter", "P", "n", ">", "a", "s", "i", "S", "R"], key =>
            Assert.Equal("To change a case or a plan takes a therapist; the account sue is supervisor.", Sample.Press(state, key).Status));
        Assert.DoesNotContain("edit", GridActions.Table.HintLine(state, 80), StringComparison.Ordinal);
        Assert.Contains("o review", GridActions.Table.HintLine(state, 80), StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_is_returned_only_with_a_comment()
    {
        GridState typing = Sample.Press(SampleReview.Asked(SampleReview.Sue), "o", "r");
        Assert.Equal(("A plan is returned with a comment.", GridMode.Return), (Sample.Press(typing, "Enter").Status, Sample.Press(typing, "Enter").Mode));
        DoReview returned = Assert.IsType<DoReview>(Assert.Single(GridScreen.Definition.Press(Sample.Type(typing, "Less in week 3."), "Enter").Effects));
        Assert.Equal(ReviewStep.Returned, returned.Step);
    }

    [Fact]
    public void A_comment_belongs_to_the_cell_under_the_cursor()
    {
        GridState typing = Sample.Type(Sample.Press(Sample.At(SampleReview.Asked(SampleReview.Sue), "bend", 3), "C"), "Less.");
        DoReview said = Assert.IsType<DoReview>(Assert.Single(GridScreen.Definition.Press(typing, "Enter").Effects));
        Assert.Equal((ReviewStep.Commented, new ReviewComment(new CellAddress("bend", 3), "Less.")), (said.Step, Assert.Single(said.Comments)));
        Assert.Equal(GridMode.Grid, Sample.Press(typing, "Enter").Mode);
    }

    [Fact]
    public void A_commented_cell_has_its_mark_its_line_and_a_key_that_goes_there()
    {
        GridState state = SampleReview.Asked(SampleReview.Anna, SampleReview.Said);
        GridState there = Sample.Press(state, ";");
        Assert.Equal((new CellAddress("bend", 3), "sue: Less in week 3, please."), (there.Cursor, there.Status));
        Picture picture = GridScreen.Definition.Draw(Sample.At(state, "bend", 3), new(80, 24));
        Assert.Contains("\" sue: Less in week 3, please.", picture.Text, StringComparison.Ordinal);
        Assert.Contains("\"", GridText(state), StringComparison.Ordinal);
        Assert.Contains("#", GridText(Sample.Press(Sample.At(state, "bend", 3), "P")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_changed_since_the_signature_is_marked_in_its_cell_and_walked_over()
    {
        GridState state = Sample.Press(SampleReview.Changed(SampleReview.Sue), "M");
        Assert.Contains("▸", GridText(state), StringComparison.Ordinal);
        Assert.DoesNotContain("▸", GridText(Sample.Press(state, "M")), StringComparison.Ordinal);
        GridState there = Sample.Press(state, ".");
        Assert.Equal(new CellAddress("bend", 3), there.Cursor);
        Assert.StartsWith("Changed cell 1 of 1: was", there.Status, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_of_the_review_says_what_changed_why_what_was_found_measured_and_said()
    {
        string page = string.Join('\n', ReviewText.Lines(SampleReview.Changed(SampleReview.Sue, SampleReview.Said), 100).Select(row => row.Text));
        Assert.StartsWith("UNSIGNED DRAFT: changed since it was signed by sue, 16 Nov 2026, revision 1.", page, StringComparison.Ordinal);
        Assert.Contains("Bend, week 3: was heel-slide 3x11 2/day, is empty *. Set by hand: sore after week 2", page, StringComparison.Ordinal);
        Assert.Contains("? warning: Week 5 asks for long walks.", page, StringComparison.Ordinal);
        Assert.Contains("extension_active 14 (the library has no such measure now", page, StringComparison.Ordinal);
        Assert.Contains("assessment of 2026-11-16", page, StringComparison.Ordinal);
        Assert.Contains("The plan: Else well made. (sue, 16 Nov 2026, revision 1)", page, StringComparison.Ordinal);
        Assert.Contains("sue (supervisor) signed, revision 1: \"I have reviewed this", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_signature_says_what_it_means_and_is_asked_for_twice()
    {
        GridState form = Sample.Press(SampleReview.Asked(SampleReview.Sue), "o", "s", "Down", "Down", "Down");
        GridState question = Sample.Press(Sample.Type(form, "Well made."), "Enter");
        Assert.Equal(GridMode.Confirm, question.Mode);
        Assert.Contains("y signs revision 1 as sue; Esc goes back.", GridScreen.Definition.Draw(question, new(80, 24)).Text, StringComparison.Ordinal);
        Assert.Empty(GridScreen.Definition.Press(question, "x", "x").Effects);
        DoReview signed = Assert.IsType<DoReview>(Assert.Single(GridScreen.Definition.Press(question, "y", "y").Effects));
        Assert.Equal((ReviewStep.Signed, SignatureMeaning.AnsweredFor, "Well made."), (signed.Step, signed.Meaning, Assert.Single(signed.Comments).Text));
        Assert.Equal((GridMode.Sign, "Well made."), (Sample.Press(question, "Esc").Mode, Sample.Press(question, "Esc").Entry!.Line.Text));
    }

    [Fact]
    public void What_is_severe_is_signed_only_with_a_reason()
    {
        GridState severe = SampleReview.Asked(SampleReview.Sue);
        severe = severe with { Review = severe.Review, Findings = [.. severe.Findings.Select(finding => finding with { Severity = Core.Findings.Severity.Severe })] };
        GridState form = Sample.Press(severe, "o", "s");
        Assert.StartsWith("What is severe is signed only with the reason", Sample.Press(form, "Enter").Status, StringComparison.Ordinal);
        Assert.Equal(GridMode.Confirm, Sample.Press(Sample.Type(form, "Agreed with the surgeon."), "Enter").Mode);
    }

    [Theory]
    [InlineData("review", "o")]
    [InlineData("review-marks", "M . Esc")]
    [InlineData("review-sign", "o s Down")]
    [InlineData("review-confirm", "o s Enter")]
    [InlineData("review-return", "o r")]
    [InlineData("review-comment", "C")]
    public void Looks_as_reviewed(string name, string keys)
    {
        GridState state = Sample.Press(SampleReview.Changed(SampleReview.Sue, SampleReview.Said), keys.Split(' '));
        foreach (PictureSize size in new PictureSize[] { new(80, 24), new(200, 60) })
        {
            Faces.Match(GridScreen.Definition.Draw(state, size).Fit(size), $"{name}-{size.Width}x{size.Height}");
        }
    }

    private static string Kept(GridState state) => GridScreen.Definition.Where(state).Kept;

    private static string GridText(GridState state) => GridSheet.Whole(state, 200).Text;
}
