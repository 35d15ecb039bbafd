using Progression.Core.Clinic;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.App.Grid;

/// <summary>The review of the plan on the screen: who looks at it, what was asked, said and signed, and what is new.</summary>
/// <param name="Plan">The revisions up to the one on the screen, with what was done about them.</param>
/// <param name="Person">Who looks.</param>
/// <param name="Signed">The plan as it was signed last; null when it never was.</param>
public sealed record GridReview(PlanReview Plan, ClinicPerson Person, PlanRevision? Signed)
{
    /// <summary>Where the review stands.</summary>
    public ReviewStanding Standing { get; } = Plan.Standing;

    /// <summary>Whether the cells that differ from the signed plan are marked.</summary>
    public bool MarksChanges { get; init; }

    /// <summary>Who saved a revision after the one on the screen, as a sentence without its end; empty when nobody has.</summary>
    public string Newer { get; init; } = "";

    /// <summary>What the signature will say that is being made.</summary>
    public SignatureMeaning Meaning { get; init; }

    /// <summary>The comments on a cell since the last signature, oldest first.</summary>
    public IEnumerable<(ReviewAct Act, ReviewComment Comment)> On(CellAddress address) => Plan.Record.Comments.Where(said => said.Comment.Cell == address);

    /// <summary>Why the person cannot do a step now; null when they can.</summary>
    public string? WhyNot(ReviewStep step) => ReviewRules.WhyNot(step, Person, Plan);

    /// <summary>Why the person cannot change the plan; null when they can.</summary>
    public string? WhyNotChange => Permission.WhyNot(Person, ClinicAct.ChangeCase);
}
