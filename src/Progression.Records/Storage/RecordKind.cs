namespace Progression.Records.Storage;

/// <summary>What a stored body describes. Each kind of each case is a revision chain of its own.</summary>
/// <remarks>The name, in lower case, is written to the journal: a name in use is never changed or given a new meaning.</remarks>
public enum RecordKind
{
    /// <summary>The person's case: code, operation, screening, assessments.</summary>
    Case,

    /// <summary>The plan: weeks by lanes.</summary>
    Plan,

    /// <summary>The forecasts that were made, with what became of them.</summary>
    Forecasts,

    /// <summary>What was asked, said and signed about the plan.</summary>
    Review,

    /// <summary>What was done with the records and left no revision: looked at, taken out, refused. One chain for the whole store, under <see cref="AuditChain.Code"/>.</summary>
    Audit,
}
