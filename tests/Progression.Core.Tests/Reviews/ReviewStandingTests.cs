using Progression.Core.Reviews;
using static Progression.Core.Tests.Reviews.Reviewed;

namespace Progression.Core.Tests.Reviews;

public sealed class ReviewStandingTests
{
    private static readonly Reviewed Signed = New.SavedBy(Anna).Asked(Anna).Signed(Sue);

    [Fact]
    public void A_plan_nobody_signed_is_an_unsigned_draft() => Check(New.SavedBy(Anna), "unsigned", "UNSIGNED DRAFT", "");

    [Fact]
    public void A_request_waits_and_does_not_sign() => Check(New.SavedBy(Anna).Asked(Anna), "review asked", "UNSIGNED DRAFT", "Review asked for by anna, 2 Nov 2026.");

    [Fact]
    public void A_request_goes_stale_when_the_plan_is_changed() => Check(
        New.SavedBy(Anna).Asked(Anna).SavedBy(Ben), "changed since review asked", "UNSIGNED DRAFT",
        "Review of revision 1 asked for by anna, 2 Nov 2026; the plan was changed since.");

    [Fact]
    public void A_request_taken_back_is_as_if_it_had_not_been()
    {
        Reviewed asked = New.SavedBy(Anna).Asked(Anna);
        Check(asked.Then(asked.Act(ReviewStep.Withdrawn, Anna)), "unsigned", "UNSIGNED DRAFT", "");
    }

    [Fact]
    public void A_returned_plan_says_by_whom_and_with_how_much_until_somebody_asks_again()
    {
        Reviewed asked = New.SavedBy(Anna).Asked(Anna);
        Reviewed returned = asked.Then(asked.Act(ReviewStep.Returned, Sue) with { Comments = [Slower, new(null, "And less walking.")] });
        Check(returned, "returned", "UNSIGNED DRAFT", "Returned by sue, 2 Nov 2026, with 2 comments.");
        Check(returned.SavedBy(Anna), "returned", "UNSIGNED DRAFT", "Returned by sue, 2 Nov 2026, with 2 comments.");
        Check(returned.SavedBy(Anna).Asked(Anna), "review asked", "UNSIGNED DRAFT", "Review asked for by anna, 2 Nov 2026.");
    }

    [Fact]
    public void A_comment_changes_nothing_about_where_it_stands()
    {
        Reviewed asked = New.SavedBy(Anna).Asked(Anna);
        Check(asked.Then(asked.Act(ReviewStep.Commented, Sue) with { Comments = [Slower] }), "review asked", "UNSIGNED DRAFT", "Review asked for by anna, 2 Nov 2026.");
    }

    [Fact]
    public void A_signature_counts_for_the_plan_as_it_stands_and_no_other()
    {
        Check(Signed, "signed", "Signed by sue, 2 Nov 2026, revision 1, hash 111111111111", "");
        Check(Signed.SavedBy(Anna), "changed since signed", "UNSIGNED DRAFT: changed since it was signed by sue, 2 Nov 2026, revision 1", "");
        Check(
            Signed.SavedBy(Anna).Asked(Anna), "review asked", "UNSIGNED DRAFT: changed since it was signed by sue, 2 Nov 2026, revision 1",
            "Review asked for by anna, 2 Nov 2026.");
    }

    [Fact]
    public void Another_plan_under_the_same_number_is_not_signed() =>
        Assert.Equal(SignatureState.ChangedSince, ReviewStanding.Of(new(1, new string('a', 64)), Signed.Record).State);

    [Fact]
    public void A_print_of_a_plan_that_is_not_signed_says_so_first()
    {
        Assert.Equal(["UNSIGNED DRAFT.", "No supervisor has signed the plan as it stands here. It is not for the patient's hands."], PrintMark.Of(ReviewStanding.NotSaved, null));
        Assert.StartsWith("UNSIGNED DRAFT: changed since it was signed by sue", PrintMark.Of(Signed.SavedBy(Anna).Standing, new string('c', 64))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_print_of_a_signed_plan_says_by_whom_what_they_said_and_both_hashes_in_full() => Assert.Equal(
        [
            "Signed by sue, 2 Nov 2026, revision 1, hash 111111111111.",
            "\"I have reviewed this plan and agree that it is carried out.\"",
            "sue, supervisor, 2026-11-02 09:16 UTC",
            $"Plan hash  {new string('1', 64)}",
            $"Chain head {new string('c', 64)}",
        ],
        PrintMark.Of(Signed.Standing, new string('c', 64)));

    [Fact]
    public void Comments_go_back_to_the_signature_before_and_those_made_with_it_stay()
    {
        Reviewed asked = New.SavedBy(Anna).Asked(Anna);
        Reviewed first = asked.Then(asked.Act(ReviewStep.Commented, Sue) with { Comments = [new(null, "old")] });
        Reviewed signed = first.Then(first.Signature(Sue) with { Comments = [new(null, "heed this")] });
        Assert.Equal(["old", "heed this"], first.Record.Comments.Concat(signed.Record.Comments).Select(said => said.Comment.Text));
        Reviewed after = signed.SavedBy(Anna);
        Assert.Equal(["heed this", "Too fast a step for this lag."], after.Then(after.Act(ReviewStep.Commented, Sue) with { Comments = [Slower] }).Record.Comments.Select(said => said.Comment.Text));
    }

    private static void Check(Reviewed made, string brief, string signature, string review)
    {
        ReviewStanding standing = made.Standing;
        Assert.Equal((brief, signature, review), (SignatureWords.Brief(standing), SignatureWords.Of(standing), SignatureWords.Review(standing)));
    }
}
