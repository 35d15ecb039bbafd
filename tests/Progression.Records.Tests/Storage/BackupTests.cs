using System.Diagnostics;
using System.Runtime.Versioning;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

[SupportedOSPlatform("linux")]
public sealed class BackupTests : IDisposable
{
    private readonly StoreCopy _whole = new();
    private readonly TempFolder _elsewhere = new();
    private readonly RevisionStamp _last;
    private readonly string _file;

    public BackupTests()
    {
        Sample.SaveRevisions(_whole.Store, "K-2", 2);
        _last = Sample.SaveRevisions(_whole.Store, "K-1", 3);
        _file = _elsewhere.File("plans.backup");
    }

    [Fact]
    public void A_backup_is_the_journal_for_its_owner_alone_with_its_hash_beside_it()
    {
        BackupReport report = _whole.Store.BackUp(_file);

        Assert.Equal(File.ReadAllBytes(_whole.Journal), File.ReadAllBytes(_file));
        Assert.Equal((5, 5, _whole.Store.Verify().TailHash), (report.Entries, report.Last, report.HeadHash));
        Assert.Equal(["plans.backup", "plans.backup.sha256"], Directory.GetFiles(_elsewhere.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(Directory.GetFiles(_elsewhere.Path), file => Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file)));
        using Process check = Process.Start(new ProcessStartInfo("sha256sum", ["--check", "--status", "plans.backup.sha256"]) { WorkingDirectory = _elsewhere.Path })!;
        check.WaitForExit();
        Assert.Equal(0, check.ExitCode);
    }

    [Theory]
    [InlineData("plans.backup")]
    [InlineData("plans.backup.sha256")]
    public void A_backup_is_never_written_over_a_file(string name)
    {
        File.WriteAllText(_elsewhere.File(name), "mine");

        Assert.Contains("is there already", Assert.Throws<StoreException>(() => _whole.Store.BackUp(_file)).Message, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(_elsewhere.File(name)));
        Assert.Single(Directory.GetFileSystemEntries(_elsewhere.Path));
    }

    [Fact]
    public void Damaged_records_are_not_called_a_backup()
    {
        StoreCopy.Flip(_whole.Journal, 300);

        Assert.Equal(StoreFault.Corrupt, Assert.Throws<StoreException>(() => _whole.Store.BackUp(_file)).Fault);
        Assert.Empty(Directory.GetFileSystemEntries(_elsewhere.Path));
    }

    [Fact]
    public void A_restored_store_is_the_one_that_was_backed_up()
    {
        _whole.Store.BackUp(_file);
        using StoreCopy fresh = new();

        RestoreReport report = fresh.Store.Restore(_file, null, Sample.Monday);

        Assert.Equal(new RestoreReport(5, 0, 0, null, null), report);
        Assert.Equal(_whole.Store.Verify().TailHash, fresh.Store.Verify().TailHash);
        Assert.Equal(_last, fresh.Store.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
        Assert.True(fresh.Store.Verify().IsSound);
    }

    [Fact]
    public void Damage_before_the_backup_costs_nothing_that_was_saved_after_it()
    {
        _whole.Store.BackUp(_file);
        Sample.SaveRevisions(_whole.Store, "K-3", 2);
        string? head = _whole.Store.Verify().TailHash;
        byte[] asItWas = Spoil(300);

        RestoreReport report = _whole.Store.Restore(_file, null, Sample.Monday);

        Assert.Equal((5, 2, 0, null), (report.FromFile, report.TakenOver, report.LeftOut, report.Problem));
        Assert.Equal(head, _whole.Store.Verify().TailHash);
        Assert.True(_whole.Store.Verify().IsSound);
        Assert.EndsWith("set-aside-20260302T083000Z", report.SetAside, StringComparison.Ordinal);
        Assert.Equal(asItWas, File.ReadAllBytes(Path.Combine(report.SetAside!, "plans.journal")));
        Assert.Equal(["plans.db", "plans.journal", "plans.mark"], Directory.GetFiles(report.SetAside!).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Sample.Saved(_whole.Store.Append(Sample.Plan("K-9", null, "{}")));
    }

    [Fact]
    public void What_does_not_go_on_from_the_backup_is_left_out_only_when_its_number_is_named()
    {
        _whole.Store.BackUp(_file);
        long before = new FileInfo(_whole.Journal).Length;
        Sample.SaveRevisions(_whole.Store, "K-3", 3);
        byte[] asItWas = Spoil(before + 300);

        RestoreReport asked = _whole.Store.Restore(_file, null, Sample.Monday);
        Assert.Contains("2 whole entries, numbers 7 to 8, the last by Robin Example on 2026-03-02 08:30 UTC", asked.Problem, StringComparison.Ordinal);
        Assert.Contains("--drop-newer 2", asked.Problem, StringComparison.Ordinal);
        Assert.NotNull(_whole.Store.Restore(_file, 3, Sample.Monday).Problem);
        Assert.Equal(asItWas, File.ReadAllBytes(_whole.Journal));

        Assert.Null(_whole.Store.Restore(_file, 2, Sample.Monday).Problem);
        Assert.True(_whole.Store.Verify().IsSound);
        Assert.Equal(5, _whole.Store.Generation());
    }

    [Fact]
    public void A_submission_cut_in_half_by_the_damage_is_left_out_whole()
    {
        _whole.Store.BackUp(_file);
        long before = new FileInfo(_whole.Journal).Length;
        _whole.Store.Append(Sample.Of("K-4", new(RecordKind.Case, null, "{}"), new(RecordKind.Plan, null, "{}")));
        StoreCopy.Flip(_whole.Journal, new FileInfo(_whole.Journal).Length - 20);
        Assert.True(new FileInfo(_whole.Journal).Length > before);

        Assert.Equal(1, _whole.Store.Restore(_file, null, Sample.Monday).LeftOut);
        Assert.Null(_whole.Store.Restore(_file, 1, Sample.Monday).Problem);
        Assert.Null(_whole.Store.Load("K-4"));
    }

    [Fact]
    public void Restoring_over_another_store_asks_for_all_of_its_entries()
    {
        _whole.Store.BackUp(_file);
        using StoreCopy other = new();
        Sample.SaveRevisions(other.Store, "X-1", 2);

        Assert.Equal(2, other.Store.Restore(_file, null, Sample.Monday).LeftOut);
        Assert.Equal(2, other.Store.Generation());
    }

    [Fact]
    public void A_file_that_is_not_whole_changes_nothing()
    {
        _whole.Store.BackUp(_file);
        byte[] bytes = File.ReadAllBytes(_file);
        byte[] before = File.ReadAllBytes(_whole.Journal);
        File.WriteAllBytes(_file, bytes[..^10]);
        Assert.Contains("does not match", _whole.Store.Restore(_file, null, Sample.Monday).Problem, StringComparison.Ordinal);

        File.Delete(_file + ".sha256");
        foreach (byte[] spoiled in new[] { bytes[..^10], bytes[100..], [], [.. bytes, .. bytes] })
        {
            File.WriteAllBytes(_file, spoiled);
            Assert.Contains("not a whole copy", _whole.Store.Restore(_file, null, Sample.Monday).Problem, StringComparison.Ordinal);
        }

        Assert.Equal(before, File.ReadAllBytes(_whole.Journal));
        Assert.False(File.Exists(_whole.File("plans.journal.new")));
        Assert.Empty(Directory.GetDirectories(_whole.File("")));
    }

    [Fact]
    public void A_backup_that_is_broken_off_leaves_no_file()
    {
        LiteDbPlanStore store = new(_whole.Options with { Progress = new BreaksOff() });

        Assert.Throws<OperationCanceledException>(() => store.BackUp(_file));
        Assert.Throws<OperationCanceledException>(() => store.Restore(_whole.Journal, null, Sample.Monday));
        Assert.Empty(Directory.GetFileSystemEntries(_elsewhere.Path));
        Assert.Equal(5, _whole.Store.Generation());
    }

    public void Dispose()
    {
        _whole.Dispose();
        _elsewhere.Dispose();
    }

    private byte[] Spoil(long at)
    {
        StoreCopy.Flip(_whole.Journal, at);
        Assert.NotEmpty(_whole.Store.Rebuild().Damage);
        return File.ReadAllBytes(_whole.Journal);
    }

    private sealed class BreaksOff : IProgress<WorkDone>
    {
        public void Report(WorkDone value) => throw new OperationCanceledException();
    }
}
