namespace Progression.Records.Storage;

/// <summary>Where a store is and how it behaves.</summary>
/// <param name="Folder">Its folder; made, for its owner only, when missing.</param>
/// <param name="Fields">What lists show of a body.</param>
public sealed record StoreOptions(string Folder, IndexFields Fields)
{
    /// <summary>To be raised whenever <see cref="Fields"/> takes something else from a body: the index is then made again. Default: that of this program, 3.</summary>
    public int FieldsVersion { get; init; } = 4;

    /// <summary>Which forms of bodies are known, and how older ones are brought forward. Default: every body is given as it is.</summary>
    public BodySchemas Schemas { get; init; } = BodySchemas.None;

    /// <summary>How long a call waits for other processes. Default 10 s.</summary>
    public TimeSpan LockDeadline { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>Nothing is saved when less than this is free on the disk. Default 64 MiB.</summary>
    public long MinimumFreeBytes { get; init; } = 64L * 1024 * 1024;

    /// <summary>
    /// Hears how far making the index again is, while the store is locked, and what a call waits for; it must not use the store. It may break the call off by
    /// throwing <see cref="OperationCanceledException"/>: then the index is made again by the next call. Default: nobody.
    /// </summary>
    public IProgress<WorkDone>? Progress { get; init; }

    /// <summary>Told the new end of the chain after each save, audit entries included, when the lock has been released; it must not throw. Default: nobody.</summary>
    public Action<StoreHead> Saved { get; init; } = static _ => { };

    /// <summary>Told what the store found, after the lock has been released. Default: nobody.</summary>
    public Action<StoreNotice> Notify { get; init; } = static _ => { };
}
