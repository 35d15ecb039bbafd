using System.Collections.Immutable;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

/// <summary>What every store does, whatever it keeps its revisions in.</summary>
public abstract partial class PlanStoreContract : IDisposable
{
    protected abstract IPlanStore Store { get; }

    /// <summary>A second, empty store of the same make.</summary>
    protected abstract IPlanStore Another();

    [Fact]
    public void An_empty_store_says_so()
    {
        Assert.Null(Store.Load("K-1"));
        Assert.Null(Store.Read("K-1", RecordKind.Plan, 1));
        Assert.Empty(Store.History("K-1", RecordKind.Plan));
        Assert.Equal(0, Store.List(new CaseQuery()).Total);
        Assert.Equal(0, Store.Generation());
        Assert.True(Store.Verify().IsSound);
    }

    [Fact]
    public void Gives_back_what_was_saved_in_canonical_form()
    {
        RevisionStamp stamp = Sample.Saved(Store.Append(Sample.Plan("K-1", null, """{ "weeks" : 6, "dose": {"on": 10.0} }""")));

        Assert.Equal(("K-1", RecordKind.Plan, 1, null), (stamp.CaseCode, stamp.Kind, stamp.Revision, stamp.PreviousHash));
        Assert.Equal((Sample.Therapist, Sample.Monday), (stamp.By, stamp.At));
        StoredRevision head = Store.Load("K-1")!.Head(RecordKind.Plan)!;
        Assert.Equal(stamp, head.Stamp);
        Assert.Equal("""{"dose":{"on":10.0},"weeks":6}""", head.Body);
        Assert.Null(Store.Load("K-1")!.Head(RecordKind.Case));
        Assert.Empty(Store.Load("K-1")!.Damage);
    }

    [Fact]
    public void The_hash_of_a_revision_is_that_of_its_content_and_its_past()
    {
        // Computed outside the program: printf 'K-1\nplan\n1\n\n{"a":1}' | sha256sum, and the same with 2 and the first hash.
        RevisionStamp first = Sample.Saved(Store.Append(Sample.Plan("K-1", null, """{"a":1}""")));
        RevisionStamp second = Sample.Saved(Store.Append(Sample.Plan("K-1", first.Reference, """{"a":2}""")));

        Assert.Equal("c096832e29ea73738eb6d11d9b5219d710e67bd8f64ae42429e937561868422b", first.Hash);
        Assert.Equal("4c285f3bb2fd459d99d2ebc70ce1d033b5f39e0ba531aa7227fc8b1c0ad7bf6b", second.Hash);
        Assert.Equal(first.Hash, second.PreviousHash);
    }

    [Fact]
    public void Keeps_every_revision_readable()
    {
        Sample.SaveRevisions(Store, "K-1", 4);

        Assert.Equal([1, 2, 3, 4], Store.History("K-1", RecordKind.Plan).Select(stamp => stamp.Revision));
        Assert.Equal("""{"text":"contractions 20","week":2}""", Store.Read("K-1", RecordKind.Plan, 2)!.Body);
        Assert.Null(Store.Read("K-1", RecordKind.Plan, 5));
        Assert.Equal(4, Store.Generation());
    }

    [Fact]
    public void A_draft_based_on_an_older_revision_is_a_conflict_and_writes_nothing()
    {
        RevisionStamp first = Sample.SaveRevisions(Store, "K-1", 1);
        RevisionStamp second = Sample.Saved(Store.Append(
            Sample.Plan("K-1", first.Reference, """{"week":"hers"}""") with { By = Sample.Supervisor, At = Sample.Monday.AddHours(2) }));

        AppendResult result = Store.Append(Sample.Plan("K-1", first.Reference, """{"week":"mine"}"""));

        RevisionStamp current = Assert.Single(Assert.IsType<AppendResult.Conflict>(result).Current);
        Assert.Equal(second, current);
        Assert.Equal((Sample.Supervisor, Sample.Monday.AddHours(2)), (current.By, current.At));
        Assert.Equal(2, Store.Generation());
        Assert.Equal("""{"week":"hers"}""", Store.Load("K-1")!.Head(RecordKind.Plan)!.Body);
    }

    [Fact]
    public void A_first_draft_for_a_chain_that_has_begun_is_a_conflict()
    {
        RevisionStamp first = Sample.SaveRevisions(Store, "K-1", 1);

        Assert.Equal([first], Assert.IsType<AppendResult.Conflict>(Store.Append(Sample.Plan("K-1", null, "{}"))).Current);
    }

    [Fact]
    public void A_draft_based_on_the_right_number_but_another_content_is_a_conflict()
    {
        RevisionStamp first = Sample.SaveRevisions(Store, "K-1", 1);

        Assert.IsType<AppendResult.Conflict>(Store.Append(Sample.Plan("K-1", first.Reference with { Hash = new string('0', 64) }, "{}")));
    }

    [Fact]
    public void A_draft_for_a_chain_that_does_not_exist_is_a_conflict_without_a_current_revision() =>
        Assert.Empty(Assert.IsType<AppendResult.Conflict>(Store.Append(Sample.Plan("K-1", new(3, new string('0', 64)), "{}"))).Current);

    [Fact]
    public void Two_drafts_land_together()
    {
        AppendResult result = Store.Append(Sample.Of("K-1", new(RecordKind.Case, null, """{"side":"left"}"""), new(RecordKind.Plan, null, "{}")));

        ImmutableArray<RevisionStamp> stamps = Assert.IsType<AppendResult.Saved>(result).Stamps;
        Assert.Equal([RecordKind.Case, RecordKind.Plan], stamps.Select(stamp => stamp.Kind));
        Assert.Equal(stamps, Store.Load("K-1")!.Heads.Select(head => head.Stamp));
    }

    [Fact]
    public void When_one_of_two_drafts_is_stale_neither_lands()
    {
        RevisionStamp plan = Sample.SaveRevisions(Store, "K-1", 1);

        AppendResult result = Store.Append(Sample.Of("K-1", new(RecordKind.Case, null, "{}"), new(RecordKind.Plan, null, "{}")));

        Assert.Equal([plan], Assert.IsType<AppendResult.Conflict>(result).Current);
        Assert.Null(Store.Load("K-1")!.Head(RecordKind.Case));
        Assert.Equal(1, Store.Generation());
    }

    [Fact]
    public void Repeating_a_submission_that_landed_gives_the_same_answer_and_no_second_revision()
    {
        Submission submission = Sample.Of("K-1", new(RecordKind.Case, null, """{"side":"left"}"""), new(RecordKind.Plan, null, """{"a":1,"b":2}"""));
        AppendResult.Saved first = Assert.IsType<AppendResult.Saved>(Store.Append(submission));
        Submission again = Sample.Of("K-1", new(RecordKind.Case, null, """{"side":"left"}"""), new(RecordKind.Plan, null, """{"b":2, "a":1}"""));

        AppendResult.Saved second = Assert.IsType<AppendResult.Saved>(Store.Append(again with { At = Sample.Monday.AddMinutes(3) }));

        Assert.Equal(first.Stamps, second.Stamps);
        Assert.Equal(2, Store.Generation());
    }

    [Fact]
    public void A_repeat_is_recognised_even_when_others_have_gone_on()
    {
        RevisionStamp first = Sample.SaveRevisions(Store, "K-1", 1);
        Submission mine = Sample.Plan("K-1", first.Reference, """{"week":"mine"}""");
        RevisionStamp second = Sample.Saved(Store.Append(mine));
        Sample.Saved(Store.Append(Sample.Plan("K-1", second.Reference, """{"week":"later"}""")));

        Assert.Equal(second, Sample.Saved(Store.Append(mine)));
    }

    [Fact]
    public void The_same_content_from_somebody_else_is_a_conflict()
    {
        Sample.Saved(Store.Append(Sample.Plan("K-1", null, "{}")));

        Assert.IsType<AppendResult.Conflict>(Store.Append(Sample.Plan("K-1", null, "{}") with { By = Sample.Supervisor }));
    }

    [Fact]
    public void Keeps_the_time_in_utc_to_the_millisecond()
    {
        DateTimeOffset local = new DateTimeOffset(2026, 3, 2, 9, 30, 0, TimeSpan.FromHours(2)).AddTicks(1_239_999);

        RevisionStamp stamp = Sample.Saved(Store.Append(Sample.Plan("K-1", null, "{}") with { At = local }));

        Assert.Equal(new DateTimeOffset(2026, 3, 2, 7, 30, 0, 123, TimeSpan.Zero), stamp.At);
        Assert.Equal(TimeSpan.Zero, Store.History("K-1", RecordKind.Plan)[0].At.Offset);
        Assert.Equal(stamp, Store.History("K-1", RecordKind.Plan)[0]);
    }

    [Fact]
    public void Codes_that_differ_only_in_case_are_two_cases()
    {
        Sample.SaveRevisions(Store, "k-1", 1);
        Sample.SaveRevisions(Store, "K-1", 2);

        Assert.Single(Store.History("k-1", RecordKind.Plan));
        Assert.Equal(2, Store.List(new CaseQuery()).Total);
    }

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing)
    {
    }
}
