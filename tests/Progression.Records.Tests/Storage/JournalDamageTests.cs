using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class JournalDamageTests : IDisposable
{
    private readonly StoreCopy _whole = new();
    private readonly long _second;
    private readonly long _third;

    public JournalDamageTests()
    {
        RevisionStamp first = Sample.SaveRevisions(_whole.Store, "K-1", 1);
        _second = new FileInfo(_whole.Journal).Length;
        RevisionStamp second = Sample.Saved(_whole.Store.Append(Sample.Plan("K-1", first.Reference, """{"week":2}""")));
        _third = new FileInfo(_whole.Journal).Length;
        Sample.Saved(_whole.Store.Append(Sample.Plan("K-1", second.Reference, """{"week":3}""")));
    }

    [Fact]
    public void A_flipped_bit_anywhere_in_a_line_is_never_returned_and_stops_writing()
    {
        for (long at = _second; at < _third; at += 7)
        {
            using StoreCopy damaged = _whole.Twin();
            StoreCopy.Flip(damaged.Journal, at, (byte)(1 << (int)(at % 8)));

            StoreException fault = Assert.Throws<StoreException>(() => damaged.Store.Read("K-1", RecordKind.Plan, 2));

            Assert.Equal(StoreFault.Corrupt, fault.Fault);
            Assert.Contains(StoreNoticeKind.JournalDamaged, damaged.Kinds);
            Assert.DoesNotContain(StoreNoticeKind.TornTailCut, damaged.Kinds);
            Assert.Equal("""{"text":"contractions 10","week":1}""", damaged.Store.Read("K-1", RecordKind.Plan, 1)!.Body);
            Assert.IsType<AppendResult.Corrupt>(damaged.Store.Append(Sample.Plan("K-9", null, "{}")));
        }
    }

    [Fact]
    public void The_rest_stays_readable_and_the_damage_is_named()
    {
        StoreCopy.Flip(_whole.Journal, _third - 20);

        Assert.Throws<StoreException>(() => _whole.Store.Read("K-1", RecordKind.Plan, 2));
        CaseView view = _whole.Store.Load("K-1")!;

        Assert.Equal("""{"week":3}""", view.Head(RecordKind.Plan)!.Body);
        Assert.Contains("after entry 1: its content does not match its hash", view.Damage[0], StringComparison.Ordinal);
        Assert.Equal([1, 3], _whole.Store.History("K-1", RecordKind.Plan).Select(stamp => stamp.Revision));
        Assert.Throws<StoreException>(() => _whole.Store.Load("K-7"));
    }

    [Fact]
    public void A_walk_passes_over_the_damage_and_names_it()
    {
        Sample.SaveRevisions(_whole.Store, "K-2", 1);
        StoreCopy.Flip(_whole.Journal, _third - 20);
        List<string> walked = [];

        JournalReading reading = _whole.Store.Walk(entry => { walked.Add($"{entry.Number} {entry.Stamp.CaseCode}"); return true; });

        Assert.Equal(["1 K-1", "3 K-1", "4 K-2"], walked);
        Assert.Equal((3, 4), (reading.Entries, reading.Last));
        Assert.Contains("after entry 1: its content does not match its hash", reading.Damage[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Damage_in_the_newest_confirmed_line_is_not_mistaken_for_a_torn_tail()
    {
        long end = new FileInfo(_whole.Journal).Length;
        foreach (long at in new[] { _third, _third + 40, end - 30, end - 1 })
        {
            using StoreCopy damaged = _whole.Twin();
            StoreCopy.Flip(damaged.Journal, at);

            Assert.IsType<AppendResult.Corrupt>(damaged.Store.Append(Sample.Plan("K-9", null, "{}")));
            Assert.Equal(end, new FileInfo(damaged.Journal).Length);
            Assert.NotEmpty(damaged.Store.Load("K-1")!.Damage);
        }
    }

    [Fact]
    public void Verification_finds_damage_nobody_has_read_and_stops_writing()
    {
        StoreCopy.Flip(_whole.Journal, 150);

        VerifyReport report = _whole.Store.Verify();

        Assert.False(report.IsSound);
        Assert.Equal(2, report.Entries);
        Assert.IsType<AppendResult.Corrupt>(_whole.Store.Append(Sample.Plan("K-9", null, "{}")));
    }

    [Fact]
    public void A_line_taken_out_is_noticed()
    {
        byte[] bytes = File.ReadAllBytes(_whole.Journal);
        File.WriteAllBytes(_whole.Journal, [.. bytes[..(int)_second], .. bytes[(int)_third..]]);

        Assert.NotEmpty(_whole.Store.Load("K-1")!.Damage);
        Assert.Contains(_whole.Notices, notice => notice.Text.Contains("it does not follow entry 1", StringComparison.Ordinal));
    }

    [Fact]
    public void Once_the_journal_is_put_back_a_rebuild_allows_writing_again()
    {
        byte[] backup = File.ReadAllBytes(_whole.Journal);
        StoreCopy.Flip(_whole.Journal, _second + 200);
        Assert.NotEmpty(_whole.Store.Rebuild().Damage);

        File.WriteAllBytes(_whole.Journal, backup);
        Assert.Equal(3, _whole.Store.Rebuild().Entries);

        Assert.IsType<AppendResult.Saved>(_whole.Store.Append(Sample.Plan("K-9", null, "{}")));
        Assert.True(_whole.Store.Verify().IsSound);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_journal_that_is_gone_is_not_replaced_by_an_empty_one(bool deleted)
    {
        byte[] backup = File.ReadAllBytes(_whole.Journal);
        if (deleted)
        {
            File.Delete(_whole.Journal);
        }
        else
        {
            _whole.Shorten(0);
        }

        Assert.Equal(StoreFault.Corrupt, Assert.Throws<StoreException>(() => _whole.Store.Load("K-1")).Fault);
        Assert.IsType<AppendResult.Corrupt>(_whole.Store.Append(Sample.Plan("K-9", null, "{}")));
        File.WriteAllBytes(_whole.Journal, backup);
        Assert.Equal(3, _whole.Store.Generation());
    }

    public void Dispose() => _whole.Dispose();
}
