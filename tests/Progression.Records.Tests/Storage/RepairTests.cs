using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class RepairTests : IDisposable
{
    private readonly StoreCopy _whole = new();
    private readonly long _second;
    private readonly long _third;

    public RepairTests()
    {
        RevisionStamp first = Sample.SaveRevisions(_whole.Store, "K-1", 1);
        _second = new FileInfo(_whole.Journal).Length;
        RevisionStamp second = Sample.Saved(_whole.Store.Append(Sample.Plan("K-1", first.Reference, """{"week":2}""")));
        _third = new FileInfo(_whole.Journal).Length;
        Sample.Saved(_whole.Store.Append(Sample.Plan("K-1", second.Reference, """{"week":3}""")));
        Sample.SaveRevisions(_whole.Store, "K-2", 2);
    }

    [Fact]
    public void Work_goes_on_after_a_repair_and_the_gap_stays_named()
    {
        byte[] line = File.ReadAllBytes(_whole.Journal)[(int)_second..(int)_third];
        line[100] ^= 1;
        StoreCopy.Flip(_whole.Journal, _second + 100);
        Assert.NotEmpty(_whole.Store.Rebuild().Damage);
        Assert.IsType<AppendResult.Corrupt>(_whole.Store.Append(Sample.Plan("K-9", null, "{}")));
        byte[] asItWas = File.ReadAllBytes(_whole.Journal);

        RepairReport report = Repair();

        Assert.Equal((1, 5), (report.LinesAside, report.Entries));
        Assert.Equal(line, File.ReadAllBytes(_whole.File("plans.journal.damaged")));
        Assert.Equal(asItWas, File.ReadAllBytes(Path.Combine(report.SetAside!, "plans.journal")));
        Sample.Saved(_whole.Store.Append(Sample.Plan("K-9", null, "{}")));
        VerifyReport verified = _whole.Store.Verify();
        Assert.Empty(verified.Problems);
        Assert.Contains("it does not follow entry 1", verified.Gaps[0], StringComparison.Ordinal);
        Assert.Contains("revision 3 of plan 'K-1' does not follow revision 1", verified.Gaps[1], StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_after_the_damage_and_other_cases_are_as_they_were()
    {
        StoreCopy.Flip(_whole.Journal, _second + 100);
        Repair();

        Assert.Equal([1, 3], _whole.Store.History("K-1", RecordKind.Plan).Select(stamp => stamp.Revision));
        Assert.Equal("""{"week":3}""", _whole.Store.Load("K-1")!.Head(RecordKind.Plan)!.Body);
        Assert.Equal(2, _whole.Store.Load("K-2")!.Head(RecordKind.Plan)!.Stamp.Revision);
        Assert.Null(_whole.Store.Read("K-1", RecordKind.Plan, 2));
        Assert.Equal(Sample.Supervisor, Assert.Single(_whole.Store.History(AuditChain.Code, RecordKind.Audit)).By);
        Assert.Equal("5 6", $"{_whole.Store.Status().Entries} {_whole.Store.Status().Last}");
    }

    [Fact]
    public void A_second_damage_is_damage_again_and_can_be_repaired_too()
    {
        StoreCopy.Flip(_whole.Journal, _second + 100);
        Repair();
        StoreCopy.Flip(_whole.Journal, 100);
        Assert.NotEmpty(_whole.Store.Rebuild().Damage);

        Repair();

        Assert.True(_whole.Store.Verify().IsSound);
        Assert.Equal([3], _whole.Store.History("K-1", RecordKind.Plan).Select(stamp => stamp.Revision));
        Assert.Equal(2, _whole.Store.History(AuditChain.Code, RecordKind.Audit).Count);
    }

    [Fact]
    public void A_repaired_store_can_be_backed_up_restored_and_taken_in_elsewhere()
    {
        StoreCopy.Flip(_whole.Journal, _second + 100);
        Repair();
        using TempFolder elsewhere = new();
        Assert.NotEmpty(_whole.Store.BackUp(elsewhere.File("copy")).Gaps);
        using StoreCopy restored = new();
        using StoreCopy taken = new();

        Assert.Null(restored.Store.Restore(elsewhere.File("copy"), null, Sample.Monday).Problem);
        using FileStream lines = File.OpenRead(elsewhere.File("copy"));
        Assert.Equal(new ImportReport(5, 0, null), taken.Store.Import(lines));
        Assert.Equal(_whole.Store.Verify().TailHash, restored.Store.Verify().TailHash);
        Assert.True(taken.Store.Verify().IsSound);
    }

    [Fact]
    public void A_sound_store_is_left_as_it_is()
    {
        byte[] before = File.ReadAllBytes(_whole.Journal);

        Assert.Equal((0, null), (Repair().LinesAside, Repair().SetAside));
        Assert.Equal(before, File.ReadAllBytes(_whole.Journal));
    }

    [Fact]
    public void A_line_written_by_hand_that_does_not_follow_is_named_and_stays_named()
    {
        File.AppendAllLines(_whole.Journal, [File.ReadAllLines(_whole.Journal)[0].Replace("K-1", "K-1", StringComparison.Ordinal)]);

        Assert.NotEmpty(_whole.Store.Rebuild().Damage);
        Assert.Equal(1, Repair().LinesAside);
        Assert.True(_whole.Store.Verify().IsSound);
    }

    public void Dispose() => _whole.Dispose();

    private RepairReport Repair() => _whole.Store.Repair(
        Sample.Supervisor, Sample.Monday, breaks => $$"""{"act":"repaired","{{JournalGap.Member}}":[{{string.Join(',', breaks.Select(one => $"\"{one}\""))}}]}""");
}
