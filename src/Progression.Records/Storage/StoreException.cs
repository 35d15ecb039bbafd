namespace Progression.Records.Storage;

/// <summary>The store cannot answer a reading call. Appending reports the same as an <see cref="AppendResult"/>.</summary>
public sealed class StoreException : Exception
{
    /// <summary>States the fault.</summary>
    public StoreException(StoreFault fault, string message, Exception? inner = null)
        : base(message, inner) => Fault = fault;

    /// <summary>The sort of fault.</summary>
    public StoreFault Fault { get; }

    /// <summary>Who has the store, when <see cref="Fault"/> is <see cref="StoreFault.Busy"/> and the system tells; else null.</summary>
    public LockHolder? Holder { get; init; }
}
