using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

/// <content>Generations, the queue, counts, and going through the journal.</content>
public abstract partial class PlanStoreContract
{
    private static readonly Submission Seen = Sample.Of(AuditChain.Code, new Draft(RecordKind.Audit, null, """{"act":"viewed"}"""));

    [Fact]
    public void A_save_makes_a_new_generation_and_an_audit_entry_does_not()
    {
        Assert.False(Store.HasChangedSince(0));
        RevisionStamp first = Sample.SaveRevisions(Store, "K-1", 1);
        long generation = Store.Generation();
        Sample.Saved(Store.Append(Seen));

        Assert.Equal(generation, Store.Generation());
        Assert.Equal(generation, Store.List(row => row.CaseCode).Generation);
        Assert.Equal((false, true), (Store.HasChangedSince(generation), Store.HasChangedSince(0)));
        Sample.Saved(Store.Append(Sample.Plan("K-1", first.Reference, """{"week":9}""")));
        Assert.True(Store.HasChangedSince(generation));
        Assert.NotEqual(generation, Store.Generation());
    }

    [Fact]
    public void A_case_waits_from_the_review_that_asks_until_one_that_does_not()
    {
        Sample.SaveRevisions(Store, "K-1", 1);
        Sample.SaveRevisions(Store, "K-2", 1);
        RevisionStamp asked = Sample.Saved(Store.Append(Sample.Of("K-2", new Draft(RecordKind.Review, null, """{"waiting":"2026-03-02"}"""))));

        Assert.Equal([("K-2", "2026-03-02", 2)], Store.Waiting(row => (row.CaseCode, row.Fields[CaseRow.Waiting], row.Heads.Length)).Cases);
        Sample.Saved(Store.Append(Sample.Of("K-2", new Draft(RecordKind.Case, null, """{"side":"left"}"""))));
        Assert.Equal(["left"], Store.Waiting(row => row.Fields["case.side"]).Cases);
        Assert.Equal(Store.Generation(), Store.Waiting(row => row).Generation);
        Sample.Saved(Store.Append(Sample.Of("K-2", new Draft(RecordKind.Review, asked.Reference, """{"signed":1}"""))));
        Assert.Empty(Store.Waiting(row => row).Cases);
        Assert.True(Store.Verify().IsSound);
    }

    [Fact]
    public void The_status_counts_cases_entries_and_bytes()
    {
        Assert.Equal(new StoreStatus(0, 0, 0, 0, null, []), Store.Status());
        Sample.SaveRevisions(Store, "K-1", 2);
        Sample.SaveRevisions(Store, "K-2", 1);
        Sample.Saved(Store.Append(Seen));
        using MemoryStream lines = new();
        Store.Export(lines);

        Assert.Equal(new StoreStatus(2, 4, 4, lines.Length, Store.Verify().TailHash, []), Store.Status());
        Store.Rebuild();
        Assert.Equal((2, 4), (Store.Status().Cases, Store.Status().Entries));
        Assert.Equal(2, Store.Verify().Cases);
    }

    [Fact]
    public void A_walk_gives_every_entry_with_its_body_oldest_first()
    {
        Store.Append(Sample.Of("K-1", new Draft(RecordKind.Case, null, """{"side":"left"}"""), new Draft(RecordKind.Plan, null, """{"weeks":6}""")));
        Sample.Saved(Store.Append(Seen with { By = Sample.Supervisor }));
        List<StoredEntry> walked = [];

        JournalReading reading = Store.Walk(entry =>
        {
            walked.Add(entry);
            return Store.Generation() == 2; // It may use the store.
        });

        Assert.Equal([1, 2, 3], walked.Select(entry => entry.Number));
        Assert.Equal(["""{"side":"left"}""", """{"weeks":6}""", """{"act":"viewed"}"""], walked.Select(entry => entry.Body));
        Assert.Equal(Sample.Supervisor, walked[2].Stamp.By);
        Assert.Equal(new JournalReading(3, 3, walked[2].LineHash, []), reading);
        Assert.Equal(Store.Status().HeadHash, reading.HeadHash);
    }

    [Fact]
    public void A_walk_stops_when_it_is_told_to()
    {
        Store.Append(Sample.Of("K-1", new Draft(RecordKind.Case, null, "{}"), new Draft(RecordKind.Plan, null, "{}")));
        Store.Append(Sample.Of("K-2", new Draft(RecordKind.Case, null, "{}"), new Draft(RecordKind.Plan, null, "{}")));
        int walked = 0;

        Assert.Equal((1, 1), (Store.Walk(_ => ++walked < 1).Entries, walked));
        Assert.Equal((3, 4), (Store.Walk(_ => ++walked < 4).Entries, walked));
        Assert.Empty(Store.Walk(_ => false).Damage);
    }
}
