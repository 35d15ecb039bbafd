using System.Collections.Immutable;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>What came of reading a session file.</summary>
/// <param name="Case">The case with everything in the file put into it; null exactly when there are problems, so nothing is half entered.</param>
/// <param name="Logged">The sessions that were added or completed, as they stand now, oldest first; empty when there are problems.</param>
/// <param name="Problems">Everything wrong, in the order of the file.</param>
/// <param name="Queries">What can be right but looks like a slip, to be asked back; does not hinder reading.</param>
public sealed record SessionFileResult(Case? Case, ImmutableArray<SessionLog> Logged, ImmutableArray<FileProblem> Problems, ImmutableArray<FileProblem> Queries);
