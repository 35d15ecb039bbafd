using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>Something of every case, all read at one moment.</summary>
/// <typeparam name="T">What was taken of a case.</typeparam>
/// <param name="Generation">Number of the last save then, 0 for an empty store.</param>
/// <param name="Cases">One for each case, in no particular order.</param>
public sealed record CaseList<T>(long Generation, ImmutableArray<T> Cases);
