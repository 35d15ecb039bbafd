using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>One entry of a library file, wherever it came from.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Fields">Its fields, which know their file and line.</param>
internal sealed record LibraryEntry(string Id, Fields Fields);
