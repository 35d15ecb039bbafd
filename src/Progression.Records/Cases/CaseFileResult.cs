using System.Collections.Immutable;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>What came of reading a case file.</summary>
/// <param name="Case">The case; null exactly when there are problems, so nothing is half read.</param>
/// <param name="Problems">Everything wrong, in the order of the file.</param>
/// <param name="Queries">What can be right but looks like a slip, to be asked back; does not hinder reading.</param>
public sealed record CaseFileResult(Case? Case, ImmutableArray<FileProblem> Problems, ImmutableArray<FileProblem> Queries);
