using Progression.App.Grid;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Screens;

/// <summary>Where a plan and its draft are kept; given by whoever opens the screen.</summary>
public sealed record PlanKeeper
{
    /// <summary>Saves the plan and drops its draft; gives null, or why it could not be saved, as a sentence.</summary>
    public required Func<PlanRevision, string?> Save { get; init; }

    /// <summary>What somebody else saved since a plan was opened, asked after a save that was refused; null when nobody has.</summary>
    public Func<PlanRevision, PlanConflict?> Meet { get; init; } = _ => null;

    /// <summary>The review of the plan that was saved last, with what the screen had of it; null where there is none.</summary>
    public Func<GridReview?, GridReview?> Review { get; init; } = review => review;

    /// <summary>Keeps unsaved work beside the saved plan. Gives null, or why it could not.</summary>
    public required Func<PlanRevision, string?> KeepDraft { get; init; }

    /// <summary>Drops the draft; without one it does nothing. Gives null, or why it could not.</summary>
    public required Func<string?> DropDraft { get; init; }

    /// <summary>Keeps a plan again that could not be kept, when nothing newer was asked for since; any thread. Gives null, or why it could not.</summary>
    public Func<PlanRevision, string?> KeepAgain { get; init; } = _ => null;

    /// <summary>Keeps the line that is being typed, drops it when null; any thread. Gives null, or why it could not.</summary>
    public Func<KeptForm?, string?> KeepLine { get; init; } = _ => null;

    /// <summary>The same for the last time: nothing is kept of a line after it.</summary>
    public Func<KeptForm?, string?> CloseLine { get; init; } = _ => null;

    /// <summary>Drops a draft of an earlier session, by its id. Gives null, or why it could not.</summary>
    public Func<string, string?> Forget { get; init; } = _ => null;
}
