namespace Progression.Records.Storage;

/// <summary>The outcome of putting records back from a file: done whole, or nothing changed.</summary>
/// <param name="FromFile">Entries of the file.</param>
/// <param name="TakenOver">Newer entries of the records as they were that go on from the file's last, and so were kept.</param>
/// <param name="LeftOut">Whole entries of the records as they were that are in neither; they lie in <paramref name="SetAside"/>, or would.</param>
/// <param name="SetAside">The folder with the files as they were; null when there were none, or nothing was done.</param>
/// <param name="Problem">Why nothing was done; null when all went well.</param>
public sealed record RestoreReport(long FromFile, long TakenOver, long LeftOut, string? SetAside, string? Problem);
