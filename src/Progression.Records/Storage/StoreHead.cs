namespace Progression.Records.Storage;

/// <summary>The end of the chain after a save: kept elsewhere, it proves that nothing before it was changed.</summary>
/// <param name="Number">Number of the last entry, which is also how many there are where none are missing.</param>
/// <param name="Hash">Its hash.</param>
public sealed record StoreHead(long Number, string Hash);
