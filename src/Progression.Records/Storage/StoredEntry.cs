namespace Progression.Records.Storage;

/// <summary>One line of the journal, its hashes checked.</summary>
/// <param name="Number">Its number in the journal, from 1.</param>
/// <param name="LineHash">Hash of the line, which the next line repeats.</param>
/// <param name="Stamp">Which revision it is, by whom, when.</param>
/// <param name="Body">Canonical JSON, as it was saved.</param>
public sealed record StoredEntry(long Number, string LineHash, RevisionStamp Stamp, string Body)
{
    internal static StoredEntry Of(JournalLine line) => new(line.Entry.Sequence, line.Hash, line.Entry.Stamp, line.Entry.Body);
}
