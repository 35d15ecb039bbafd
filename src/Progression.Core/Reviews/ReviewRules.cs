using Progression.Core.Clinic;

namespace Progression.Core.Reviews;

/// <summary>Who may do what about a review, and when. Common practice, no source: four eyes on every plan.</summary>
public static class ReviewRules
{
    /// <summary>What a step is in the table of who may do what.</summary>
    public static ClinicAct ActOf(ReviewStep step) => step switch
    {
        ReviewStep.Requested or ReviewStep.Withdrawn => ClinicAct.RequestReview,
        ReviewStep.Commented => ClinicAct.Comment,
        ReviewStep.Returned => ClinicAct.ReturnPlan,
        ReviewStep.Signed => ClinicAct.SignPlan,
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "No such step."),
    };

    /// <summary>The role in which a person does a step; null when none of theirs allows it.</summary>
    public static ClinicRole? RoleFor(ClinicPerson person, ReviewStep step)
    {
        ArgumentNullException.ThrowIfNull(person);
        return person.Roles.Where(role => Permission.Of(role, ActOf(step))).Select(role => (ClinicRole?)role).FirstOrDefault();
    }

    /// <summary>Why a person cannot do a step now, as a sentence; null when they can. What they will say with it is not looked at.</summary>
    /// <param name="step">What is to be done.</param>
    /// <param name="person">Who would do it.</param>
    /// <param name="review">The plan's revisions and what was done about them so far.</param>
    public static string? WhyNot(ReviewStep step, ClinicPerson person, PlanReview review)
    {
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(review);
        return Permission.WhyNot(person, ActOf(step)) ?? step switch
        {
            ReviewStep.Requested => NotToAsk(review.Standing),
            ReviewStep.Withdrawn => review.Record.OpenRequest is null ? "No request waits that could be taken back." : null,
            ReviewStep.Returned => review.Record.OpenRequest is null ? NotAsked(review.Standing) : null,
            ReviewStep.Signed => NotTheirsToSign(person.UserId, review) ?? NotToSign(review.Standing),
            _ => null,
        };
    }

    /// <summary>Why an act does not hold, as a sentence; null when it does. The same rules, with what was said.</summary>
    /// <param name="act">What was or is to be done.</param>
    /// <param name="review">The plan's revisions and what was done about them before.</param>
    public static string? WhyNot(ReviewAct act, PlanReview review)
    {
        ArgumentNullException.ThrowIfNull(act);
        ArgumentNullException.ThrowIfNull(review);
        return WhyNot(act.Step, new ClinicPerson(act.By.UserId, act.By.Name, [act.By.Role]), review) ?? NotThatPlan(act, review) ?? NotSaidRight(act);
    }

    private static string? NotToAsk(ReviewStanding standing) =>
        standing.State == SignatureState.Signed ? "The plan is signed as it stands; a review is asked for once something is changed."
        : standing is { Request: { } request, IsStale: false } ? $"{request.By.Name} has already asked for a review of it."
        : null;

    private static string NotAsked(ReviewStanding standing) =>
        standing.State == SignatureState.Signed ? "The plan is signed as it stands." : "No review of the plan is asked for.";

    /// <summary>Nobody signs what they made or asked for.</summary>
    private static string? NotTheirsToSign(string userId, PlanReview review) =>
        review.SinceSigned.LastOrDefault(plan => plan.UserId == userId) is { } own ? $"You saved revision {own.Revision} of this plan: nobody signs what they made. Somebody else must sign."
        : review.Record.SinceSigned.Any(act => act.Step == ReviewStep.Requested && act.By.UserId == userId) ? "You asked for this review: nobody signs what they asked for. Somebody else must sign."
        : null;

    private static string? NotToSign(ReviewStanding standing) =>
        standing.Request is null ? NotAsked(standing)
        : standing.IsStale ? $"Review of revision {standing.Request.Plan.Revision} was asked for, and the plan is at revision {standing.Plan.Revision} now. {standing.Request.By.Name} must ask again, or you return it."
        : null;

    private static string? NotThatPlan(ReviewAct act, PlanReview review) =>
        !review.Plans.Any(plan => plan.Reference == act.Plan) ? $"There is no revision {act.Plan.Revision} of the plan with the hash {SignatureWords.Short(act.Plan.Hash)}."
        : act.Step is ReviewStep.Requested or ReviewStep.Returned or ReviewStep.Signed && act.Plan != review.Newest.Reference
            ? $"Revision {act.Plan.Revision} was read, and the plan is at revision {review.Newest.Revision} now. Read it again first."
        : null;

    private static string? NotSaidRight(ReviewAct act) =>
        act.Comments.Any(comment => string.IsNullOrWhiteSpace(comment.Text)) ? "A comment without words says nothing."
        : act.Comments.Any(comment => comment.Text.Length > ReviewComment.MostCharacters) ? $"A comment has at most {ReviewComment.MostCharacters} characters."
        : (act.Step, act.Comments.IsEmpty) switch
        {
            (ReviewStep.Commented, true) => "A comment needs words.",
            (ReviewStep.Returned, true) => "A plan is returned with a comment: what is to be changed, and why.",
            (ReviewStep.Signed, _) => NotSignedRight(act),
            (ReviewStep.Requested, _) when act.Risk is null => "A request tells what was found on the plan.",
            _ => null,
        };

    /// <summary>A stop is settled before anybody signs. What is severe can be right for this person, so it is signed only with the reason.</summary>
    private static string? NotSignedRight(ReviewAct act) => act switch
    {
        { Meaning: null } => "A signature says what it means.",
        { Risk: null } => "A signature tells what was found on the plan.",
        { Risk.Stops: > 0 } => $"The plan has {Count(act.Risk.Stops, "safety stop")}: a stop is settled before anybody signs. Return the plan with a comment.",
        { Risk.Severe: > 0, Comments.IsEmpty: true } => $"The plan has {Count(act.Risk.Severe, "severe finding")}: say in a comment why it is right all the same, or return the plan.",
        _ => null,
    };

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
