using System.Collections.Immutable;
using Progression.Core.Clinic;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Audit;
using Progression.Records.Plans;
using Progression.Records.Reviews;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>What is said with a step of a review.</summary>
public sealed record ReviewSaid
{
    /// <summary>Comments on cells and on the plan.</summary>
    public ImmutableArray<ReviewComment> Comments { get; init; } = [];

    /// <summary>What a signature says; null with anything else.</summary>
    public SignatureMeaning? Meaning { get; init; }

    /// <summary>What speaks against the plan; needed with a request and a signature.</summary>
    public PlanRisk? Risk { get; init; }
}

/// <summary>The reviews of the plans of a store. Reading calls throw <see cref="StoreException"/> when the store is busy, damaged or not permitted.</summary>
/// <param name="store">Where the records are.</param>
/// <param name="person">Who works.</param>
/// <param name="trail">Writes down what was refused.</param>
/// <param name="clock">The clock that dates what is done.</param>
public sealed class ReviewBook(IPlanStore store, ClinicPerson person, AuditTrail trail, TimeProvider clock)
{
    private const int MostTries = 20;

    /// <summary>The plan of a case with its review; null when there is no such case or no plan.</summary>
    /// <exception cref="FormatException">What is stored under the code is not of this program's form.</exception>
    public OpenedReview? Open(CaseCode code)
    {
        ArgumentNullException.ThrowIfNull(code);
        Require(code.Text);
        CaseView? view = store.Load(code.Text);
        if (view?.Head(RecordKind.Plan) is not { } plan)
        {
            return null;
        }

        StoredRevision? review = view.Head(RecordKind.Review);
        ReviewRecord record = review is null ? ReviewRecord.Empty : ReviewJson.Read(review.Body);
        IEnumerable<RevisionStamp> earlier = store.History(code.Text, RecordKind.Plan).Where(stamp => stamp.Revision < plan.Stamp.Revision);
        return new OpenedReview(
            code, PlanJson.Read(plan.Body), new PlanReview([.. earlier.Append(plan.Stamp).Select(Stamp)], record), review?.Stamp, Signed(code, record));
    }

    /// <summary>What waits for somebody's review, in no particular order.</summary>
    public ImmutableArray<WaitingReview> Waiting()
    {
        Require(null);
        return [.. store.Waiting(WaitingReview.Of).Cases.OfType<WaitingReview>()];
    }

    /// <summary>Does a step for the plan that is open. Nothing is done when somebody saved in between; only comments go beside what others said.</summary>
    /// <param name="from">The review as it was on the screen.</param>
    /// <param name="step">What is done.</param>
    /// <param name="said">What is said with it.</param>
    public SaveResult Do(OpenedReview from, ReviewStep step, ReviewSaid said)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(said);
        DateTimeOffset at = InstantText.Cut(clock.GetUtcNow());
        OpenedReview on = from;
        for (int tries = 1; ; tries++)
        {
            if (ReviewRules.WhyNot(step, person, on.Review) is { } why)
            {
                return Refused(on.Code, step, why);
            }

            ReviewAct act = Act(from, step, said, at);
            if (ReviewRules.WhyNot(act, on.Review) is { } wrong)
            {
                return step == ReviewStep.Signed ? Refused(on.Code, step, wrong) : new SaveResult.NotSaved(wrong, Caseload.Refusal.Refused);
            }

            AppendResult result = store.Append(Submission(on, act));
            if (step != ReviewStep.Commented || result is not AppendResult.Conflict || tries == MostTries || Open(on.Code) is not { } again)
            {
                return CaseBook.Told(result);
            }

            on = again;
        }
    }

    /// <summary>Why the person cannot do a step, which is written down as refused; null when they can.</summary>
    public string? Refusal(OpenedReview on, ReviewStep step)
    {
        ArgumentNullException.ThrowIfNull(on);
        return ReviewRules.WhyNot(step, person, on.Review) is { } why ? Refused(on.Code, step, why).Why : null;
    }

    private ReviewAct Act(OpenedReview from, ReviewStep step, ReviewSaid said, DateTimeOffset at) => new()
    {
        Step = step,
        By = new ReviewPerson(person.UserId, person.Name, ReviewRules.RoleFor(person, step)!.Value),
        At = at,
        Plan = from.Review.Newest.Reference,
        Comments = said.Comments,
        Meaning = step == ReviewStep.Signed ? said.Meaning : null,
        Risk = step is ReviewStep.Requested or ReviewStep.Signed ? said.Risk : null,
    };

    private Submission Submission(OpenedReview on, ReviewAct act) => new(
        on.Code.Text,
        [new Draft(RecordKind.Review, on.ReviewStamp?.Reference, ReviewJson.Write(on.Review.Record.With(act)))],
        new Actor(person.UserId, person.Name),
        act.At)
    {
        // A comment or a withdrawal is as true of a plan that has gone on.
        Requires = act.Step is ReviewStep.Commented or ReviewStep.Withdrawn ? [] : [new RevisionOf(RecordKind.Plan, new RevisionRef(act.Plan.Revision, act.Plan.Hash))],
    };

    private void Require(string? code)
    {
        if (trail.Refusal(ClinicAct.ViewCase, code) is { } why)
        {
            throw new StoreException(StoreFault.Refused, why);
        }
    }

    private SaveResult.NotSaved Refused(CaseCode code, ReviewStep step, string why) =>
        new(trail.Refused(why, Permission.Words(ReviewRules.ActOf(step)), code.Text), Caseload.Refusal.Refused);

    private PlanRevision? Signed(CaseCode code, ReviewRecord record) =>
        record.LastSigned is { } signed && store.Read(code.Text, RecordKind.Plan, signed.Plan.Revision) is { } stored && stored.Stamp.Hash == signed.Plan.Hash
            ? PlanJson.Read(stored.Body)
            : null;

    private static PlanStamp Stamp(RevisionStamp stamp) => new(stamp.Revision, stamp.Hash, stamp.By.UserId, stamp.By.Name, stamp.At);
}
