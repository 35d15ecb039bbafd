using System.Globalization;

namespace Progression.Records.Storage;

/// <summary>One revision as the journal keeps it.</summary>
/// <param name="Sequence">Number in the journal, from 1 without gaps.</param>
/// <param name="Stamp">The revision.</param>
/// <param name="Part">Which draft of its submission this was, from 1.</param>
/// <param name="Parts">How many drafts that submission had.</param>
/// <param name="Body">Canonical JSON.</param>
/// <param name="PreviousLine">Hash of the journal line before; null for the first.</param>
internal sealed record JournalEntry(
    long Sequence, RevisionStamp Stamp, int Part, int Parts, string Body, string? PreviousLine)
{
    public bool EndsSubmission => Part == Parts;

    /// <summary>The hash that the stamp has to carry.</summary>
    public string RevisionHash => HashOf(Stamp.CaseCode, Stamp.Kind, new(Stamp.Revision, Stamp.PreviousHash ?? ""), Body);

    /// <summary>
    /// Hash of a revision: over what was saved and what it follows, not over who and when, so that a repeated submission is
    /// recognised. The line feeds cannot occur in a case code, so the parts cannot run into one another.
    /// </summary>
    /// <param name="caseCode">The case.</param>
    /// <param name="kind">The chain.</param>
    /// <param name="place">Number of the revision itself, and hash of the one before (empty for the first).</param>
    /// <param name="body">Canonical JSON.</param>
    public static string HashOf(string caseCode, RecordKind kind, RevisionRef place, string body) =>
        Sha256Text.Of(string.Create(
            CultureInfo.InvariantCulture, $"{caseCode}\n{kind.Word()}\n{place.Revision}\n{place.Hash}\n{body}"));
}
