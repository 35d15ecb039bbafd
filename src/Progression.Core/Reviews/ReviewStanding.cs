namespace Progression.Core.Reviews;

/// <summary>Whether a plan as it stands is signed.</summary>
public enum SignatureState
{
    /// <summary>It never was.</summary>
    Unsigned,

    /// <summary>It is, just as it stands.</summary>
    Signed,

    /// <summary>An earlier revision was; that signature says nothing of the plan as it stands.</summary>
    ChangedSince,
}

/// <summary>Where the review of a plan stands.</summary>
public sealed record ReviewStanding
{
    private ReviewStanding(ReviewedPlan plan, ReviewRecord record)
    {
        (Plan, Signature, Request, Return) = (plan, record.LastSigned, record.OpenRequest, record.OpenReturn);
        State = Signature is null ? SignatureState.Unsigned : Signature.Plan == plan ? SignatureState.Signed : SignatureState.ChangedSince;
    }

    /// <summary>The plan as it stands.</summary>
    public ReviewedPlan Plan { get; }

    /// <summary>Whether it is signed.</summary>
    public SignatureState State { get; }

    /// <summary>The latest signature, whether or not it still counts; null when there is none.</summary>
    public ReviewAct? Signature { get; }

    /// <summary>The request that waits for an answer; null when none does.</summary>
    public ReviewAct? Request { get; }

    /// <summary>The return that waits for another request; null when none does.</summary>
    public ReviewAct? Return { get; }

    /// <summary>Whether the plan was changed after the review was asked for.</summary>
    public bool IsStale => Request is not null && Request.Plan != Plan;

    /// <summary>Where it stands.</summary>
    /// <param name="newest">The newest revision of the plan.</param>
    /// <param name="record">What was done about its review.</param>
    public static ReviewStanding Of(ReviewedPlan newest, ReviewRecord record)
    {
        ArgumentNullException.ThrowIfNull(newest);
        ArgumentNullException.ThrowIfNull(record);
        return new(newest, record);
    }

    /// <summary>The standing of a plan that was not saved: nobody can have signed it.</summary>
    public static ReviewStanding NotSaved { get; } = new(new ReviewedPlan(0, ""), ReviewRecord.Empty);
}
