namespace Progression.Records.Storage;

/// <summary>The newest revision of one kind, as a list shows it.</summary>
/// <param name="Kind">Which chain of the case.</param>
/// <param name="Revision">Its number, from 1.</param>
/// <param name="By">Who saved it.</param>
/// <param name="At">When, in UTC.</param>
public sealed record CaseHead(RecordKind Kind, int Revision, Actor By, DateTimeOffset At)
{
    /// <summary>What a list shows of a stamp.</summary>
    public static CaseHead Of(RevisionStamp stamp)
    {
        ArgumentNullException.ThrowIfNull(stamp);
        return new(stamp.Kind, stamp.Revision, stamp.By, stamp.At);
    }
}
