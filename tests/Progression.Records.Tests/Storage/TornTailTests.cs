using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class TornTailTests : IDisposable
{
    private readonly StoreCopy _whole = new();

    [Fact]
    public void A_last_line_cut_at_any_byte_is_seen_as_cut_and_nothing_else_is()
    {
        Sample.SaveRevisions(_whole.Store, "K-1", 2);
        int before = (int)new FileInfo(_whole.Journal).Length;
        Sample.SaveRevisions(_whole.Store, "K-2", 1);
        byte[] bytes = File.ReadAllBytes(_whole.Journal);

        for (int length = before; length <= bytes.Length; length++)
        {
            using MemoryStream cut = new(bytes[..length]);
            JournalFindings findings = JournalAudit.Run(JournalSlice.Of(cut), null, _ => { });

            Assert.Equal(length == bytes.Length ? 3 : 2, findings.Entries);
            Assert.Equal(length == before || length == bytes.Length ? null : before, findings.TornFrom);
            Assert.Empty(findings.Damage);
        }
    }

    [Fact]
    public void A_last_line_cut_short_costs_that_line_only()
    {
        Sample.SaveRevisions(_whole.Store, "K-1", 2);
        long before = new FileInfo(_whole.Journal).Length;
        Sample.SaveRevisions(_whole.Store, "K-2", 1);
        long after = new FileInfo(_whole.Journal).Length;

        foreach (long length in new[] { before, before + 1, before + 2, before + 40, before + 80, before + 200, after - 2, after - 1 })
        {
            using StoreCopy cut = _whole.Twin();
            cut.Shorten(length);

            Assert.Null(cut.Store.Load("K-2"));
            Assert.Equal(2, cut.Store.History("K-1", RecordKind.Plan).Count);
            Assert.Contains(StoreNoticeKind.EntriesLost, cut.Kinds);
            Assert.Equal(length > before, cut.Kinds.Contains(StoreNoticeKind.TornTailCut));
            Assert.Equal(before, new FileInfo(cut.Journal).Length);
            Assert.Equal(length - before, length > before ? new FileInfo(cut.Torn).Length : 0);
            Sample.Saved(cut.Store.Append(Sample.Plan("K-2", null, """{"again":true}""")));
            Assert.True(cut.Store.Verify().IsSound);
        }
    }

    [Fact]
    public void A_save_that_was_never_confirmed_is_cut_without_a_word_of_loss()
    {
        Sample.SaveRevisions(_whole.Store, "K-1", 1);
        using StoreCopy crashed = _whole.Twin();
        Sample.Saved(_whole.Store.Append(Sample.Plan("K-2", null, """{"half":true}""")));
        byte[] bytes = File.ReadAllBytes(_whole.Journal);
        File.WriteAllBytes(crashed.Journal, bytes[..^10]);

        Assert.Null(crashed.Store.Load("K-2"));
        Assert.Equal([StoreNoticeKind.IndexRebuilt, StoreNoticeKind.TornTailCut], crashed.Kinds);
    }

    [Fact]
    public void A_save_that_reached_the_journal_but_not_the_index_is_there()
    {
        Sample.SaveRevisions(_whole.Store, "K-1", 1);
        using StoreCopy crashed = _whole.Twin();
        Submission submission = Sample.Plan("K-2", null, """{"whole":true}""");
        RevisionStamp stamp = Sample.Saved(_whole.Store.Append(submission));
        File.Copy(_whole.Journal, crashed.Journal, overwrite: true);

        Assert.Equal(stamp, crashed.Store.Load("K-2")!.Head(RecordKind.Plan)!.Stamp);
        Assert.Equal([StoreNoticeKind.IndexRebuilt], crashed.Kinds);
        Assert.Equal(stamp, Sample.Saved(crashed.Store.Append(submission)));
    }

    [Fact]
    public void A_submission_of_two_cut_anywhere_loses_both_drafts()
    {
        Sample.SaveRevisions(_whole.Store, "K-1", 1);
        long before = new FileInfo(_whole.Journal).Length;
        _whole.Store.Append(Sample.Of("K-2", new(RecordKind.Case, null, "{}"), new(RecordKind.Plan, null, "{}")));
        long after = new FileInfo(_whole.Journal).Length;

        for (long length = before + 1; length < after; length += 61)
        {
            using StoreCopy cut = _whole.Twin();
            cut.Shorten(length);

            Assert.Null(cut.Store.Load("K-2"));
            Assert.True(cut.Store.Verify().IsSound);
            Assert.Equal(1, cut.Store.Generation());
        }
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(0, true)]
    [InlineData(88, false)]
    [InlineData(88, true)]
    public void What_a_power_cut_left_behind_the_last_save_is_moved_aside(byte filler, bool ends)
    {
        Sample.SaveRevisions(_whole.Store, "K-1", 2);
        byte[] rest = [.. Enumerable.Repeat(filler, 5000), ends ? (byte)'\n' : filler];
        using (FileStream journal = new(_whole.Journal, FileMode.Append))
        {
            journal.Write(rest);
        }

        Assert.Equal(2, _whole.Store.History("K-1", RecordKind.Plan).Count);
        Assert.Equal([StoreNoticeKind.IndexRebuilt, StoreNoticeKind.TornTailCut], _whole.Kinds);
        Assert.Equal(rest, File.ReadAllBytes(_whole.Torn));
        Assert.True(_whole.Store.Verify().IsSound);
    }

    public void Dispose() => _whole.Dispose();
}
