using Progression.Core.Reviews;
using static Progression.Core.Tests.Reviews.Reviewed;

namespace Progression.Core.Tests.Reviews;

public sealed class ReviewAuditTests
{
    private static readonly Reviewed Asked = New.SavedBy(Anna).Asked(Anna);

    [Fact]
    public void An_honest_course_of_reviews_has_nothing_to_name()
    {
        Reviewed returned = Asked.Then(Asked.Act(ReviewStep.Returned, Sue) with { Comments = [Slower] });
        Reviewed again = returned.SavedBy(Anna).Asked(Anna);
        Assert.Empty(Walk(again.Signed(Sue), [1, 1, 2, 2]));
    }

    [Fact]
    public void A_signature_by_who_made_the_plan_is_named()
    {
        Reviewed own = New.SavedBy(Both).Asked(Anna);
        Assert.Equal(
            ["Case K-1, review revision 2: bo (3004) signed for plan revision 1, which does not hold. You saved revision 1 of this plan: nobody signs what they made. Somebody else must sign."],
            Walk(own.Signed(Both), [1, 1]));
    }

    [Fact]
    public void A_signature_in_a_role_that_may_not_sign_is_named() =>
        Assert.Contains("To sign a plan takes a supervisor", Assert.Single(Walk(Asked.Signed(Ben), [1, 1])), StringComparison.Ordinal);

    [Fact]
    public void A_signature_for_a_plan_that_had_gone_on_is_named() =>
        Assert.Contains("the plan is at revision 2 now", Assert.Single(Walk(Asked.Signed(Sue), [1, 2], plans: 2)), StringComparison.Ordinal);

    [Fact]
    public void A_signature_that_another_account_saved_is_named()
    {
        ReviewAudit audit = Started();
        Assert.Equal(
            ["Case K-1, review revision 2: sue (3003) signed for plan revision 1, which does not hold. It was saved by the account 3001."],
            audit.Review(2, Anna.UserId, Monday.AddMinutes(1), Asked.Signed(Sue).Record));
    }

    [Fact]
    public void A_signature_dated_otherwise_than_it_was_saved_is_named() =>
        Assert.Contains("bears another time", Assert.Single(Started().Review(2, Sue.UserId, Monday.AddDays(1), Asked.Signed(Sue).Record)), StringComparison.Ordinal);

    [Fact]
    public void What_was_there_before_can_be_neither_changed_nor_left_out()
    {
        Assert.Contains("does not carry on", Assert.Single(Started().Review(2, Sue.UserId, Monday, ReviewRecord.Empty)), StringComparison.Ordinal);
        ReviewAct other = Asked.Record.Acts[0] with { Comments = [Slower] };
        Assert.Contains("does not carry on", Started().Review(2, Anna.UserId, Monday, new([other]))[0], StringComparison.Ordinal);
    }

    private static ReviewAudit Started()
    {
        ReviewAudit audit = new("K-1");
        audit.Plan(Asked.Plans[0]);
        Assert.Empty(audit.Review(1, Anna.UserId, Monday, Asked.Record));
        return audit;
    }

    /// <summary>Saves one act at a time; each after so many plans.</summary>
    private static List<string> Walk(Reviewed made, int[] plansBefore, int? plans = null)
    {
        ReviewAudit audit = new("K-1");
        List<string> wrong = [];
        int taken = 0;
        for (int act = 0; act < made.Record.Acts.Length; act++)
        {
            for (; taken < plansBefore[act]; taken++)
            {
                audit.Plan(plans is null ? made.Plans[taken] : new PlanStamp(taken + 1, Hash(taken + 1), Anna.UserId, Anna.Name, Monday));
            }

            ReviewAct saved = made.Record.Acts[act];
            wrong.AddRange(audit.Review(act + 1, saved.By.UserId, saved.At, new([.. made.Record.Acts.Take(act + 1)])));
        }

        return wrong;
    }
}
