namespace Progression.Records.Storage;

/// <summary>Something the store found and put right, or could not, while doing something else.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Text">A sentence for the person at the screen.</param>
public sealed record StoreNotice(StoreNoticeKind Kind, string Text);

/// <summary>Sorts of <see cref="StoreNotice"/>, from harmless to grave.</summary>
public enum StoreNoticeKind
{
    /// <summary>The index was made again from the journal; no record is concerned.</summary>
    IndexRebuilt,

    /// <summary>A save that was cut short, and so never confirmed, was moved out of the journal.</summary>
    TornTailCut,

    /// <summary>The end of the chain could not be sent to where it is kept as well; the save itself is whole.</summary>
    HeadNotSent,

    /// <summary>Confirmed entries are no longer in the journal.</summary>
    EntriesLost,

    /// <summary>The journal is damaged in the middle.</summary>
    JournalDamaged,
}
