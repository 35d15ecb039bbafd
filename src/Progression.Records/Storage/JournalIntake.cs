namespace Progression.Records.Storage;

/// <summary>Exported lines on their way into a store.</summary>
internal sealed class JournalIntake
{
    private readonly List<JournalEntry> _entries = [];
    private string? _problem;

    /// <summary>Reads all lines; a bad one makes the whole intake fail later.</summary>
    public static JournalIntake From(Stream source, IProgress<WorkDone>? progress)
    {
        JournalIntake intake = new();
        foreach (JournalSlice slice in JournalSlice.Of(source))
        {
            if (slice.Line is { } line)
            {
                progress?.Report(new("reading the lines", slice.Place.End, source.CanSeek ? source.Length : 0));
                intake._entries.Add(line.Entry);
            }
            else
            {
                intake._problem ??= FormattableString.Invariant($"The line at byte {slice.Place.Offset} is not whole: {slice.Fault}.");
            }
        }

        return intake;
    }

    /// <summary>Adds what the store does not have yet, when all of it continues the store's chain.</summary>
    public ImportReport Into(StoreSession session)
    {
        long known = session.Mark.Last;
        List<JournalEntry> fresh = [.. _entries.Where(entry => entry.Sequence > known)];
        long alreadyHere = _entries.Count - fresh.Count;
        _problem ??= session.Damage.IsEmpty ? ProblemOf(session, fresh) : "The journal here is damaged; repair it first.";
        if (_problem is not null || fresh.Count == 0)
        {
            return new ImportReport(0, alreadyHere, _problem);
        }

        session.RequireRoom();
        session.Record(fresh);
        return new ImportReport(fresh.Count, alreadyHere, null);
    }

    private string? ProblemOf(StoreSession session, List<JournalEntry> fresh)
    {
        foreach (JournalEntry old in _entries.Where(entry => entry.Sequence <= session.Mark.Last))
        {
            RevisionStamp stamp = old.Stamp;
            if (session.Read(stamp.CaseCode, stamp.Kind, stamp.Revision)?.Stamp != stamp)
            {
                return FormattableString.Invariant($"Entry {old.Sequence} is another one here: these lines are from a different store.");
            }
        }

        // The store's own rules, on the store's lines and the new ones together.
        IEnumerable<JournalSlice> joined = session.Journal.Slices().Concat(fresh.Select(entry => JournalSlice.Of(entry, session.Journal.Length)));
        JournalFindings findings = JournalAudit.Run(joined, null, _ => { });
        return findings.TornFrom is not null ? "The last submission is not complete."
            : findings.Damage.IsEmpty ? null
            : $"The lines do not continue this store: {findings.Damage[0]}.";
    }
}
