using System.Text.Json;

namespace Progression.Records.Storage;

/// <summary>
/// Takes from a body the short texts that lists show and filter by. It must depend on nothing but its arguments, so that
/// the index can be made again from the journal, and leave out what a body does not have: when it throws, a save fails with
/// that exception before anything is written, and a body already stored is listed without fields.
/// </summary>
public delegate IReadOnlyDictionary<string, string> IndexFields(RecordKind kind, JsonElement body);
