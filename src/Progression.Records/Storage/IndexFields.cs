using System.Text.Json;

namespace Progression.Records.Storage;

/// <summary>
/// Takes from a body the short texts that lists show and filter by. It must depend on nothing but its arguments, so that
/// the index can be made again from the journal.
/// </summary>
public delegate IReadOnlyDictionary<string, string> IndexFields(RecordKind kind, JsonElement body);
