using System.Collections.Immutable;

namespace Progression.Core.Reviews;

/// <summary>
/// Goes through the plans and reviews of a case in the order they were saved, and names what the rules would not have let through: such an entry was
/// written by another program. Hashes and chains are for the records to check.
/// </summary>
/// <param name="caseCode">The case, for the words.</param>
public sealed class ReviewAudit(string caseCode)
{
    private ImmutableArray<PlanStamp> _plans = [];
    private ReviewRecord _record = ReviewRecord.Empty;

    /// <summary>Takes the next revision of the plan.</summary>
    public void Plan(PlanStamp stamp) => _plans = _plans.Add(stamp);

    /// <summary>Takes the next revision of the review.</summary>
    /// <param name="revision">Its number.</param>
    /// <param name="userId">The account that saved it.</param>
    /// <param name="at">When it was saved.</param>
    /// <param name="record">What it holds.</param>
    /// <returns>What is wrong with it, a sentence each; empty when nothing is.</returns>
    public IReadOnlyList<string> Review(int revision, string userId, DateTimeOffset at, ReviewRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        string which = $"Case {caseCode}, review revision {revision}";
        List<string> wrong = [];
        if (!record.Extends(_record) || record.Acts.Length == _record.Acts.Length)
        {
            wrong.Add($"{which} does not carry on what was there before it.");
        }

        // What was put in place of earlier acts is judged as new: it is not what was saved then.
        int kept = _record.Acts.Zip(record.Acts).TakeWhile(pair => pair.First.Equals(pair.Second)).Count();
        _record = new ReviewRecord([.. record.Acts.Take(kept)]);
        foreach (ReviewAct act in record.Acts.Skip(kept))
        {
            if (Wrong(act, userId, at) is { } why)
            {
                wrong.Add($"{which}: {act.By.Name} ({act.By.UserId}) {SignatureWords.Of(act.Step)} for plan revision {act.Plan.Revision}, which does not hold. {why}");
            }

            _record = _record.With(act);
        }

        return wrong;
    }

    private string? Wrong(ReviewAct act, string userId, DateTimeOffset at) =>
        act.By.UserId != userId ? $"It was saved by the account {userId}."
        : act.At != at ? "It bears another time than it was saved at."
        : _plans.IsEmpty ? "There was no plan."
        : ReviewRules.WhyNot(act, new PlanReview(_plans, _record));
}
