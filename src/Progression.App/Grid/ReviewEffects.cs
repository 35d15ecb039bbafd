using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.App.Grid;

/// <summary>Do a step of the review for the plan on the screen.</summary>
/// <param name="Step">Which.</param>
/// <param name="Comments">What is said with it.</param>
/// <param name="Meaning">What the signature says; null with anything else.</param>
public sealed record DoReview(ReviewStep Step, ImmutableArray<ReviewComment> Comments, SignatureMeaning? Meaning = null) : ScreenEffect;

/// <summary>Say why a step cannot be done, and write down that it was refused.</summary>
/// <param name="Step">Which.</param>
public sealed record RefuseReview(ReviewStep Step) : ScreenEffect;

/// <summary>Take up what somebody else saved.</summary>
public sealed record TakeNewer : ScreenEffect;

/// <summary>Save a plan over what somebody else saved, with whose changes it was put together.</summary>
/// <param name="Plan">The plan put together.</param>
public sealed record SaveMerged(PlanRevision Plan) : ScreenEffect;
