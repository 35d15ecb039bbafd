using System.Text.Json.Serialization;

namespace Progression.Records.Storage;

/// <summary>Reading and writing of a row of the index, made when the program is built: a native build has no reflection for it.</summary>
[JsonSerializable(typeof(IndexedCase))]
internal sealed partial class IndexedCaseJson : JsonSerializerContext;
