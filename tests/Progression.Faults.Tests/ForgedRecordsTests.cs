using System.Text;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: somebody who can write the files edits them with other tools.</summary>
public sealed class ForgedRecordsTests : IDisposable
{
    private readonly StoreCopy _store = new();
    private readonly List<JournalEntry> _entries = [];

    public ForgedRecordsTests()
    {
        Sample.SaveRevisions(_store.Store, "K-1", 3);
        Sample.Saved(_store.Store.Append(Sample.Of("K-1", new Draft(RecordKind.Review, null, """{"signed":3}"""))));
        Sample.SaveRevisions(_store.Store, "K-2", 2);
        using FileStream journal = File.OpenRead(_store.Journal);
        _entries.AddRange(JournalSlice.Of(journal).Select(slice => slice.Line!.Entry));
    }

    [Fact]
    public void A_changed_body_under_a_right_line_hash_does_not_match_its_revision() =>
        Named(Forged(2, entry => entry with { Body = """{"week":"forged"}""" }), "the hash of revision 3 does not match its content");

    [Fact]
    public void A_changed_body_with_all_its_own_hashes_right_breaks_the_chain_behind_it() =>
        Named(Forged(2, entry => Rehashed(entry with { Body = """{"week":"forged"}""" })), "it does not follow entry 3");

    [Fact]
    public void A_changed_name_or_time_breaks_the_chain_behind_it()
    {
        Named(Forged(3, entry => entry with { Stamp = entry.Stamp with { By = Sample.Supervisor } }), "it does not follow entry 4");
        Named(Forged(3, entry => entry with { Stamp = entry.Stamp with { At = entry.Stamp.At.AddDays(-1) } }), "it does not follow entry 4");
    }

    [Fact]
    public void A_line_put_in_twice_taken_out_or_moved_is_named()
    {
        Named([.. _entries, _entries[1]], "entry 2 stands after entry 6");
        Named([.. _entries[..1], .. _entries[2..]], "it does not follow entry 1");
        Named([.. _entries[..3], _entries[4], _entries[3], _entries[5]], "it does not follow entry 3");
    }

    [Fact]
    public void A_line_added_by_hand_that_follows_nothing_is_named()
    {
        JournalEntry last = _entries[^1];
        JournalEntry forged = Rehashed(last with { Sequence = 7, Stamp = last.Stamp with { Revision = 9 }, PreviousLine = JournalLine.HashOf(last) });

        Named([.. _entries, forged], "revision 9 of plan 'K-2' does not follow revision 2");
        Named([.. _entries, forged with { PreviousLine = new string('0', 64) }], "it does not follow entry 6");
    }

    // The chain says what was changed, not who was at the keyboard: nobody can be kept from writing a good line who may write the file.
    [Fact]
    public void A_journal_written_anew_from_some_point_on_is_whole_and_has_another_head()
    {
        string? head = _store.Store.Verify().TailHash;
        List<JournalEntry> anew = [.. _entries[..2]];
        foreach (JournalEntry entry in _entries[2..])
        {
            string? prior = anew.LastOrDefault(one => (one.Stamp.CaseCode, one.Stamp.Kind) == (entry.Stamp.CaseCode, entry.Stamp.Kind))?.Stamp.Hash;
            string body = entry.Sequence == 3 ? """{"week":"forged"}""" : entry.Body;
            anew.Add(Rehashed(entry with { Body = body, Stamp = entry.Stamp with { PreviousHash = prior }, PreviousLine = JournalLine.HashOf(anew[^1]) }));
        }

        VerifyReport report = Verified(anew);

        Assert.Empty(report.Problems);
        Assert.NotEqual(head, report.TailHash);
        Figures.Print($"7 sorts of forged lines: all named. A journal written anew behind a point is whole; only its head, kept elsewhere, gives it away");
    }

    public void Dispose() => _store.Dispose();

    private List<JournalEntry> Forged(int index, Func<JournalEntry, JournalEntry> forge) => [.. _entries.Select((entry, at) => at == index ? forge(entry) : entry)];

    private static JournalEntry Rehashed(JournalEntry entry) => entry with { Stamp = entry.Stamp with { Hash = entry.RevisionHash } };

    private void Named(IEnumerable<JournalEntry> journal, string what) => Assert.Contains(what, string.Join('\n', Verified(journal).Problems), StringComparison.Ordinal);

    private VerifyReport Verified(IEnumerable<JournalEntry> journal)
    {
        using StoreCopy forged = _store.Twin();
        File.WriteAllText(forged.Journal, string.Concat(journal.Select(entry => Encoding.UTF8.GetString(JournalLine.Write(entry)))));
        File.Delete(forged.Mark);
        return forged.Store.Verify();
    }
}
