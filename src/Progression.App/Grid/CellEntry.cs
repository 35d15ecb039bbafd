using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Entry;
using Progression.Core.Findings;

namespace Progression.App.Grid;

/// <summary>What is being typed for a cell.</summary>
/// <param name="Line">The line with its caret.</param>
/// <param name="Problem">What was wrong with it when it was last handed in; null when nothing was.</param>
/// <param name="Proposed">While a reason is typed: the edit that needs it.</param>
public sealed record CellEntry(LineEntry Line, Problem? Problem = null, ProposedEdit? Proposed = null);

/// <summary>An edit that goes against a safety rule and waits for its reason.</summary>
/// <param name="Changes">The cells with their new contents; null content empties a cell.</param>
/// <param name="What">What the edit does, as it will be told in the status line.</param>
/// <param name="Against">The findings it runs into, in words.</param>
public sealed record ProposedEdit(ImmutableArray<CellChange> Changes, string What, string Against);
