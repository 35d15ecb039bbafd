using System.Text;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>A store of which everything is known, for tests that spoil copies of it.</summary>
internal sealed class KnownStore : IDisposable
{
    private static readonly string[] Codes = ["K-1", "K-2", "K-3", "K-4", "K-5"];

    public KnownStore()
    {
        foreach (string code in Codes)
        {
            RevisionStamp? plan = null;
            for (int revision = 1; revision <= 6; revision++)
            {
                // Now and then two drafts in a submission, an audit entry between, and bodies of different length.
                Draft draft = new(RecordKind.Plan, plan?.Reference, $$"""{"text":"{{new string('x', 400 * revision)}}","week":{{revision}}}""");
                plan = revision == 3
                    ? Assert.IsType<AppendResult.Saved>(Whole.Store.Append(Sample.Of(code, draft, new Draft(RecordKind.Case, null, """{"side":"left"}""")))).Stamps[0]
                    : Sample.Saved(Whole.Store.Append(Sample.Of(code, draft)));
            }

            Sample.Saved(Whole.Store.Append(Sample.Of(AuditChain.Code, new Draft(RecordKind.Audit, null, $$"""{"act":"viewed","case":"{{code}}"}"""))));
        }

        Sample.Saved(Whole.Store.Append(Sample.Of("K-2", new Draft(RecordKind.Review, null, """{"waiting":"2026-03-02"}"""))));
        Whole.Store.Walk(entry => { Truth[(entry.Stamp.CaseCode, entry.Stamp.Kind, entry.Stamp.Revision)] = new StoredRevision(entry.Stamp, entry.Body); return true; });
        Rows = [.. Whole.Store.List(Text).Cases];
        Assert.Equal(41, Truth.Count);
    }

    public StoreCopy Whole { get; } = new();

    public Dictionary<(string Code, RecordKind Kind, int Revision), StoredRevision> Truth { get; } = [];

    public HashSet<string> Rows { get; }

    /// <summary>Reads everything there is to read. What comes is right, or damage was told; nothing is wrong.</summary>
    /// <returns>"right", "rebuilt" or "named as damaged".</returns>
    public string Judge(StoreCopy spoiled)
    {
        int refused = 0;
        foreach (((string code, RecordKind kind, int revision), StoredRevision truth) in Truth)
        {
            StoredRevision? found = Answer(() => spoiled.Store.Read(code, kind, revision));
            refused += found is null ? 1 : 0;
            Assert.True(found is null || found == truth, $"{code} {kind} {revision}");
        }

        bool isNamed = spoiled.Kinds.Contains(StoreNoticeKind.JournalDamaged) || spoiled.Kinds.Contains(StoreNoticeKind.EntriesLost);
        foreach (string code in Codes)
        {
            CaseView? view = Answer(() => spoiled.Store.Load(code));
            refused += view is null || view.Heads.Any(head => head != Newest(code, head.Stamp.Kind)) ? 1 : 0;
            Assert.All(view?.Heads ?? [], head => Assert.Equal(Truth[(code, head.Stamp.Kind, head.Stamp.Revision)], head));
            Assert.True(isNamed || view is null || !view.Damage.IsEmpty || view.Heads.All(head => head == Newest(code, head.Stamp.Kind)), code);
        }

        string[] rows = [.. Answer(() => spoiled.Store.List(Text))?.Cases ?? []];
        Assert.True(isNamed || (refused == 0 && Rows.SetEquals(rows)), "something is missing and nobody was told");
        return isNamed ? "named as damaged" : spoiled.Notices.Count > 0 ? "rebuilt" : "right";
    }

    public void Dispose() => Whole.Dispose();

    private StoredRevision Newest(string code, RecordKind kind) => Truth[(code, kind, Truth.Keys.Where(key => key.Code == code && key.Kind == kind).Max(key => key.Revision))];

    // A store that says it is damaged shows nothing wrong.
    private static T? Answer<T>(Func<T?> ask)
        where T : class
    {
        try
        {
            return ask();
        }
        catch (StoreException fault) when (fault.Fault == StoreFault.Corrupt)
        {
            return null;
        }
    }

    private static string Text(CaseRow row) => new StringBuilder(row.CaseCode).AppendJoin(',', row.Heads).AppendJoin(',', row.Fields).ToString();
}
