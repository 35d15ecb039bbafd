using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class IndexDamageTests : IDisposable
{
    private static readonly string[] Codes = ["K-1", "K-2", "K-3"];
    private readonly StoreCopy _whole = new();
    private readonly RevisionStamp _last;

    public IndexDamageTests()
    {
        Sample.SaveRevisions(_whole.Store, "K-2", 2);
        _last = Sample.SaveRevisions(_whole.Store, "K-1", 3);
    }

    [Theory]
    [InlineData("plans.db")]
    [InlineData("plans.mark")]
    public void A_file_that_is_gone_empty_or_garbage_is_made_again(string name)
    {
        Spoil(file => File.Delete(file));
        Spoil(file => File.WriteAllBytes(file, []));
        Spoil(file => File.WriteAllBytes(file, [1, 2, 3]));
        Spoil(file => File.WriteAllBytes(file, [.. Enumerable.Range(0, 40_000).Select(number => (byte)(number % 251))]));
        Spoil(file => File.WriteAllBytes(file, File.ReadAllBytes(file)[..^1]));
        Spoil(file => File.WriteAllBytes(file, new byte[16_384]));

        void Spoil(Action<string> how)
        {
            using StoreCopy spoiled = _whole.Twin();
            how(spoiled.File(name));

            Assert.Equal(_last, spoiled.Store.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
            Assert.Equal([StoreNoticeKind.IndexRebuilt], spoiled.Kinds);
            Assert.Equal(5, spoiled.Store.Generation());
            Assert.True(spoiled.Store.Verify().IsSound);
        }
    }

    [Fact]
    public void Making_it_again_tells_how_far_it_is()
    {
        using StoreCopy many = new();
        Sample.SaveRevisions(many.Store, "K-1", 250);
        List<WorkDone> heard = [];
        File.Delete(many.Index);

        new LiteDbPlanStore(many.Options with { Progress = new Heard(heard) }).Generation();

        Assert.Equal(2, heard.Count);
        Assert.All(heard, one => Assert.Equal(new FileInfo(many.File("plans.journal")).Length, one.Total));
        Assert.Equal([39, 79], heard.Select(one => one.Percent));
        new LiteDbPlanStore(many.Options with { Progress = new Heard(heard) }).Generation();
        Assert.Equal(2, heard.Count);
    }

    [Fact]
    public void An_older_database_is_made_again()
    {
        using StoreCopy older = _whole.Twin();
        RevisionStamp newest = Sample.Saved(_whole.Store.Append(Sample.Plan("K-1", _last.Reference, """{"week":4}""")));
        File.Copy(older.Index, _whole.Index, overwrite: true);

        Assert.Equal(newest, _whole.Store.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
        Assert.Equal([StoreNoticeKind.IndexRebuilt], _whole.Kinds);
    }

    [Fact]
    public void The_files_of_another_store_are_made_again()
    {
        using StoreCopy other = new();
        Sample.SaveRevisions(other.Store, "K-3", 5);
        File.Copy(other.Index, _whole.Index, overwrite: true);
        File.Copy(other.Mark, _whole.Mark, overwrite: true);

        Assert.Equal(_last, _whole.Store.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
        Assert.Null(_whole.Store.Load("K-3"));
    }

    [Fact]
    public void A_program_that_takes_other_fields_makes_the_index_again()
    {
        LiteDbPlanStore newer = new(_whole.Options with { FieldsVersion = _whole.Options.FieldsVersion + 1, Fields = (_, _) => new Dictionary<string, string> { ["new"] = "yes" } });

        Assert.Equal(["yes", "yes"], newer.List(new CaseQuery()).Rows.Select(row => row.Fields["new"]));
        Assert.Equal([StoreNoticeKind.IndexRebuilt], _whole.Kinds);
    }

    [Fact]
    public void A_changed_letter_in_a_row_is_not_shown()
    {
        string[] expected = Answers(_whole.Store);
        int at = File.ReadAllBytes(_whole.Index).AsSpan().IndexOf("contractions 30"u8);
        Assert.True(at > 0);

        StoreCopy.Flip(_whole.Index, at);

        Assert.Equal(expected, Answers(_whole.Store));
        Assert.Equal([StoreNoticeKind.IndexRebuilt], _whole.Kinds);
    }

    [Fact]
    public void A_flipped_bit_in_the_database_never_gives_a_wrong_answer()
    {
        Random random = new(20260302);
        string[] expected = Answers(_whole.Store);
        long length = new FileInfo(_whole.Index).Length;
        for (int round = 0; round < 100; round++)
        {
            using StoreCopy damaged = _whole.Twin();
            StoreCopy.Flip(damaged.Index, random.NextInt64(length), (byte)(1 << random.Next(8)));

            Assert.Equal(expected, Answers(damaged.Store));
        }
    }

    private sealed class Heard(List<WorkDone> heard) : IProgress<WorkDone>
    {
        public void Report(WorkDone value) => heard.Add(value);
    }

    public void Dispose() => _whole.Dispose();

    private static string[] Answers(LiteDbPlanStore store) =>
    [
        .. store.List(new CaseQuery()).Rows.Select(row => $"{row.CaseCode} {string.Join(",", row.Fields)} {string.Join(",", row.Heads)}"),
        .. Codes.Select(code => $"{code} {store.Load(code)?.Head(RecordKind.Plan)}"),
        .. store.History("K-1", RecordKind.Plan).Select(stamp => stamp.ToString()),
        $"{store.Read("K-2", RecordKind.Plan, 1)}",
    ];
}
