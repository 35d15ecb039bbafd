namespace Progression.Records.Storage;

/// <summary>The index cannot be trusted: it is to be made again from the journal and the call repeated.</summary>
internal sealed class IndexDoubtException(string message, Exception? inner = null) : Exception(message, inner)
{
    /// <summary>True when there was no room for the index.</summary>
    public bool IsFullDisk => InnerException is IOException error
        && StoreFolder.Failure(error, "write the index").Fault == StoreFault.NoSpace;
}
