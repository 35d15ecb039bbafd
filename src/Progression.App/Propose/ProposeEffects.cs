using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Plans;

namespace Progression.App.Propose;

/// <summary>Make and save the revision that the decision on the proposal leads to. Whoever does it closes the screen, or says why it could not be saved.</summary>
/// <param name="Taken">The cells whose change is taken; none where the plan stays as it is.</param>
/// <param name="Reason">Why nothing was taken; null where something was, or where nothing was proposed.</param>
public sealed record AcceptProposal(ImmutableHashSet<CellAddress> Taken, string? Reason) : ScreenEffect;

/// <summary>Show the comparison of all visits.</summary>
public sealed record ShowComparison : ScreenEffect;
