using Progression.App.Actions;
using Progression.App.Grid;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Caseload;
using Progression.Records.Cases;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>Somebody else has saved a plan, or has done something about its review.</summary>
/// <param name="Found">The plan with its review as they are now.</param>
public sealed record OthersSaved(OpenedReview Found) : ScreenEffect;

/// <content>What others do with the case while it is open: reviews, newer revisions, saves at the same time.</content>
public sealed partial class StoredPlan
{
    private OpenedReview? _review;
    private OpenedCase? _theirs;
    private long _looked = -1;
    private RevisionRef? _told;

    /// <summary>The review of the plan as it was read last, for the plan that is open; null when there is no plan.</summary>
    /// <param name="before">What the screen had of it; what the person chose there stays.</param>
    public GridReview? Review(GridReview? before = null)
    {
        _review ??= _store.Book.Reviews.Open(_opened.Case.Code);
        if (_review is not { } review || _opened.PlanStamp is not { } stamp)
        {
            return null;
        }

        PlanStamp newest = review.Review.Newest;
        GridReview now = new(Shown(review, stamp.Revision), _store.Book.Person, review.Signed)
        {
            Newer = newest.Revision > stamp.Revision ? $"{newest.Name} saved revision {newest.Revision}" : "",
        };
        return before is null ? now : now with { MarksChanges = before.MarksChanges && now.Signed is not null, Meaning = before.Meaning };
    }

    /// <summary>Does a step of the review; gives null, or why it could not be done, as a sentence.</summary>
    public string? Do(DoReview step, GridState grid)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(grid);
        if (_review is not { } review || grid.Review is not { } shown)
        {
            return "There is no plan to review.";
        }

        ReviewSaid said = new() { Comments = step.Comments, Meaning = step.Meaning, Risk = PlanRisk.Of(grid.Saved, review.Signed, grid.Findings) };
        string? problem = Saved(() => _store.Book.Reviews.Do(review with { Review = shown.Plan }, step.Step, said), _ => { });
        _review = Reread() ?? _review;
        return problem;
    }

    /// <summary>Why a step cannot be done, which is written down; empty when it can be by now.</summary>
    public string Refusal(ReviewStep step) => _review is { } review ? _store.Book.Reviews.Refusal(review, step) ?? "" : "";

    /// <summary>Looks whether others have saved; any thread. Gives what is new; null for nothing, and where the store cannot be read now.</summary>
    public OthersSaved? LookAtOthers()
    {
        try
        {
            if (!_store.Book.HasChangedSince(Volatile.Read(ref _looked)))
            {
                return null;
            }

            long now = _store.Book.Generation();
            if (_review is not { } known || _store.Book.Reviews.Open(_opened.Case.Code) is not { } found)
            {
                return null;
            }

            if (found.Review.Newest != known.Review.Newest || !found.Review.Record.Equals(known.Review.Record))
            {
                return new OthersSaved(found);
            }

            Volatile.Write(ref _looked, now);
            return null;
        }
        catch (Exception fault) when (fault is StoreException or FormatException or IOException or UnauthorizedAccessException)
        {
            return null; // Looked again in a second; whatever the person does next says what is wrong.
        }
    }

    /// <summary>Takes what was found by looking.</summary>
    public void Take(OthersSaved news)
    {
        ArgumentNullException.ThrowIfNull(news);
        _review = news.Found;
    }

    /// <summary>What somebody else saved since the plan was opened; null when nobody has, or when it cannot be read.</summary>
    /// <param name="from">The plan that was opened.</param>
    public PlanConflict? Meet(PlanRevision from)
    {
        try
        {
            _theirs = _store.Book.Again(_opened.Case.Code);
            return _theirs is { Plan: { } plan, PlanStamp: { } stamp } && stamp.Reference != _opened.PlanStamp?.Reference
                ? new PlanConflict(from, plan, $"{stamp.By.Name} saved revision {stamp.Revision} at {stamp.At:yyyy-MM-dd HH:mm} UTC, while you worked on revision {_opened.PlanStamp?.Revision}.")
                : null;
        }
        catch (Exception fault) when (fault is StoreException or FormatException)
        {
            return null;
        }
    }

    /// <summary>Saves a plan over what somebody else saved; gives null, or why it could not be saved. Their own plan is only taken up.</summary>
    /// <param name="plan">The plan put together.</param>
    /// <param name="theirs">The plan that was met.</param>
    public string? SaveOver(PlanRevision plan, PlanRevision theirs)
    {
        if (_theirs is not { } met)
        {
            return "Nobody has saved in between.";
        }

        if (ReferenceEquals(plan, theirs))
        {
            TakeUp(met);
            return DropDraft();
        }

        return Saved(() => _store.Book.Save(plan, met.PlanStamp?.Reference), saved =>
        {
            TakeUp(met with { Plan = plan, PlanStamp = saved.Plan });
            DropDraft();
        });
    }

    private void TakeUp(OpenedCase opened)
    {
        _opened = opened;
        _review = Reread() ?? _review;
    }

    private OpenedReview? Reread()
    {
        try
        {
            return _store.Book.Reviews.Open(_opened.Case.Code);
        }
        catch (Exception fault) when (fault is StoreException or FormatException)
        {
            return null; // The next look reads it.
        }
    }

    /// <summary>What is to be told beside the last save of the case: that somebody else's was joined with it; empty for nothing.</summary>
    public string Joined { get; private set; } = "";

    /// <summary>
    /// Joins what this person changed with what somebody else saved, where they did not change the same; where they did, it is said, and saving once more
    /// puts this person's in its place. Gives null when it is saved.
    /// </summary>
    /// <param name="patient">The case as this person has it, made from the one that was saved last.</param>
    /// <param name="problem">Why it could not be saved as it is.</param>
    private string? SaveJoined(Case patient, string problem)
    {
        try
        {
            if (_store.Book.Again(_opened.Case.Code) is not { } theirs || theirs.CaseStamp.Reference == _opened.CaseStamp.Reference)
            {
                return problem;
            }

            string who = $"{theirs.CaseStamp.By.Name} saved the case at {theirs.CaseStamp.At:yyyy-MM-dd HH:mm} UTC";
            CaseFork fork = CaseFork.Of(_opened.Case, patient, theirs.Case);
            if (!fork.Both.IsEmpty && _told != theirs.CaseStamp.Reference)
            {
                _told = theirs.CaseStamp.Reference;
                return $"{who} and changed the same: {string.Join(", ", fork.Both)}. Saving once more puts yours in its place; Esc leaves it and keeps what you typed.";
            }

            return Saved(() => _store.Book.Save(fork.Joined, theirs), saved =>
            {
                _opened = _opened with { Case = fork.Joined, CaseStamp = saved.Case };
                Joined = $" {who} in between; both are kept.";
            });
        }
        catch (Exception fault) when (fault is StoreException or FormatException)
        {
            return fault.Message;
        }
    }

    private static PlanReview Shown(OpenedReview review, int revision) => review.Review with { Plans = [.. review.Review.Plans.Where(plan => plan.Revision <= revision)] };

    /// <summary>The revision that this session saved itself.</summary>
    private void Own(RevisionStamp stamp) => _review = _review is not { } review ? null : review with
    {
        Plan = _opened.Plan!,
        Review = review.Review with { Plans = [.. review.Review.Plans.Where(plan => plan.Revision < stamp.Revision), new PlanStamp(stamp.Revision, stamp.Hash, stamp.By.UserId, stamp.By.Name, stamp.At)] },
    };
}
