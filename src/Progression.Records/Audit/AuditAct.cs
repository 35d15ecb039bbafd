namespace Progression.Records.Audit;

/// <summary>What was done with the records that left no revision of its own. What was saved or signed is in the records themselves.</summary>
/// <remarks>The name, in lower case, is written to the journal: a name in use is never changed or given a new meaning.</remarks>
public enum AuditAct
{
    /// <summary>A case was opened; without a case, the clinic's figures were looked at.</summary>
    Viewed,

    /// <summary>A sheet or note of a plan was printed.</summary>
    Printed,

    /// <summary>A case was taken out in another format.</summary>
    Exported,

    /// <summary>Something was asked for that the person may not do.</summary>
    Refused,

    /// <summary>All records were copied to a file.</summary>
    BackedUp,

    /// <summary>Records were put back from a file.</summary>
    Restored,

    /// <summary>Damaged lines were taken out of the journal; the entry names the gaps.</summary>
    Repaired,

    /// <summary>The index was made again because somebody asked for it.</summary>
    Rebuilt,

    /// <summary>Journal lines were written out.</summary>
    WrittenOut,

    /// <summary>Journal lines were taken in.</summary>
    TakenIn,

    /// <summary>What a file of another program said was put into a case.</summary>
    Imported,
}
