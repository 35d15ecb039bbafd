using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>
/// Reads a whole journal and says what is good, what is damaged, and what is the rest of a save that was cut short. Slices are
/// taken a submission at a time, because a submission counts whole or not at all.
/// </summary>
internal sealed class JournalAudit
{
    private readonly Func<JournalSlice, bool> _accept;
    private readonly long? _confirmedLength;
    private readonly Dictionary<(string, RecordKind), RevisionRef> _heads = [];
    private readonly List<JournalBreak> _damage = [];
    private readonly HashSet<string> _acknowledged = [];
    private readonly Action<JournalSlice> _reject;
    private JournalSlice? _last;
    private long _entries;
    private long _saves;
    private bool _gapIsKnown;
    private bool _isStopped;

    private JournalAudit(long? confirmedLength, Func<JournalSlice, bool> accept, Action<JournalSlice>? reject) =>
        (_confirmedLength, _accept, _reject) = (confirmedLength, accept, reject ?? (_ => { }));

    /// <summary>Reads the slices to their end.</summary>
    /// <param name="slices">All of the journal.</param>
    /// <param name="confirmedLength">
    /// Bytes that are known to have been saved: what is not whole in them is damage. Null when that is not known: then a last
    /// submission without its end counts as cut short, and a last line that has its end counts as damaged.
    /// </param>
    /// <param name="accept">Given every good line, in order.</param>
    /// <param name="reject">Given every other line; not the rest of a save that was cut short. Default: nobody.</param>
    public static JournalFindings Run(
        IEnumerable<JournalSlice> slices, long? confirmedLength, Action<JournalSlice> accept, Action<JournalSlice>? reject = null) => RunWhile(
        slices,
        confirmedLength,
        slice =>
        {
            accept(slice);
            return true;
        },
        reject);

    /// <summary>The same until a line is not accepted; what comes after it is not judged.</summary>
    public static JournalFindings RunWhile(
        IEnumerable<JournalSlice> slices, long? confirmedLength, Func<JournalSlice, bool> accept, Action<JournalSlice>? reject = null)
    {
        JournalAudit audit = new(confirmedLength, accept, reject);
        List<JournalSlice> group = [];
        foreach (JournalSlice slice in slices)
        {
            if (group.Count > 0 && Ends(group))
            {
                audit.Take(group);
                group = [];
            }

            if (group.Count > 0 && slice.Line?.Entry.Part == 1)
            {
                audit.Take(group);
                group = [];
            }

            if (audit._isStopped)
            {
                return audit.Finish([]);
            }

            group.Add(slice);
        }

        return audit.Finish(group);
    }

    private JournalFindings Finish(List<JournalSlice> group)
    {
        long? tornFrom = null;
        if (group.Count > 0 && !IsWhole(group) && IsCutShort(group))
        {
            tornFrom = group[0].Place.Offset;
        }
        else
        {
            Take(group);
        }

        return new JournalFindings(
            _entries, _heads.Keys.Select(key => key.Item1).Where(code => code != AuditChain.Code).Distinct(StringComparer.Ordinal).Count(),
            _saves, _last, [.. Breaks(false)], tornFrom)
        { Gaps = [.. Breaks(true)] };
    }

    // What a repair wrote down comes after the gap it is about.
    private IEnumerable<JournalBreak> Breaks(bool acknowledged) => _damage.Where(one => (one.LineHash is { } hash && _acknowledged.Contains(hash)) == acknowledged);

    private bool IsCutShort(List<JournalSlice> group) => _confirmedLength is { } confirmed
        ? group[0].Place.Offset >= confirmed
        : group.All(slice => slice.Line is not null || !slice.IsTerminated);

    private static bool Ends(List<JournalSlice> group) => group[^1].Line?.Entry.EndsSubmission == true;

    private static bool IsWhole(List<JournalSlice> group) =>
        Ends(group) && group[^1].Line!.Entry.Parts == group.Count
        && group.Select((slice, index) => slice.Line?.Entry.Part == index + 1).All(good => good);

    private void Take(List<JournalSlice> group)
    {
        if (group.Count > 0 && group.All(slice => slice.Line is not null) && !IsWhole(group))
        {
            Report(group[0], "its submission is not complete");
        }

        foreach (JournalSlice slice in group.TakeWhile(_ => !_isStopped))
        {
            if (slice.Line is null)
            {
                Report(slice, slice.Fault);
                _reject(slice);
                _gapIsKnown = true;
            }
            else
            {
                Take(slice, slice.Line.Entry);
            }
        }
    }

    private void Take(JournalSlice slice, JournalEntry entry)
    {
        long expected = (_last?.Line!.Entry.Sequence ?? 0) + 1;
        if (entry.Sequence < expected)
        {
            Report(slice, $"entry {entry.Sequence} stands after entry {expected - 1}");
            _reject(slice);
            return;
        }

        if (entry.RevisionHash != entry.Stamp.Hash)
        {
            Report(slice, $"the hash of revision {entry.Stamp.Revision} does not match its content");
            _reject(slice);
            return;
        }

        if (!_gapIsKnown && (entry.Sequence > expected || entry.PreviousLine != _last?.Line!.Hash))
        {
            Report(slice, $"it does not follow entry {expected - 1}");
        }

        FollowChain(slice, entry.Stamp);
        (_last, _gapIsKnown) = (slice, false);
        _entries++;
        _acknowledged.UnionWith(JournalGap.Acknowledged(entry));
        _saves = entry.Stamp.Kind == RecordKind.Audit ? _saves : entry.Sequence;
        _isStopped = !_accept(slice);
    }

    private void FollowChain(JournalSlice slice, RevisionStamp stamp)
    {
        RevisionRef? head = _heads.GetValueOrDefault((stamp.CaseCode, stamp.Kind));
        if (stamp.Revision != (head?.Revision ?? 0) + 1 || stamp.PreviousHash != head?.Hash)
        {
            Report(slice, $"revision {stamp.Revision} of {stamp.Kind.Word()} '{stamp.CaseCode}' does not follow revision {head?.Revision ?? 0}");
        }

        _heads[(stamp.CaseCode, stamp.Kind)] = stamp.Reference;
    }

    private void Report(JournalSlice slice, string what) =>
        _damage.Add(new(slice.Line?.Hash, FormattableString.Invariant(
            $"journal, byte {slice.Place.Offset}, after entry {_last?.Line!.Entry.Sequence ?? 0}: {what}")));
}
