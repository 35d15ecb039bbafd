using Progression.Core.Reviews;
using Progression.Records.Reviews;
using Progression.Records.Storage;
using Progression.Records.Yaml;

namespace Progression.Records.Audit;

/// <summary>What one entry of the records says was done: by whom, when, with what.</summary>
/// <param name="Number">Number of the entry.</param>
/// <param name="At">When, UTC.</param>
/// <param name="By">By whom.</param>
/// <param name="Act">What was done, in one of <see cref="Acts"/>.</param>
/// <param name="CaseCode">With which case; null for the records as a whole.</param>
/// <param name="Kind">With which record of it; null for the case as a whole.</param>
/// <param name="Revision">With which revision; null where it was not one.</param>
/// <param name="What">Anything else; empty for nothing.</param>
public sealed record AuditEvent(
    long Number, DateTimeOffset At, Actor By, string Act, string? CaseCode, RecordKind? Kind, RevisionRef? Revision, string What)
{
    private const string Created = "created";
    private const string Changed = "changed";
    private const string Unknown = "not readable";

    /// <summary>Every word of <see cref="Act"/>.</summary>
    public static IReadOnlyList<string> Acts { get; } =
        [Created, Changed, .. EnumWords.All<ReviewStep>(), .. EnumWords.All<AuditAct>(), Unknown];

    /// <summary>The word for <see cref="Kind"/>; null for the case as a whole.</summary>
    public string? Record => Kind?.Word();

    /// <summary>What an entry says.</summary>
    public static AuditEvent Of(StoredEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        RevisionStamp stamp = entry.Stamp;
        AuditEvent saved = new(entry.Number, stamp.At, stamp.By, stamp.Revision == 1 ? Created : Changed, stamp.CaseCode, stamp.Kind, stamp.Reference, "");
        try
        {
            return stamp.Kind switch
            {
                RecordKind.Review => OfReview(saved, ReviewJson.Read(entry.Body).Acts[^1]),
                RecordKind.Audit => OfNote(saved, AuditNoteJson.Read(entry.Body)),
                _ => saved,
            };
        }
        catch (FormatException fault)
        {
            return saved with { Act = Unknown, What = fault.Message };
        }
    }

    // The revision that was looked at says more than the number of the review itself.
    private static AuditEvent OfReview(AuditEvent saved, ReviewAct act) =>
        saved with { Act = EnumWords.Of(act.Step), Kind = RecordKind.Plan, Revision = new RevisionRef(act.Plan.Revision, act.Plan.Hash), What = $"as {EnumWords.Of(act.By.Role)}" };

    private static AuditEvent OfNote(AuditEvent saved, AuditNote note) =>
        saved with { Act = EnumWords.Of(note.Act), CaseCode = note.CaseCode, Kind = note.Kind, Revision = note.Revision, What = note.What };
}
