using System.Collections.Concurrent;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: a file ends too early.</summary>
public sealed class TruncationTests : IDisposable
{
    private readonly KnownStore _known = new();

    [Fact]
    public void A_journal_cut_at_every_thousandth_byte_keeps_every_whole_save_before_the_cut()
    {
        byte[] journal = File.ReadAllBytes(_known.Whole.Journal);
        List<long> ends = [0];
        List<long> submissions = [0];
        using (MemoryStream stream = new(journal))
        {
            foreach (JournalSlice slice in JournalSlice.Of(stream))
            {
                ends.Add(slice.Place.End);
                if (slice.Line!.Entry.EndsSubmission)
                {
                    submissions.Add(ends.Count - 1);
                }
            }
        }

        long[] cuts = [.. Enumerable.Range(1, journal.Length / 1000).Select(thousand => thousand * 1000L)];
        Parallel.ForEach(cuts, cut =>
        {
            using StoreCopy spoiled = _known.Whole.Twin();
            spoiled.Shorten(cut);
            long expected = submissions.Last(count => ends[(int)count] <= cut);

            Assert.Equal(expected, spoiled.Store.Status().Entries);
            Assert.True(spoiled.Store.Verify().IsSound);
            Assert.Equal("named as damaged", _known.Judge(spoiled));
            Sample.Saved(spoiled.Store.Append(Sample.Plan("K-9", null, "{}")));
        });
        Figures.Print($"{cuts.Length} cuts of a journal of {journal.Length} bytes: every whole save before the cut is there, 0 wrong");
    }

    [Fact]
    public void A_database_cut_at_every_thousandth_byte_costs_nothing()
    {
        long length = new FileInfo(_known.Whole.Index).Length;
        ConcurrentDictionary<string, int> outcomes = new();
        Parallel.ForEach(Enumerable.Range(0, (int)(length / 1000) + 1).Select(thousand => thousand * 1000L), cut =>
        {
            using StoreCopy spoiled = _known.Whole.Twin();
            using (FileStream index = new(spoiled.Index, FileMode.Open))
            {
                index.SetLength(cut);
            }

            outcomes.AddOrUpdate(_known.Judge(spoiled), 1, (_, count) => count + 1);
        });

        Assert.Equal("rebuilt", Assert.Single(outcomes.Keys));
        Figures.Print($"{outcomes["rebuilt"]} cuts of a database of {length} bytes: rebuilt each time, nothing missing");
    }

    public void Dispose() => _known.Dispose();
}
