using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>What came of reading a library: the whole of it, or everything that is wrong. There is no library with a part missing.</summary>
/// <param name="Library">The library; null exactly when there are problems.</param>
/// <param name="Problems">Every problem, file by file and line by line.</param>
public sealed record LibraryResult(ClinicalLibrary? Library, ImmutableArray<FileProblem> Problems);
