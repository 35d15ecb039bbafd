using Progression.Core.Clinic;
using Progression.Core.Reviews;
using static Progression.Core.Tests.Reviews.Reviewed;

namespace Progression.Core.Tests.Reviews;

public sealed class ReviewRulesTests
{
    private static readonly Reviewed AskedByAnna = New.SavedBy(Anna).Asked(Anna);

    [Fact]
    public void A_supervisor_who_did_not_make_the_plan_signs_it_when_asked() => Assert.Null(ReviewRules.WhyNot(AskedByAnna.Signature(Sue), AskedByAnna.Review));

    [Fact]
    public void Nobody_signs_what_they_made()
    {
        Reviewed own = New.SavedBy(Both).Asked(Anna);
        Assert.Equal("You saved revision 1 of this plan: nobody signs what they made. Somebody else must sign.", WhyNot(ReviewStep.Signed, Both, own));
        Assert.Null(WhyNot(ReviewStep.Signed, Sue, own));
    }

    [Fact]
    public void Nobody_signs_what_they_made_a_part_of()
    {
        Reviewed shared = New.SavedBy(Anna).SavedBy(Both).SavedBy(Anna).Asked(Anna);
        Assert.Equal("You saved revision 2 of this plan: nobody signs what they made. Somebody else must sign.", WhyNot(ReviewStep.Signed, Both, shared));
    }

    [Fact]
    public void What_somebody_else_signed_does_not_count_any_more()
    {
        Reviewed later = New.SavedBy(Both).Asked(Both).Signed(Sue).SavedBy(Anna).Asked(Anna);
        Assert.Null(WhyNot(ReviewStep.Signed, Both, later));
        Assert.NotNull(WhyNot(ReviewStep.Signed, Both, later.SavedBy(Both).Asked(Anna)));
    }

    [Fact]
    public void Nobody_signs_what_they_asked_for_even_when_somebody_else_asked_again()
    {
        Reviewed own = New.SavedBy(Anna).Asked(Both);
        Assert.Equal("You asked for this review: nobody signs what they asked for. Somebody else must sign.", WhyNot(ReviewStep.Signed, Both, own));
        Assert.NotNull(WhyNot(ReviewStep.Signed, Both, own.Then(own.Act(ReviewStep.Withdrawn, Both)).Asked(Anna)));
    }

    [Theory]
    [InlineData(ReviewStep.Requested, "TB")]
    [InlineData(ReviewStep.Withdrawn, "TB")]
    [InlineData(ReviewStep.Commented, "TSB")]
    [InlineData(ReviewStep.Returned, "SB")]
    [InlineData(ReviewStep.Signed, "SB")]
    public void Each_step_is_for_these_roles_and_no_other(ReviewStep step, string letters)
    {
        Reviewed made = step == ReviewStep.Requested ? New.SavedBy(Anna) : AskedByAnna;
        (string Letter, ClinicPerson Person)[] people = [("T", Ben), ("S", Sue), ("B", Both), ("L", Lead), ("K", new("0", "root", [ClinicRole.Keeper])), ("N", new("9", "guest", []))];
        Assert.Equal(letters, string.Concat(people.Where(one => WhyNot(step, one.Person, made) is null).Select(one => one.Letter)));
    }

    [Fact]
    public void A_role_that_somebody_claims_does_not_help()
    {
        ReviewAct claimed = AskedByAnna.Signature(Sue);
        ReviewAct act = claimed with { By = claimed.By with { Role = ClinicRole.Therapist } };
        Assert.Equal("To sign a plan takes a supervisor; the account sue is therapist.", ReviewRules.WhyNot(act, AskedByAnna.Review));
    }

    [Fact]
    public void What_nobody_asked_for_is_neither_signed_nor_returned()
    {
        Reviewed quiet = New.SavedBy(Anna);
        Assert.Equal("No review of the plan is asked for.", WhyNot(ReviewStep.Signed, Sue, quiet));
        Assert.Equal("No review of the plan is asked for.", WhyNot(ReviewStep.Returned, Sue, quiet));
        Assert.Equal("No request waits that could be taken back.", WhyNot(ReviewStep.Withdrawn, Anna, quiet));
    }

    [Fact]
    public void What_was_changed_after_the_request_is_not_signed_and_can_be_returned()
    {
        Reviewed stale = AskedByAnna.SavedBy(Ben);
        Assert.Equal(
            "Review of revision 1 was asked for, and the plan is at revision 2 now. anna must ask again, or you return it.", WhyNot(ReviewStep.Signed, Sue, stale));
        Assert.Null(WhyNot(ReviewStep.Returned, Sue, stale));
        Assert.Null(WhyNot(ReviewStep.Requested, Anna, stale));
        Assert.Null(WhyNot(ReviewStep.Signed, Sue, stale.Asked(Anna)));
    }

    [Fact]
    public void A_signature_is_for_the_revision_that_was_read()
    {
        ReviewAct read = AskedByAnna.Signature(Sue);
        Assert.Equal(
            "Revision 1 was read, and the plan is at revision 2 now. Read it again first.", ReviewRules.WhyNot(read, AskedByAnna.SavedBy(Ben).Asked(Anna).Review));
        Assert.Equal(
            "There is no revision 1 of the plan with the hash ffffffffffff.",
            ReviewRules.WhyNot(read with { Plan = read.Plan with { Hash = new string('f', 64) } }, AskedByAnna.Review));
    }

    [Fact]
    public void One_review_is_asked_for_at_a_time_and_none_of_a_signed_plan()
    {
        Assert.Equal("anna has already asked for a review of it.", WhyNot(ReviewStep.Requested, Ben, AskedByAnna));
        Assert.Equal(
            "The plan is signed as it stands; a review is asked for once something is changed.", WhyNot(ReviewStep.Requested, Anna, AskedByAnna.Signed(Sue)));
        Assert.Null(WhyNot(ReviewStep.Requested, Anna, AskedByAnna.Signed(Sue).SavedBy(Anna)));
    }

    [Fact]
    public void A_plan_is_returned_only_with_a_comment()
    {
        ReviewAct bare = AskedByAnna.Act(ReviewStep.Returned, Sue);
        Assert.Equal("A plan is returned with a comment: what is to be changed, and why.", ReviewRules.WhyNot(bare, AskedByAnna.Review));
        Assert.Null(ReviewRules.WhyNot(bare with { Comments = [Slower] }, AskedByAnna.Review));
    }

    [Fact]
    public void A_comment_has_words_and_not_too_many()
    {
        ReviewAct bare = AskedByAnna.Act(ReviewStep.Commented, Anna);
        Assert.Equal("A comment needs words.", ReviewRules.WhyNot(bare, AskedByAnna.Review));
        Assert.Equal("A comment without words says nothing.", ReviewRules.WhyNot(bare with { Comments = [new(null, "  ")] }, AskedByAnna.Review));
        Assert.Equal("A comment has at most 1000 characters.", ReviewRules.WhyNot(bare with { Comments = [new(null, new string('x', 1001))] }, AskedByAnna.Review));
        Assert.Null(ReviewRules.WhyNot(bare with { Comments = [new(null, new string('x', 1000))] }, AskedByAnna.Review));
    }

    [Fact]
    public void A_safety_stop_is_settled_before_anybody_signs()
    {
        ReviewAct act = AskedByAnna.Signature(Sue) with { Risk = new(1, 0, 0, 0, null), Comments = [new(null, "I know.")] };
        Assert.Equal("The plan has 1 safety stop: a stop is settled before anybody signs. Return the plan with a comment.", ReviewRules.WhyNot(act, AskedByAnna.Review));
    }

    [Fact]
    public void What_is_severe_is_signed_only_with_the_reason()
    {
        ReviewAct act = AskedByAnna.Signature(Sue) with { Risk = new(0, 2, 0, 0, null) };
        Assert.Equal("The plan has 2 severe findings: say in a comment why it is right all the same, or return the plan.", ReviewRules.WhyNot(act, AskedByAnna.Review));
        Assert.Null(ReviewRules.WhyNot(act with { Comments = [new(null, "Both agreed with the surgeon.")] }, AskedByAnna.Review));
    }

    [Fact]
    public void A_signature_says_what_it_means() =>
        Assert.Equal("A signature says what it means.", ReviewRules.WhyNot(AskedByAnna.Signature(Sue) with { Meaning = null }, AskedByAnna.Review));

    private static string? WhyNot(ReviewStep step, ClinicPerson person, Reviewed made) => ReviewRules.WhyNot(step, person, made.Review);
}
