using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

/// <content>Reviews, which are for a certain plan, and the chain that is of no case.</content>
public abstract partial class PlanStoreContract
{
    [Fact]
    public void A_review_is_saved_only_while_the_plan_it_was_made_for_is_the_newest()
    {
        RevisionStamp first = Sample.SaveRevisions(Store, "K-1", 1);
        Submission review = Sample.Of("K-1", new Draft(RecordKind.Review, null, """{"act":"signed"}""")) with { Requires = [new(RecordKind.Plan, first.Reference)] };
        RevisionStamp second = Sample.Saved(Store.Append(Sample.Plan("K-1", first.Reference, """{"week":9}""")));

        Assert.Equal([second], Assert.IsType<AppendResult.Conflict>(Store.Append(review)).Current);
        Assert.Null(Store.Load("K-1")!.Head(RecordKind.Review));
        RevisionStamp signed = Sample.Saved(Store.Append(review with { Requires = [new(RecordKind.Plan, second.Reference)] }));
        Assert.Equal(signed, Store.Load("K-1")!.Head(RecordKind.Review)!.Stamp);
    }

    [Fact]
    public void What_a_review_needs_and_the_case_does_not_have_is_a_conflict()
    {
        Submission review = Sample.Of("K-1", new Draft(RecordKind.Review, null, "{}")) with { Requires = [new(RecordKind.Plan, new(1, new string('a', 64)))] };

        Assert.Empty(Assert.IsType<AppendResult.Conflict>(Store.Append(review)).Current);
        Assert.Null(Store.Load("K-1"));
    }

    [Fact]
    public void Audit_entries_follow_one_another_whoever_wrote_the_last_and_no_list_shows_them()
    {
        Sample.SaveRevisions(Store, "K-1", 1);
        Submission seen = Sample.Of(AuditChain.Code, new Draft(RecordKind.Audit, null, """{"act":"viewed"}"""));

        Assert.Equal(1, Sample.Saved(Store.Append(seen)).Revision);
        Assert.Equal(2, Sample.Saved(Store.Append(seen with { By = Sample.Supervisor })).Revision);
        Assert.Equal(["K-1"], Store.List(row => row.CaseCode).Cases);
        Assert.Equal([Sample.Therapist, Sample.Supervisor], Store.History(AuditChain.Code, RecordKind.Audit).Select(stamp => stamp.By));
        Assert.True(Store.Verify().IsSound);
    }

    [Fact]
    public void The_audit_chain_takes_nothing_else_and_no_case_takes_audit_entries()
    {
        Assert.IsType<AppendResult.Refused>(Store.Append(Sample.Plan(AuditChain.Code, null, "{}")));
        Assert.IsType<AppendResult.Refused>(Store.Append(Sample.Of("K-1", new Draft(RecordKind.Audit, null, "{}"))));
    }
}
