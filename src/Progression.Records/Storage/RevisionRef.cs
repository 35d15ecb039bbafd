namespace Progression.Records.Storage;

/// <summary>One revision of a chain, named by number and content so that a number reused after a restore is noticed.</summary>
/// <param name="Revision">From 1.</param>
/// <param name="Hash">SHA-256, 64 lower-case hexadecimal digits.</param>
public sealed record RevisionRef(int Revision, string Hash);
