using System.Collections.Immutable;
using Progression.Core.Clinic;
using Progression.Core.Plans;

namespace Progression.Core.Reviews;

/// <summary>Who did something about a review, as it is kept.</summary>
/// <param name="UserId">The account's number.</param>
/// <param name="Name">The account's name then.</param>
/// <param name="Role">The role it was done in.</param>
public sealed record ReviewPerson(string UserId, string Name, ClinicRole Role);

/// <summary>A revision of a plan, by number and content.</summary>
/// <param name="Revision">From 1.</param>
/// <param name="Hash">Its hash: 64 lower-case hexadecimal digits.</param>
public sealed record ReviewedPlan(int Revision, string Hash);

/// <summary>Something said about a plan.</summary>
/// <param name="Cell">About which cell; null for the plan as a whole.</param>
/// <param name="Text">What was said, 1 to <see cref="MostCharacters"/> characters.</param>
public sealed record ReviewComment(CellAddress? Cell, string Text)
{
    /// <summary>Most characters of a comment.</summary>
    public const int MostCharacters = 1000;
}

/// <summary>One thing that was done about the review of a plan.</summary>
public sealed record ReviewAct
{
    /// <summary>What was done.</summary>
    public required ReviewStep Step { get; init; }

    /// <summary>By whom.</summary>
    public required ReviewPerson By { get; init; }

    /// <summary>When, UTC, to the millisecond.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The revision that was on the screen.</summary>
    public required ReviewedPlan Plan { get; init; }

    /// <summary>What was said with it.</summary>
    public ImmutableArray<ReviewComment> Comments { get; init; } = [];

    /// <summary>What the signature says; null for anything but a signature.</summary>
    public SignatureMeaning? Meaning { get; init; }

    /// <summary>What spoke against the plan then; kept with a request and a signature, null with anything else.</summary>
    public PlanRisk? Risk { get; init; }

    /// <inheritdoc/>
    public bool Equals(ReviewAct? other) => other is not null && (Step, By, At, Plan, Meaning, Risk) == (other.Step, other.By, other.At, other.Plan, other.Meaning, other.Risk)
        && Comments.SequenceEqual(other.Comments);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Step, By, At, Plan, Comments.Length);
}
